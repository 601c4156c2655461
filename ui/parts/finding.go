package parts

import (
	"suncask/engine/care"
	"suncask/ui/page"
	"suncask/ui/words"
)

// Finding is something to mind: its severity as a word and a shape, what it is, and on a tap where
// that comes from.
type Finding struct {
	Page  *page.Page
	Of    care.Finding
	Where bool // it says at which input it stands, and leads there
}

// severities are how findings are shown: class, shape and word.
var severities = [...]struct {
	class, icon string
	word        words.Key
}{
	care.Note:    {"finding remark", "#i-note", words.SeverityNote},
	care.Caution: {"finding", "#i-mind", words.SeverityMind},
	care.Stop:    {"finding stop", "#i-stop", words.SeverityStop},
}

func (c *Finding) class() string { return severities[c.Of.Severity].class }

func (c *Finding) icon() string { return severities[c.Of.Severity].icon }

func (c *Finding) word() string { return c.Page.T(severities[c.Of.Severity].word) + "." }

// place is the card that has its field.
func (c *Finding) place() string {
	if _, title, ok := c.Page.CardOf(c.Of.Field); ok {
		return c.Page.T(title)
	}
	return ""
}

// goThere opens that card at the field.
func (c *Finding) goThere() {
	if id, _, ok := c.Page.CardOf(c.Of.Field); ok {
		c.Page.Show(id)
		c.Page.More = true
		c.Page.Reveal(FieldID(c.Of.Field))
	}
}

// open tells whether its source is shown; one is at a time.
func (c *Finding) open() bool {
	s := c.Page.SourceOf
	return s != nil && s.Code == c.Of.Code && s.Field == c.Of.Field
}

func (c *Finding) turn() {
	if c.open() {
		c.Page.SourceOf = nil
		return
	}
	of := c.Of
	c.Page.SourceOf = &of
}

// Counts are findings counted by severity, the worst first.
type Counts struct{ Page *page.Page }

// counted is a severity with how many findings have it.
type counted struct {
	icon, word string
	n          int
	class      string
}

func (c *Counts) list() (list []counted) {
	for severity := care.Stop; severity >= care.Note; severity-- {
		s := severities[severity]
		n := care.Count(c.Page.Findings, severity)
		class := "count"
		if n > 0 && severity > care.Note {
			class = "count some"
		}
		list = append(list, counted{s.icon, c.Page.T(s.word), n, class})
	}
	return list
}
