package house

import (
	"fmt"

	"github.com/vugu/vugu"

	"suncask/engine/scenario"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/parts"
	"suncask/ui/words"
)

// Weather is the weather file and the table of monthly means.
type Weather struct{ Page *page.Page }

// monthFields are the columns of the table.
var monthFields = []scenario.FieldID{scenario.MonthGHI, scenario.MonthTempC, scenario.MonthColdC}

var months = []int{0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11}

func (c *Weather) head(f scenario.FieldID) string {
	w := c.Page.View.Words
	return w.Fields[f].Name + ", " + w.Units[scenario.FieldOf(f).Unit]
}

func (c *Weather) month(m int) string { return c.Page.View.Words.Months[m] }

func cellID(f scenario.FieldID, m int) string {
	return fmt.Sprintf("%s-%d", scenario.FieldOf(f).Key, m+1)
}

func (c *Weather) cellName(f scenario.FieldID, m int) string {
	w := c.Page.View.Words
	return w.Text(words.MonthCell, w.Fields[f].Name, w.Months[m])
}

func (c *Weather) cell(f scenario.FieldID, m int) string {
	text, _ := c.Page.Store.MonthText(f, m)
	return text
}

func (c *Weather) class(f scenario.FieldID, m int) string {
	if _, known := c.Page.Store.MonthText(f, m); known {
		return "known"
	}
	return "guess"
}

// fixed tells whether a column is the file's and cannot be overtyped.
func (c *Weather) fixed(f scenario.FieldID) bool {
	return c.Page.Store.Prepared.Weather.Measured && f != scenario.MonthColdC
}

func (c *Weather) typed(event vugu.DOMEvent, f scenario.FieldID, m int) {
	c.Page.Store.TypeMonth(f, m, event.PropString("target", "value"))
	c.Page.Changed()
}

func (c *Weather) monthsProblem() string {
	for _, f := range monthFields {
		if text := c.Page.Problem(f); text != "" {
			return text
		}
	}
	return c.Page.Problem(scenario.Place)
}

// title compares the light of the brightest and the darkest month.
func (c *Weather) title() string {
	w, y := c.Page.View.Words, c.Page.Store.Prepared.Weather
	light := &y.Place.GHI
	bright, dark := 0, 0
	for m, v := range light {
		if v > light[bright] {
			bright = m
		}
		if v < light[dark] {
			dark = m
		}
	}
	if light[dark] < 0.1 { // the sun hardly rises
		return w.Text(words.ClimateDark, w.Months[bright], format.Number(light[bright], 1), w.Months[dark])
	}
	return w.Text(words.ClimateTimes, format.Number(light[bright]/light[dark], 1), w.Months[bright], w.Months[dark])
}

// ReadClimate are what can be read of the months' light and temperatures.
func ReadClimate(c *page.Page) parts.Items {
	return parts.Months(int(c.Store.Scenario.Month), func(m int) string {
		w, p := c.View.Words, &c.Store.Prepared.Weather.Place
		return w.Text(words.ClimateSays, w.Months[m], format.Number(p.GHI[m], 1), format.Degrees(p.TempC[m]), format.Degrees(c.Store.Prepared.ColdC(m)))
	})
}
