package browser

import (
	"fmt"
	"strings"
	"testing"
)

// The main job on phone and desktop, in both themes, both languages and both unit systems:
// open a shared house, give the tank, drag the backup's end, read the result. The same house
// has the same figures in all of them.
func TestEverybody(t *testing.T) {
	figures := map[string]bool{}
	for _, s := range []screen{phone, phoneDark, wide, wideDark} {
		b := start(t, s)
		for _, lang := range []string{"en", "es"} {
			for _, units := range []string{"metric", "us"} {
				name := s.name + "-" + lang + "-" + units
				b.open("?lang=" + lang + "&units=" + units + "#v=2&place=seville&people=4&modules=5&tank=151.4&backup=1500-1800")
				words := map[string][2]string{"en": {"Without the solar panels", "hot water ready"}, "es": {"Sin los paneles solares", "agua caliente lista"}}[lang]
				unit := map[string][3]string{"metric": {" L ", "151.4", "227"}, "us": {" gal ", "40", "60"}}[units]
				if lang == "es" {
					unit[1] = strings.Replace(unit[1], ".", ",", 1)
				}
				if text := b.text(".sentence"); !strings.Contains(text, words[0]) {
					t.Errorf("%s: the sentence is %q", name, text)
				}
				money := map[string]string{"en": "EUR\u202f", "es": "\u202fEUR"}[lang]
				if text := b.text("#out-cost-year"); !strings.Contains(text, money) {
					t.Errorf("%s: the cost is written %q", name, text)
				}
				if text := b.text(".strip-name.water"); !strings.Contains(text, words[1]) || !strings.Contains(text, strings.TrimSpace(unit[0])) {
					t.Errorf("%s: the strip is named %q", name, text)
				}
				finger{b, s.touch}.drag("#grip-1-hit", 30, 4, func() {})
				b.run(card("#panel-tank"))
				b.frame()
				tank := ""
				if b.eval(`document.getElementById('field-tank').value`, &tank); tank != unit[1] {
					t.Errorf("%s: the tank of 151.4 L is shown as %q", name, tank)
				}
				figures[fmt.Sprint(b.value("out-bought-year"), b.value("out-cost-year"), b.value("out-cold-days"))] = true
				b.axe(name)
				b.fits(name, s.width)
				b.typeInto("field-tank", unit[2])
				b.until(`location.hash.includes('tank=227')`)
				b.typeInto("field-set", "10")
				b.until(`document.getElementById('field-set-problem') !== null`)
				b.shot("everybody-" + name)
			}
		}
		b.clean()
	}
	if len(figures) != 1 {
		t.Errorf("the same house has the figures %v", figures)
	}
}
