package main

import (
	"bytes"
	"cmp"
	"compress/gzip"
	"encoding/binary"
	"errors"
	"fmt"
	"os"
	"slices"
	"strings"
)

// Sections of a WebAssembly module, see segments.go.
var sectionNames = map[byte]string{0: "custom", 1: "types", 2: "import", 3: "functions", 4: "table", 5: "memory", 6: "global", 7: "export", 9: "elements", 10: "code", 11: "data"}

const (
	customSection = 0
	importSection = 2
	codeSection   = 10
	namesOfFuncs  = 1 // subsection of the section "name"
	leastWeight   = 5000
)

// weigh prints what a program that has its names weighs, by section and its code by package:
// as it is, and with gzip if compressed alone.
func weigh(path string) error {
	module, err := os.ReadFile(path)
	if err != nil {
		return err
	}
	bodies, imported, names, err := functions(module)
	if err != nil {
		return fmt.Errorf("%s: %w", path, err)
	}
	code := map[string]*bytes.Buffer{}
	for i, body := range bodies {
		p := packageOf(names[uint64(imported+i)])
		if code[p] == nil {
			code[p] = new(bytes.Buffer)
		}
		code[p].Write(body)
	}
	var list []string
	for p := range code {
		list = append(list, p)
	}
	slices.SortFunc(list, func(a, b string) int { return cmp.Compare(code[b].Len(), code[a].Len()) })
	for _, p := range list {
		if code[p].Len() >= leastWeight {
			fmt.Printf("%-44s %9d raw %9d gzip\n", p, code[p].Len(), gzipLength(code[p].Bytes()))
		}
	}
	return nil
}

// functions are a module's functions, how many are imported before them, and all names. It
// prints what the sections weigh.
func functions(module []byte) (bodies [][]byte, imported int, names map[uint64]string, err error) {
	if len(module) < wasmHead || string(module[:4]) != "\x00asm" {
		return nil, 0, nil, errors.New("no WebAssembly module")
	}
	for rest := module[wasmHead:]; len(rest) > 0; {
		id := rest[0]
		body, after, err := sized(rest[1:])
		if err != nil {
			return nil, 0, nil, err
		}
		fmt.Printf("%-44s %9d raw %9d gzip\n", "section "+sectionNames[id], len(body), gzipLength(body))
		count, n := binary.Uvarint(body)
		switch id {
		case importSection:
			imported = int(count) // the linker's are all functions
		case codeSection:
			for list := body[n:]; len(list) > 0; {
				var f []byte
				if f, list, err = sized(list); err != nil {
					return nil, 0, nil, err
				}
				bodies = append(bodies, f)
			}
		case customSection:
			if title, parts, err := sized(body); err == nil && string(title) == "name" {
				names = functionNames(parts)
			}
		}
		rest = after
	}
	if len(names) == 0 {
		return nil, 0, nil, errors.New("the functions have no names: build without -s")
	}
	return bodies, imported, names, nil
}

// functionNames reads the section "name" (core specification 2.0, 7.4.1).
func functionNames(parts []byte) map[uint64]string {
	names := map[uint64]string{}
	for len(parts) > 0 {
		id := parts[0]
		body, after, err := sized(parts[1:])
		if err != nil {
			return names
		}
		if id == namesOfFuncs {
			count, n := binary.Uvarint(body)
			for body = body[max(n, 0):]; count > 0; count-- {
				index, n := binary.Uvarint(body)
				name, next, err := sized(body[max(n, 0):])
				if err != nil {
					return names
				}
				names[index], body = string(name), next
			}
		}
		parts = after
	}
	return names
}

// sized reads bytes that stand behind their number.
func sized(b []byte) (body, after []byte, err error) {
	size, n := binary.Uvarint(b)
	if n <= 0 || size > uint64(len(b)-n) {
		return nil, nil, errors.New("cut short")
	}
	return b[n : n+int(size)], b[n+int(size):], nil
}

// packageOf is a function's package; names have dots and slashes as underscores in some places.
func packageOf(name string) string {
	if at := strings.IndexByte(name, '.'); at > 0 {
		return name[:at]
	}
	return "other"
}

// gzipLength is how long bytes are with gzip -9.
func gzipLength(b []byte) int {
	var out bytes.Buffer
	w, _ := gzip.NewWriterLevel(&out, gzip.BestCompression)
	w.Write(b)
	w.Close()
	return out.Len()
}
