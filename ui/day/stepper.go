package day

import (
	"strconv"

	"github.com/vugu/vugu"

	"suncask/ui/page"
)

// Stepper shows a time of day and moves it: by buttons a quarter of an hour, by a typed time.
type Stepper struct {
	Page  *page.Page
	Name  string
	Part  string // what it moves, as data-part names it
	Box   string // id of the box with the time
	Wrong bool   // what was typed was refused
	Take  func(vugu.DOMEvent)
}

// stepData is what a stepper button moves, as data-part names it, and by how many minutes.
func stepData(part string, minutes int) string { return part + "," + strconv.Itoa(minutes) }
