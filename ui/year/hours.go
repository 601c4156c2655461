package year

import (
	"suncask/engine/climate"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/ui/format"
	"suncask/ui/parts"
	"suncask/ui/words"
)

// saveHours hands out every hour of the year as CSV.
func (c *Yearly) saveHours() {
	if c.Page.Host == nil {
		return
	}
	t := c.Page.T
	sh := &parts.Sheet{ID: "hours", Head: []string{t(words.Month), t(words.DayOfMonth), t(words.HourFrom), t(words.HourOffer), t(words.KeySun), t(words.KeyGrid),
		c.Page.View.Words.Text(words.MonthsCost, c.Page.Store.Scenario.Currency), t(words.HourLitres), t(words.HourMean)}}
	c.Page.Store.EachHour(func(day, hour int, h *simulate.Hour) {
		m := climate.MonthOf(day)
		whole := func(n int) parts.Figure { return parts.Number(float64(n), 0) }
		sh.Rows = append(sh.Rows, parts.SheetRow{Cells: []any{whole(m + 1), whole(day - climate.FirstDay(m) + 1), whole(hour),
			parts.Number(h.OfferJ/simulate.JPerKWh, 3), parts.Number(h.SunJ/simulate.JPerKWh, 3), parts.Number(h.BoughtJ/simulate.JPerKWh, 3),
			parts.Number(h.Cost, 4), parts.Number(format.Shown(scenario.Litre, h.UsableL), 1), parts.Number(format.Shown(scenario.Celsius, h.MeanC), 2)}})
	})
	c.Page.Host.Save("suncask-hours.csv", sh.CSV())
}
