package words

import (
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"

	"suncask/engine/lesson"
)

// Every language has a card of every experiment, in their order, with a sentence for every trap and
// three of which the first is right; numbers stand where English has them; a card that is written is
// read back as it was.
func TestCards_Property(t *testing.T) {
	number := regexp.MustCompile(`%\[\d\]s`)
	numbers := func(text string) []string {
		list := number.FindAllString(text, -1)
		slices.Sort(list)
		return list
	}
	for _, c := range All() {
		language := c.Text(LanguageCode)
		raw, err := os.ReadFile("cards/" + language + ".txt")
		if err != nil {
			t.Fatal(err)
		}
		var names []string
		for _, line := range strings.Split(string(raw), "\n") {
			if name, ok := strings.CutPrefix(line, cardName+" "); ok {
				names = append(names, name)
			}
		}
		for i, e := range lesson.Experiments() {
			if names[i] != e.Name {
				t.Errorf("%s: card %d is %q, not %q", language, i, names[i], e.Name)
			}
			card, english := &c.Cards[i], &english.Cards[i]
			if len(card.Rounds) != len(e.Rounds) || card.Title == "" || card.House == "" || len(card.Rounds[0].Says) != 3 {
				t.Fatalf("%s, %s: %d rounds of %d, %+v", language, e.Name, len(card.Rounds), len(e.Rounds), card)
			}
			for r := range e.Rounds {
				is, of := &card.Rounds[r], &english.Rounds[r]
				if len(is.Traps) != len(e.Rounds[r].Traps)+len(e.Rounds[r].Shapes) || len(is.Why) != len(of.Why) || len(is.Why) == 0 || is.Ask == "" || r > 0 && len(is.Says) > 0 {
					t.Errorf("%s, %s, round %d: %+v", language, e.Name, r, is)
					continue
				}
				for n := range is.Why {
					if a, b := numbers(is.Why[n]), numbers(of.Why[n]); !slices.Equal(a, b) {
						t.Errorf("%s, %s, round %d: %q has %v, English %v", language, e.Name, r, is.Why[n], a, b)
					}
				}
			}
		}
		read := new(Catalogue)
		if err := read.ReadLesson(c.LessonLines()); err != nil || read.LessonLines() != c.LessonLines() || !read.HasLesson() {
			t.Errorf("%s: cards are not read back: %v", language, err)
		}
	}
}

func TestCards_Refused(t *testing.T) {
	for _, text := range []string{"", "> a reason", "# power\n> a reason", "# power\nnothing", "# power\n: a title"} {
		if list, err := readCards(strings.Split(text, "\n")); err == nil {
			t.Errorf("%q: %+v", text, list)
		}
	}
}

// No number of a reason is left to be filled in.
func TestFill(t *testing.T) {
	if got := Fill("%[1]s kWh = %[2]s kW × %[3]s h = %[1]s", []string{"6", "3", "2"}); got != "6 kWh = 3 kW × 2 h = 6" {
		t.Error(got)
	}
}
