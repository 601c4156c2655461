package words

import (
	"reflect"
	"strings"
	"testing"
)

func TestLines_Property(t *testing.T) {
	c := English()
	text := c.Lines()
	back, err := ReadLines(text)
	if err != nil {
		t.Fatal(err)
	}
	if back.Lines() != text || !reflect.DeepEqual(back.Page, c.Page) || !reflect.DeepEqual(back.Notes, c.Notes) {
		t.Error("a catalogue does not survive its lines")
	}
	if err := back.ReadVisit(c.VisitLines()); err != nil || !back.HasVisit() || !reflect.DeepEqual(back.Visit, c.Visit) {
		t.Error("the texts of a visit do not survive their lines:", err)
	}
	for f := range c.Fields {
		if back.Fields[f].Name != c.Fields[f].Name || len(back.Fields[f].Choices) != len(c.Fields[f].Choices) {
			t.Errorf("field %d: %v, want %v", f, back.Fields[f], c.Fields[f])
		}
	}
}

func TestReadLines_Refuses(t *testing.T) {
	for _, text := range []string{"", "2\nhere", "-1\n", "many\n", strings.Repeat("0\n", 8) + "1\nno help\n"} {
		if c, err := ReadLines(text); err == nil {
			t.Errorf("%q became %v", text, c)
		}
	}
}

func TestReadVisit_Refuses(t *testing.T) {
	for _, text := range []string{"", "1\none\n", "<html>"} {
		c := new(Catalogue)
		if err := c.ReadVisit(text); err == nil || c.HasVisit() {
			t.Errorf("%q became %v", text, c.Visit)
		}
	}
}
