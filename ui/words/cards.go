package words

import (
	"fmt"
	"strconv"
	"strings"

	"suncask/engine/lesson"
)

// Card are the texts of an experiment, see package lesson.
type Card struct {
	Title, House string
	Rounds       []CardRound
}

// CardRound are those of one of its rounds: what is asked; of the first, sentences of which the first
// says what happened; the lines of the reason, see Fill; and what each trap's guesses are told.
type CardRound struct {
	Ask              string
	Says, Why, Traps []string
}

// Lines of cards begin with what they are, and a space.
const (
	cardName  = "#"
	cardTitle = ":"
	cardHouse = "."
	cardAsk   = "?"
	cardRight = "="
	cardWrong = "-"
	cardWhy   = ">"
	cardTrap  = "!"
)

// readCards reads the cards of all experiments, in their order.
func readCards(lines []string) (list []Card, err error) {
	var card Card // those before any name belong to none
	for i, line := range lines {
		kind, text, _ := strings.Cut(line, " ")
		last := len(card.Rounds) - 1
		switch {
		case line == "":
		case kind == cardName:
			list, card = append(list, Card{}), Card{}
		case kind == cardTitle:
			card.Title = text
		case kind == cardHouse:
			card.House = text
		case kind == cardAsk:
			card.Rounds = append(card.Rounds, CardRound{Ask: text})
		case last >= 0 && (kind == cardRight || kind == cardWrong):
			card.Rounds[last].Says = append(card.Rounds[last].Says, text)
		case last >= 0 && kind == cardWhy:
			card.Rounds[last].Why = append(card.Rounds[last].Why, text)
		case last >= 0 && kind == cardTrap:
			card.Rounds[last].Traps = append(card.Rounds[last].Traps, text)
		default:
			return nil, fmt.Errorf("words: line %d of the cards, %q, is out of place", i+1, line)
		}
		if len(list) > 0 {
			list[len(list)-1] = card
		}
	}
	if len(list) != len(lesson.Experiments()) {
		return nil, fmt.Errorf("words: %d cards of %d experiments", len(list), len(lesson.Experiments()))
	}
	return list, nil
}

// writeCards is the reverse of readCards.
func writeCards(b *strings.Builder, list []Card) {
	names := lesson.Experiments()
	line := func(kind, text string) { b.WriteString(kind + " " + text + "\n") }
	for i := range list {
		line(cardName, names[i].Name)
		line(cardTitle, list[i].Title)
		line(cardHouse, list[i].House)
		for _, r := range list[i].Rounds {
			line(cardAsk, r.Ask)
			for n, text := range r.Says {
				kind := cardWrong
				if n == 0 {
					kind = cardRight
				}
				line(kind, text)
			}
			for _, text := range r.Why {
				line(cardWhy, text)
			}
			for _, text := range r.Traps {
				line(cardTrap, text)
			}
		}
	}
}

// Fill puts numbers into a line of a reason: %[1]s is the first.
func Fill(line string, numbers []string) string {
	for i, n := range numbers {
		line = strings.ReplaceAll(line, "%["+strconv.Itoa(i+1)+"]s", n)
	}
	return line
}
