package main

import (
	"bytes"
	"encoding/binary"
	"math/rand/v2"
	"testing"
)

// memory is what segments make of an empty one.
func memory(t *testing.T, body []byte, size int) []byte {
	t.Helper()
	list, err := readSegments(body)
	if err != nil {
		t.Fatal(err)
	}
	m := make([]byte, size)
	for _, s := range list {
		copy(m[s.at:], s.data)
	}
	return m
}

// Joined segments fill the memory alike, and the module's other sections stay.
func TestJoined_Property(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 16))
	const size = 1 << 20
	for range 50 {
		body := binary.AppendUvarint(nil, 300)
		at := int64(0)
		for range 300 {
			if at += int64(r.IntN(9)); r.IntN(20) == 0 {
				at += int64(r.IntN(3 * mostGap))
			}
			data := make([]byte, 1+r.IntN(40))
			for i := range data {
				data[i] = byte(r.IntN(3))
			}
			body = append(body, 0, 0x41)
			body = appendSleb(body, at)
			body = append(body, 0x0b, byte(len(data)))
			body = append(body, data...)
			at += int64(len(data))
		}
		section := func(id byte, body []byte) []byte {
			return append(append([]byte{id}, binary.AppendUvarint(nil, uint64(len(body)))...), body...)
		}
		head, other := []byte("\x00asm\x01\x00\x00\x00"), section(3, []byte{1, 0})
		module := append(append(append([]byte{}, head...), other...), section(dataSection, body)...)
		got, err := joined(module)
		if err != nil {
			t.Fatal(err)
		}
		before := len(head) + len(other)
		if !bytes.Equal(got[:before], module[:before]) {
			t.Fatal("other sections are changed")
		}
		_, n := binary.Uvarint(got[before+1:])
		if count, _ := binary.Uvarint(got[before+1+n:]); count > 30 {
			t.Fatalf("%d segments of 300", count)
		}
		if !bytes.Equal(memory(t, got[before+1+n:], size), memory(t, body, size)) {
			t.Fatal("another memory")
		}
	}
	for name, module := range map[string]string{
		"no module": "hello wo", "counted": "\x00asm\x01\x00\x00\x00\x0c\x01\x05", "cut": "\x00asm\x01\x00\x00\x00\x0b\x09\x01", "passive": "\x00asm\x01\x00\x00\x00\x0b\x04\x01\x01\x01a",
	} {
		if _, err := joined([]byte(module)); err == nil {
			t.Errorf("%s: taken", name)
		}
	}
}
