package main

import (
	"bytes"
	"encoding/binary"
	"errors"
	"fmt"
	"slices"
	"strings"
)

// The tables by which a Go program names functions, files and lines in stack traces, as
// Go 1.26's runtime reads them (runtime/symtab.go, runtime2.go): a head with places counted
// from it, and a record a function.
const (
	tablesMagic = "\xf1\xff\xff\xff\x00\x00\x01\x08" // then: one byte a step, eight a pointer

	headFunctions = 8  // how many functions there are
	headNames     = 32 // names of functions, each with a zero byte at its end
	headUnits     = 40
	headFiles     = 48
	headSteps     = 56 // tables of values over the code, a list of steps each
	headRecords   = 64
	headLength    = 72

	recordStack     = 16 // places among the steps: of the stack's depth,
	recordFile      = 20 // the file,
	recordLine      = 24 // the line,
	recordMore      = 28 // and how many more tables there are, whose places follow the record
	recordStartLine = 36
	recordLength    = 44
)

// unline takes files and lines out of a module's tables, a fifteenth of what is sent: its stack
// traces then name functions of the project and the runtime alone. All else stays in its place.
func unline(module []byte) error {
	list, err := sections(module)
	if err != nil {
		return err
	}
	heads := 0
	for _, s := range list {
		if s.id != dataSection {
			continue
		}
		pieces, err := readSegments(s.body)
		if err != nil {
			return err
		}
		for _, p := range pieces {
			if at := bytes.Index(p.data, []byte(tablesMagic)); at >= 0 {
				heads++
				if err := unlineTables(p.data[at:]); err != nil {
					return err
				}
			}
		}
	}
	if heads != 1 {
		return fmt.Errorf("%d heads of tables for stack traces", heads)
	}
	return nil
}

func unlineTables(tables []byte) error {
	place := func(field int) int { return int(binary.LittleEndian.Uint64(tables[field:])) }
	if len(tables) < headLength || place(headNames) > place(headUnits) || place(headUnits) > place(headFiles) || place(headFiles) > place(headSteps) || place(headSteps) > place(headRecords) || place(headRecords) > len(tables) {
		return errors.New("the tables for stack traces are not as known")
	}
	steps, records := tables[place(headSteps):place(headRecords)], tables[place(headRecords):]
	kept := make([]bool, len(steps))
	var dropped [][2]int
	number := func(b []byte, at int) int { return int(binary.LittleEndian.Uint32(b[at:])) }
	for i := range place(headFunctions) {
		if 8*i+8 > len(records) || number(records, 8*i+4)+recordLength > len(records) {
			return errors.New("a function's record lies beside the tables")
		}
		record := records[number(records, 8*i+4):]
		more := number(record, recordMore)
		if recordLength+4*more > len(record) {
			return errors.New("a function's record is cut short")
		}
		keep := []int{number(record, recordStack)}
		for k := range more {
			keep = append(keep, number(record, recordLength+4*k))
		}
		for _, from := range keep {
			to, ok := stepsEnd(steps, from)
			if !ok {
				return errors.New("steps without an end")
			}
			for b := from; b < to; b++ {
				kept[b] = true
			}
		}
		for _, field := range [...]int{recordFile, recordLine} {
			from := number(record, field)
			to, ok := stepsEnd(steps, from)
			if !ok {
				return errors.New("steps without an end")
			}
			dropped = append(dropped, [2]int{from, to})
			binary.LittleEndian.PutUint32(record[field:], 0) // none
		}
		binary.LittleEndian.PutUint32(record[recordStartLine:], 0)
	}
	for _, d := range dropped {
		for b := d[0]; b < d[1]; b++ {
			if !kept[b] { // equal lists of steps lie there once
				steps[b] = 0
			}
		}
	}
	clear(tables[place(headUnits):place(headSteps)]) // names of files
	unname(tables[place(headNames):place(headUnits)])
	return nil
}

// named are the beginnings of names that stay: the project's own, and the runtime's, which looks at
// them itself.
var named = []string{"suncask", "main.", "runtime."}

// unname empties all other names: stack traces leave those functions out.
func unname(names []byte) {
	for len(names) > 0 {
		end := bytes.IndexByte(names, 0)
		if end < 0 {
			return
		}
		if name := string(names[:end]); !slices.ContainsFunc(named, func(prefix string) bool { return strings.HasPrefix(name, prefix) }) {
			clear(names[:end])
		}
		names = names[end+1:]
	}
}

// stepsEnd is where a list of steps ends: pairs of numbers of seven bits a byte up to a zero
// that is not its first number. Place 0 is no list.
func stepsEnd(steps []byte, from int) (end int, ok bool) {
	if from == 0 {
		return 0, true
	}
	for at := from; at < len(steps); {
		if steps[at] == 0 && at > from {
			return at + 1, true
		}
		for range 2 {
			_, n := binary.Uvarint(steps[at:])
			if n <= 0 {
				return 0, false
			}
			at += n
		}
	}
	return 0, false
}
