package visit

import (
	"math"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/engine/visit"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/parts"
	"suncask/ui/state"
	"suncask/ui/words"
)

// Return compares what the backup's own meter counted with what the house should have bought, and
// says what would explain the difference.
type Return struct {
	Page *page.Page

	read    state.MeterRead // worked out once a render
	ok      bool
	meter   *visit.Meter
	causes  []visit.Cause
	problem string
}

// Compute takes what is known.
func (c *Return) Compute() {
	c.read, c.ok, c.problem = reading(c.Page)
	if c.ok {
		c.Page.Store.ReadMeter(c.read)
		c.meter, c.causes = c.Page.Store.Meter()
	} else {
		c.meter, c.causes = nil, nil
	}
}

// reading is what was typed: two dates and what the meter showed; problem says why it cannot be.
func reading(c *page.Page) (m state.MeterRead, ok bool, problem string) {
	var v [4]float64
	for i, code := range []visit.Code{visit.DateFrom, visit.DateTo, visit.MeterFrom, visit.MeterTo} {
		if v[i], ok = c.Visit.Reading(code); !ok {
			return m, false, ""
		}
	}
	period, err := visit.PeriodOf(int(v[0]), int(v[1]))
	if err != nil || v[3] < v[2] {
		return m, false, c.T(words.ReturnWrong)
	}
	return state.MeterRead{Period: period, KWh: v[3] - v[2]}, true, ""
}

// MeterWanted tells whether a reading is looked at of which not all is known.
func MeterWanted(c *page.Page) bool {
	if !c.SeesVisit() || c.Visit.Part != page.Return {
		return false
	}
	m, ok, _ := reading(c)
	if !ok {
		return false
	}
	c.Store.ReadMeter(m)
	return !c.Store.Done(state.MeterJob)
}

// dated is a box with a date, or with a number.
type dated struct {
	code visit.Code
	name words.Key
	kind string
}

var meterBoxes = []dated{
	{visit.DateFrom, words.ReturnFirst, "date"}, {visit.MeterFrom, words.ReturnMeter0, "text"},
	{visit.DateTo, words.ReturnLast, "date"}, {visit.MeterTo, words.ReturnMeter1, "text"},
}

func (c *Return) text(k words.Key, args ...any) string { return c.Page.View.Words.Text(k, args...) }

func kWh(v float64) string { return format.Number(v, 0) }

func (c *Return) says() string { return c.text(words.ReturnRead, kWh(c.read.KWh), c.read.Period.Days) }

func (c *Return) expects() string {
	return c.text(words.ReturnExpects, kWh(c.meter.Expected), kWh(c.meter.Least), kWh(c.meter.Most))
}

// outcome is what the reading comes to.
func (c *Return) outcome() string {
	off := format.Number(100*math.Abs(c.read.KWh/c.meter.Expected-1), 0)
	switch {
	case c.meter.Expected <= 0 && c.read.KWh > c.meter.Most:
		return c.text(words.OutcomeHigher, "100")
	case c.read.KWh < c.meter.Least:
		return c.text(words.OutcomeLower, off)
	case c.read.KWh > c.meter.Most:
		return c.text(words.OutcomeHigher, off)
	}
	return c.Page.T(words.OutcomeWithin)
}

// minute says what a minute of showers moves.
func (c *Return) minute() string {
	if c.meter.MinuteKWh <= 0 || c.meter.Expected <= 0 {
		return ""
	}
	return c.text(words.ReturnMinute, format.Number(100*c.meter.MinuteKWh/c.meter.Expected, 0))
}

// causeTexts are a cause's name and what tells it from others.
var causeTexts = [visit.CauseKinds]struct{ name, look words.Key }{
	visit.CauseShower: {words.CauseShower, words.CauseShowerLook}, visit.CausePeople: {words.CausePeople, words.CausePeopleLook},
	visit.CauseClock: {words.CauseClock, words.CauseClockLook}, visit.CauseAllDay: {words.CauseAllDay, words.CauseAllDayLook},
	visit.CauseStat: {words.CauseStat, words.CauseStatLook}, visit.CauseLoss: {words.CauseLoss, words.CauseLossLook},
	visit.CauseSun: {words.CauseSun, words.CauseSunLook}, visit.CauseCold: {words.CauseCold, words.CauseColdLook},
	visit.CauseWeather: {words.CauseWeather, words.CauseWeatherLook}, visit.CauseMeter: {words.CauseMeter, words.CauseMeterLook},
}

func (c *Return) name(of visit.Cause) string { return c.Page.T(causeTexts[of.Kind].name) }

func (c *Return) look(of visit.Cause) string {
	return c.Page.T(words.ReturnLook) + ": " + c.Page.T(causeTexts[of.Kind].look)
}

// would says which value would explain the reading, or that none does.
func (c *Return) would(of visit.Cause) string {
	if !of.Alone {
		return c.text(words.ReturnAlone, kWh(of.Least), kWh(of.Most))
	}
	w := c.Page.View.Words
	unit := func(u scenario.Unit, v float64, decimals int) string {
		return format.In(u, v, decimals) + format.Space + w.Units[u]
	}
	write := func(v float64) string { return "" }
	switch of.Kind {
	case visit.CauseShower:
		write = func(v float64) string { return unit(scenario.Minute, v, 1) }
	case visit.CausePeople:
		write = func(v float64) string { return format.Number(v, 0) }
	case visit.CauseClock:
		write = func(v float64) string { return format.Number(v, 0) + format.Space + "min" }
	case visit.CauseStat:
		write = func(v float64) string { return unit(scenario.Celsius, v, 0) }
	case visit.CauseLoss:
		write = func(v float64) string { return unit(scenario.KWhPerDay, v, 1) }
	case visit.CauseSun:
		write = func(v float64) string { return format.Number(100*v, 0) + format.Space + "%" }
	case visit.CauseCold:
		write = func(v float64) string {
			text := format.In(scenario.Kelvin, v, 1) + format.Space + w.Units[scenario.Kelvin]
			if v > 0 {
				text = "+" + text
			}
			return text
		}
	case visit.CauseMeter:
		return c.Page.T(words.ReturnWould) + " " + format.Number(of.Value, 1) + format.Space + w.Units[scenario.KWhPerDay]
	default:
		return ""
	}
	return c.Page.T(words.ReturnWould) + " " + write(of.Value) + "; " + c.Page.T(words.ReturnNow) + " " + write(of.Assumed)
}

// canTake tells whether the house can have a cause's value.
func (c *Return) canTake(of visit.Cause) bool {
	_, ok := of.Take(c.Page.Store.Prepared)
	return ok
}

// take makes it the house's, and says what that does to the year.
func (c *Return) take(of visit.Cause) {
	c.Page.Store.TakeCause(&of)
	c.Page.Changed()
}

// year says what the last change did to what the year buys.
func (c *Return) year() string {
	since := c.Page.Store.Since
	if since == nil {
		return ""
	}
	return c.text(words.ReturnYear, kWh(c.Page.Store.Results.Year.Total.BoughtJ/simulate.JPerKWh), kWh(since.Total.BoughtJ/simulate.JPerKWh))
}

func (c *Return) status() string {
	if c.ok && c.meter == nil {
		return c.Page.T(words.ReturnWaits)
	}
	return parts.JobStatus(c.Page, state.MeterJob)
}
