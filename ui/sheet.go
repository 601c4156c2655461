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

func shownCell(cell any) string {
	if f, ok := cell.(figure); ok {
		return format.Number(f.value, f.decimals)
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
			text, ok := cell.(string)
			if !ok {
				text = format.Exact(cell.(figure).value)
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
