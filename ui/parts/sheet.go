package parts

import (
	"strings"

	"suncask/ui/format"
)

// Sheet is a table that the page shows and hands out as CSV.
type Sheet struct {
	ID      string // of the element, and the file's name
	Caption string
	Head    []string
	Rows    []SheetRow
}

// SheetRow is a row: its first cell is its heading.
type SheetRow struct {
	Cells []any // strings and figures
	Mark  string
	Take  func() // by a button, nil where there is none
}

// Figure is a number with the decimals that are shown.
type Figure struct {
	Value    float64
	Decimals int
}

// Number returns a figure.
func Number(v float64, decimals int) Figure { return Figure{v, decimals} }

// Part is a figure that is shown so that it and its fellows add up, see format.AddUp.
type Part struct {
	Figure
	Shown float64
}

// AddUp makes the figures of a column, in the rows from one on, parts.
func (s *Sheet) AddUp(column, from int) {
	var exact []float64
	decimals := 0
	for i := from; i < len(s.Rows); i++ {
		f := s.Rows[i].Cells[column].(Figure)
		exact, decimals = append(exact, f.Value), f.Decimals
	}
	for i, shown := range format.AddUp(exact, decimals) {
		cell := &s.Rows[from+i].Cells[column]
		*cell = Part{(*cell).(Figure), shown}
	}
}

// Text is a cell as it is shown.
func Text(cell any) string {
	switch f := cell.(type) {
	case Figure:
		return format.Number(f.Value, f.Decimals)
	case Part:
		return format.Number(f.Shown, f.Decimals)
	}
	return cell.(string)
}

func (r *SheetRow) name() string { return Text(r.Cells[0]) }

func (r *SheetRow) rest() []any { return r.Cells[1:] }

// CSV is the sheet as RFC 4180 has it, figures unrounded with a point.
func (s *Sheet) CSV() string {
	var b strings.Builder
	line := func(cells []any) {
		for i, cell := range cells {
			if i > 0 {
				b.WriteByte(',')
			}
			text := ""
			switch f := cell.(type) {
			case Figure:
				text = format.Exact(f.Value)
			case Part:
				text = format.Exact(f.Value)
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
	head := make([]any, len(s.Head))
	for i, h := range s.Head {
		head[i] = h
	}
	line(head)
	for i := range s.Rows {
		line(s.Rows[i].Cells)
	}
	return b.String()
}
