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

var sectionNames = map[byte]string{0: "custom", 1: "types", 2: "import", 3: "functions", 4: "table", 5: "memory", 6: "global", 7: "export", 9: "elements", 10: "code", 11: "data"}

const (
	namesOfFuncs = 1    // subsection of the section "name"
	leastWeight  = 5000 // of packages that are named, bytes
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
	list, err := sections(module)
	if err != nil {
		return nil, 0, nil, err
	}
	for _, s := range list {
		fmt.Printf("%-44s %9d raw %9d gzip\n", "section "+sectionNames[s.id], len(s.body), gzipLength(s.body))
		count, n := binary.Uvarint(s.body)
		switch s.id {
		case importSection:
			imported = int(count) // the linker's are all functions
		case codeSection:
			for rest := s.body[max(n, 0):]; len(rest) > 0; {
				var f []byte
				if f, rest, err = sized(rest); err != nil {
					return nil, 0, nil, fmt.Errorf("a function: %w", err)
				}
				bodies = append(bodies, f)
			}
		case customSection:
			if title, parts, err := sized(s.body); err == nil && string(title) == "name" {
				names = functionNames(parts)
			}
		}
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
