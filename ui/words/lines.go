package words

import (
	"fmt"
	"strconv"
	"strings"
)

// Lines writes a catalogue as text, but for the texts of a visit and of a lesson: each list as a line with its
// length, then a line an entry, where a field's name, help and choices stand between tabs.
func (c *Catalogue) Lines() string {
	var b strings.Builder
	for _, list := range c.lists() {
		writeList(&b, *list)
	}
	fmt.Fprintln(&b, len(c.Fields))
	for _, f := range c.Fields {
		fmt.Fprintln(&b, strings.Join(append([]string{f.Name, f.Help}, f.Choices...), "\t"))
	}
	return b.String()
}

// LessonLines writes the texts of a lesson.
func (c *Catalogue) LessonLines() string {
	var b strings.Builder
	writeList(&b, c.Lesson)
	writeCards(&b, c.Cards)
	return b.String()
}

// VisitLines writes the texts of a visit.
func (c *Catalogue) VisitLines() string {
	var b strings.Builder
	writeList(&b, c.Visit)
	return b.String()
}

func writeList(b *strings.Builder, list []string) {
	fmt.Fprintln(b, len(list))
	for _, text := range list {
		fmt.Fprintln(b, text)
	}
}

// readList takes a list from the beginning of lines.
func readList(lines []string) (list, rest []string, err error) {
	n, err := strconv.Atoi(lines[0])
	if err != nil || n < 0 || n+1 >= len(lines) {
		return nil, nil, fmt.Errorf("words: %q is not the length of a list in the %d lines that are left", lines[0], len(lines))
	}
	return lines[1 : 1+n], lines[1+n:], nil
}

// ReadVisit adds the texts of a visit that VisitLines wrote.
func (c *Catalogue) ReadVisit(text string) error {
	list, _, err := readList(strings.Split(text, "\n"))
	if err == nil && len(list) != int(lessonKeys-visitKeys) {
		err = fmt.Errorf("words: %d texts of a visit, want %d", len(list), lessonKeys-visitKeys)
	}
	if err == nil {
		c.Visit = list
	}
	return err
}

// ReadLesson adds the texts of a lesson that LessonLines wrote.
func (c *Catalogue) ReadLesson(text string) error {
	list, rest, err := readList(strings.Split(text, "\n"))
	if err == nil && len(list) != int(keyCount-lessonKeys) {
		err = fmt.Errorf("words: %d texts of a lesson, want %d", len(list), keyCount-lessonKeys)
	}
	if err != nil {
		return err
	}
	cards, err := readCards(rest)
	if err == nil {
		c.Lesson, c.Cards = list, cards
	}
	return err
}

// ReadLines is the reverse of Lines.
func ReadLines(text string) (*Catalogue, error) {
	c := new(Catalogue)
	lines := strings.Split(text, "\n")
	next := func() (list []string, err error) {
		list, lines, err = readList(lines)
		return list, err
	}
	for _, list := range c.lists() {
		entries, err := next()
		if err != nil {
			return nil, err
		}
		*list = entries
	}
	fields, err := next()
	if err != nil {
		return nil, err
	}
	for i, line := range fields {
		parts := strings.Split(line, "\t")
		if len(parts) < 2 {
			return nil, fmt.Errorf("words: field %d is %q, want name and help", i, line)
		}
		c.Fields = append(c.Fields, FieldText{parts[0], parts[1], parts[2:]})
	}
	return c, nil
}

func (c *Catalogue) lists() [8]*[]string {
	return [...]*[]string{&c.Units, &c.Problems, &c.Findings, &c.Changes, &c.Months, &c.Page, &c.Files, &c.Notes}
}
