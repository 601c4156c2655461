package ui

// Row is a field with its box or choices, what was refused, and what to mind.
type Row struct {
	Page *Page
	R    row
}
