package main

import (
	"bytes"
	"encoding/binary"
	"errors"
	"fmt"
	"os"
	"path/filepath"
)

// mostGap is how many zeros are written out rather than a new segment begun, bytes: a head of
// a segment costs a compressor more than zeros do.
const mostGap = 4096

const dataCountSection = 12 // see sections.go

// segment is a piece of memory that a module fills when it starts.
type segment struct {
	at   int64
	data []byte
}

// join rewrites the program with few long data segments, and without the lines of its code.
// The Go linker begins a new segment after every few zeros, some 80,000.
func join() error {
	path := filepath.Join(dist, "suncask.wasm")
	module, err := os.ReadFile(path)
	if err != nil {
		return err
	}
	module, err = joined(module)
	if err == nil {
		err = unline(module)
	}
	if err != nil {
		return fmt.Errorf("%s: %w", path, err)
	}
	return os.WriteFile(path, module, 0o644)
}

// joined returns a module whose data segments are joined where no more than mostGap zeros lie
// between them: memory is zero before it is filled.
func joined(module []byte) ([]byte, error) {
	list, err := sections(module)
	if err != nil {
		return nil, err
	}
	out := bytes.NewBuffer(module[:wasmHead:wasmHead])
	for _, s := range list {
		body := s.body
		switch s.id {
		case dataCountSection:
			return nil, errors.New("the number of data segments is counted elsewhere")
		case dataSection:
			list, err := readSegments(body)
			if err != nil {
				return nil, err
			}
			body = writeSegments(list)
		}
		out.WriteByte(s.id)
		out.Write(binary.AppendUvarint(nil, uint64(len(body))))
		out.Write(body)
	}
	return out.Bytes(), nil
}

// readSegments reads a data section: active segments of the first memory at constant places.
func readSegments(body []byte) (list []segment, err error) {
	count, n := binary.Uvarint(body)
	body = body[max(n, 0):]
	for range count {
		if len(body) < 2 || body[0] != 0 || body[1] != 0x41 {
			return nil, errors.New("a data segment of another kind than the linker's")
		}
		at, n := sleb(body[2:])
		body = body[2+n:]
		if len(body) < 1 || body[0] != 0x0b {
			return nil, errors.New("a data segment's place is no constant")
		}
		data, after, err := sized(body[1:])
		if err != nil {
			return nil, fmt.Errorf("a data segment: %w", err)
		}
		list = append(list, segment{at, data})
		body = after
	}
	return list, nil
}

// writeSegments writes a data section with near segments joined.
func writeSegments(list []segment) []byte {
	var kept []segment
	for _, s := range list {
		if n := len(kept); n > 0 {
			last := &kept[n-1]
			if gap := s.at - last.at - int64(len(last.data)); gap >= 0 && gap <= mostGap {
				last.data = append(append(last.data, make([]byte, gap)...), s.data...)
				continue
			}
		}
		kept = append(kept, segment{s.at, bytes.Clone(s.data)})
	}
	out := binary.AppendUvarint(nil, uint64(len(kept)))
	for _, s := range kept {
		out = append(out, 0, 0x41)
		out = appendSleb(out, s.at)
		out = append(out, 0x0b)
		out = binary.AppendUvarint(out, uint64(len(s.data)))
		out = append(out, s.data...)
	}
	return out
}

// sleb reads a signed number (LEB128) and how many bytes it takes, 0 where it has no end.
func sleb(b []byte) (v int64, n int) {
	for shift := 0; n < len(b) && shift < 64; shift += 7 {
		v |= int64(b[n]&0x7f) << shift
		n++
		if b[n-1]&0x80 == 0 {
			if b[n-1]&0x40 != 0 && shift+7 < 64 {
				v |= -1 << (shift + 7)
			}
			return v, n
		}
	}
	return 0, 0
}

func appendSleb(out []byte, v int64) []byte {
	for {
		b := byte(v & 0x7f)
		v >>= 7
		if v == 0 && b&0x40 == 0 || v == -1 && b&0x40 != 0 {
			return append(out, b)
		}
		out = append(out, b|0x80)
	}
}
