package day

import (
	"strconv"
	"strings"

	"suncask/ui/state"
	"suncask/ui/words"
)

// drops are the indices of the marks on the track of uses.
func (c *Dial) drops() []int {
	list := make([]int, len(c.Page.Store.Drops()))
	for i := range list {
		list[i] = i
	}
	return list
}

// dropName is what a screen reader hears of a mark.
func (c *Dial) dropName(i int) string {
	uses := c.Page.UseTexts(c.Page.UsesOf(i))
	text := strings.Join(uses, "; ")
	if len(uses) > 1 {
		text = c.Page.View.Words.Text(words.UseCount, len(uses), text)
	}
	return text
}

func (c *Dial) dropClass(i int) string {
	if i == c.Page.UsesShown {
		return "drop-mark open"
	}
	return "drop-mark"
}

// usesPart is what a mark moves when it is dragged: nothing unless it is open.
func (c *Dial) usesPart(i int) string {
	if i != c.Page.UsesShown || c.Page.View.Open == 0 {
		return ""
	}
	return usesData(c.Page.View.Open)
}

// usesData names uses to the listeners.
func usesData(set state.Occasions) string { return "u" + strconv.Itoa(int(set)) }
