//go:build !outside

package words

import (
	"embed"
	"regexp"
	"strings"
)

// The cards of a lesson, a file a language.
//
//go:embed cards/*.txt
var cardFiles embed.FS

// beforeUnit is the space between a number and its unit, where no line may break.
var beforeUnit = regexp.MustCompile(`(\d|%\[\d\]s) (°C|L\b|kWh?\b|W/m²|W/K|W\b|V\b|A\b|Ω|K\b|h\b|m\b|mm²|%)`)

func init() {
	for _, c := range All() {
		raw, err := cardFiles.ReadFile("cards/" + c.Text(LanguageCode) + ".txt")
		if err != nil {
			panic("words: " + err.Error())
		}
		text := beforeUnit.ReplaceAllString(string(raw), "$1\u00a0$2")
		if c.Cards, err = readCards(strings.Split(text, "\n")); err != nil {
			panic(err)
		}
	}
}

// English is the catalogue in which the page is built.
func English() *Catalogue { return &english }

// Spanish is the second language's.
func Spanish() *Catalogue { return &spanish }

// All are the catalogues in the order of Languages.
func All() []*Catalogue { return []*Catalogue{&english, &spanish, &french, &portuguese} }

// Shown is the catalogue that the page shows.
func Shown() *Catalogue { return &english }
