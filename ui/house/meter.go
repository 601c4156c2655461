package house

import (
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/words"
)

// Meter says which showers fit a meter's reading.
type Meter struct{ Page *page.Page }

func (c *Meter) text() string {
	fit, ok := c.Page.Store.Calibration()
	if !ok {
		return ""
	}
	w := c.Page.View.Words
	month := w.Months[c.Page.Store.Scenario.Month] // also where another day is on the dial
	if !fit.Possible {
		return w.Text(words.MeterNot, format.Number(fit.Least, 0), format.Number(fit.Most, 0), month)
	}
	return w.Text(words.MeterFits, format.Number(fit.Minutes, 1), format.Number(fit.KWh, 0), month)
}

// fits tells whether there are showers to take.
func (c *Meter) fits() bool {
	fit, ok := c.Page.Store.Calibration()
	return ok && fit.Possible && fit.Minutes != c.Page.Store.Scenario.ShowerMinutes
}

func (c *Meter) take() {
	c.Page.Store.TakeCalibration()
	c.Page.Changed()
}
