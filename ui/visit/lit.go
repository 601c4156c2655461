package visit

import (
	"errors"
	"math"

	"github.com/vugu/vugu"

	"suncask/engine/pv"
	"suncask/engine/simulate"
	"suncask/engine/visit"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/words"
)

// Lit asks for the light and the cells' temperature, on which expectations hang.
type Lit struct {
	Page    *page.Page
	Problem string // why nothing can be expected
	Light   visit.Given
}

var lightBy = []words.Key{words.TestByMeter, words.TestByAmps, words.TestByClear}

// What the cells' temperature is known by.
const (
	byBack = iota
	byAir
	byOpen
)

var cellsBy = []struct {
	name, label words.Key
	code        visit.Code
}{
	{words.TestByBack, words.TestBackC, visit.BackC},
	{words.TestByAir, words.TestAirC, visit.AirC},
	{words.TestByOpen, words.TestOpenV, visit.StringCode(visit.OpenOf, 1)},
}

// usualWm2 is what an empty box of the light is taken as.
const usualWm2 = 800.0

// given works out light and cells from what was typed. lit is false where they are not known;
// problem says why, where something typed cannot be.
func given(c *page.Page, p *simulate.Prepared) (g visit.Given, lit bool, problem string) {
	v, s := &c.Visit, &p.Scenario
	g.LightShare = visit.ByMeter
	cells := func(wm2 float64) (float64, bool) {
		switch typed, ok := v.Reading(cellsBy[v.Cells].code); {
		case !ok:
			return 0, false
		case v.Cells == byOpen:
			g.CellK, g.VoltsAreCells = visit.OpenVoltsK, true
			at, err := visit.CellOf(p, typed, wm2)
			var none *visit.CellError
			if errors.As(err, &none) {
				problem = c.View.Words.Text(words.CellsNone, format.Number(typed, 0), format.Number(none.Least, 0), format.Number(none.Most, 0))
			}
			return at, err == nil
		case v.Cells == byAir:
			g.CellK = visit.AirK
			return visit.CellOfAir(s, typed, wm2), true
		default:
			g.CellK = visit.SensorK
			return visit.CellOfBack(s, typed, wm2), true
		}
	}
	light, lightOK := 0.0, true
	cellC, cellOK := 0.0, true
	if v.LightBy == page.LightByAmps {
		// The light by amps needs the cells, and the cells by their back or the air need the light: a
		// degree is 0.05 % of the light, so a few rounds settle it.
		amps, ok := v.Reading(visit.StringCode(visit.ShortOf, 1))
		g.AmpsAreLight, lightOK = true, ok && amps > 0
		cellC = pv.StandardC
		for range 4 {
			if light = visit.LightOf(p, 1, amps, cellC); lightOK && cellOK {
				cellC, cellOK = cells(light)
			}
		}
	} else {
		if light, lightOK = v.Reading(visit.Light); v.Typed[visit.Light] == "" {
			light, lightOK = usualWm2, true
		}
		if v.LightBy == page.LightByClear {
			g.LightShare, g.ClearSky = visit.ByClearSky, true
		}
		if lightOK = lightOK && light > 0; lightOK {
			cellC, cellOK = cells(light)
		}
	}
	g.Wm2, g.CellC = light, cellC
	lit = lightOK && cellOK && problem == ""
	if !lit && problem == "" {
		problem = c.T(words.TestEmpty)
	}
	return g, lit, problem
}

// commission is what is expected at the house in that light.
func commission(c *page.Page) (m *visit.Commission, problem string) {
	p := c.Store.Prepared
	g, lit, problem := given(c, p)
	return visit.NewCommission(p, g, lit, c.Visit.Work, c.Visit.Readings()), problem
}

func (c *Lit) lightCode() visit.Code {
	if c.Page.Visit.LightBy == page.LightByAmps {
		return visit.StringCode(visit.ShortOf, 1)
	}
	return visit.Light
}

func (c *Lit) lightName() string {
	if c.Page.Visit.LightBy == page.LightByAmps {
		return c.Page.T(words.TestAmps)
	}
	return c.Page.T(words.TestWm2)
}

func (c *Lit) lightBy(i int) { c.Page.Visit.LightBy = int8(i) }

func (c *Lit) byClear() bool { return c.Page.Visit.LightBy == page.LightByClear }

// clear types in what a sky without cloud gives now.
func (c *Lit) clear() {
	if c.Page.Host == nil {
		return
	}
	day, minute := c.Page.Host.Now()
	wm2 := visit.ClearLight(c.Page.Store.Prepared, day, minute)
	c.Page.Visit.Typed[visit.Light] = format.Input(math.Round(wm2))
}

func (c *Lit) cell() (code visit.Code, name string) {
	by := cellsBy[c.Page.Visit.Cells]
	return by.code, c.Page.T(by.label)
}

func (c *Lit) cellCode() visit.Code { code, _ := c.cell(); return code }

func (c *Lit) cellName() string { _, name := c.cell(); return name }

// assumes tells whether the light's box shows what nobody typed.
func (c *Lit) assumes() bool {
	return c.Page.Visit.LightBy != page.LightByAmps && c.Page.Visit.Typed[visit.Light] == ""
}

func (c *Lit) lightText() string {
	if c.assumes() {
		return c.Page.Box(litID(visit.Light), format.Input(usualWm2))
	}
	return c.shown(c.lightCode())
}

func (c *Lit) shown(code visit.Code) string { return c.Page.Box(litID(code), c.Page.Visit.Typed[code]) }

// litID is the id of a box here: a test may have one of the same reading.
func litID(code visit.Code) string { return "lit-" + string(code) }

// cells says which light and heat is reckoned with.
func (c *Lit) cells() string {
	if c.Problem != "" {
		return c.Problem
	}
	return c.Page.View.Words.Text(words.TestCellsAre, format.Degrees(c.Light.CellC), format.Number(c.Light.Wm2, 0))
}

// boxID is the id of a reading's box.
func boxID(code visit.Code) string { return "read-" + string(code) }

// shown is what a reading's box holds.
func shown(c *page.Page, code visit.Code) string { return c.Box(boxID(code), c.Visit.Typed[code]) }

// typed takes what was typed into a reading's box.
func typed(c *page.Page, event vugu.DOMEvent, code visit.Code) {
	c.Visit.Typed[code] = event.PropString("target", "value")
}

// wrong says what a box allows where it holds something else.
func wrong(c *page.Page, code visit.Code) string {
	if _, ok := c.Visit.Reading(code); ok || c.Visit.Typed[code] == "" {
		return ""
	}
	least, most := page.LimitsOf(code)
	return c.View.Words.Text(words.TestWrong, format.Input(least), format.Input(most))
}
