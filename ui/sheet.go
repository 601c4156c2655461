package ui

import (
	"strings"

	"suncask/ui/format"
	"suncask/ui/words"
)

// sheet is a table that the page shows and hands out as CSV.
type sheet struct {
	id      string // of the element, and the file's name
	caption string
	head    []string
	rows    []sheetRow
}

// sheetRow is a row: its first cell is its heading.
type sheetRow struct {
	cells []any // strings and figures
	mark  string
	take  func() // by a button, nil where there is none
}

// figure is a number with the decimals that are shown.
type figure struct {
	value    float64
	decimals int
}

// part is a figure that is shown so that it and its fellows add up, see format.AddUp.
type part struct {
	figure
	shown float64
}

// addUp makes the figures of a column, in the rows from one on, parts.
func (s *sheet) addUp(column, from int) {
	var exact []float64
	decimals := 0
	for i := from; i < len(s.rows); i++ {
		f := s.rows[i].cells[column].(figure)
		exact, decimals = append(exact, f.value), f.decimals
	}
	for i, shown := range format.AddUp(exact, decimals) {
		cell := &s.rows[from+i].cells[column]
		*cell = part{(*cell).(figure), shown}
	}
}

func shownCell(cell any) string {
	switch f := cell.(type) {
	case figure:
		return format.Number(f.value, f.decimals)
	case part:
		return format.Number(f.shown, f.decimals)
	}
	return cell.(string)
}

func (r *sheetRow) name() string { return shownCell(r.cells[0]) }

func (r *sheetRow) rest() []any { return r.cells[1:] }

// csv is the sheet as RFC 4180 has it, figures unrounded with a point.
func (s *sheet) csv() string {
	var b strings.Builder
	line := func(cells []any) {
		for i, cell := range cells {
			if i > 0 {
				b.WriteByte(',')
			}
			text := ""
			switch f := cell.(type) {
			case figure:
				text = format.Exact(f.value)
			case part:
				text = format.Exact(f.value)
			case string:
				text = f
			}
			if strings.ContainsAny(text, ",\"\r\n") {
				text = `"` + strings.ReplaceAll(text, `"`, `""`) + `"`
			}
			b.WriteString(text)
		}
		b.WriteString("\r\n")
	}
	head := make([]any, len(s.head))
	for i, h := range s.head {
		head[i] = h
	}
	line(head)
	for i := range s.rows {
		line(s.rows[i].cells)
	}
	return b.String()
}

// Table shows a sheet.
type Table struct {
	Page  *Page
	Sheet *sheet
	Fold  bool // it is shown on demand: a picture says the same
}

func (c *Table) open() bool { return !c.Fold || c.Page.TableOpen == c.Sheet.id }

// turn opens the table, or closes it; one is open at a time.
func (c *Table) turn() {
	if c.open() {
		c.Page.TableOpen = ""
	} else {
		c.Page.TableOpen = c.Sheet.id
	}
}

func (c *Table) foldName() string {
	if c.open() {
		return c.Page.T(words.TableClose)
	}
	return c.Page.T(words.TableRead)
}

func (c *Table) save() {
	if c.Page.Host != nil {
		c.Page.Host.Save("suncask-"+c.Sheet.id+".csv", c.Sheet.csv())
	}
}

func (c *Table) saveName() string { return c.Page.T(words.SaveTable) }

func (c *Table) saveLabel() string { return c.saveName() + ": " + c.Sheet.caption }

func (c *Table) take(r *sheetRow) {
	r.take()
	c.Page.changed()
}
