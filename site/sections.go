package main

import (
	"encoding/binary"
	"errors"
	"fmt"
)

// wasmHead is how long the head of a WebAssembly module is (core specification 2.0, 5.5).
const wasmHead = 8

// Sections of a module that are looked into.
const (
	customSection = 0
	importSection = 2
	codeSection   = 10
	dataSection   = 11
)

// section is a part of a module.
type section struct {
	id   byte
	body []byte
}

// sections are a module's, in their order.
func sections(module []byte) (list []section, err error) {
	if len(module) < wasmHead || string(module[:4]) != "\x00asm" {
		return nil, errors.New("no WebAssembly module")
	}
	for rest := module[wasmHead:]; len(rest) > 0; {
		body, after, err := sized(rest[1:])
		if err != nil {
			return nil, fmt.Errorf("section %d: %w", rest[0], err)
		}
		list = append(list, section{rest[0], body})
		rest = after
	}
	return list, nil
}

// sized reads bytes that stand behind their number.
func sized(b []byte) (body, after []byte, err error) {
	size, n := binary.Uvarint(b)
	if n <= 0 || size > uint64(len(b)-n) {
		return nil, nil, errors.New("cut short")
	}
	return b[n : n+int(size)], b[n+int(size):], nil
}
