package visit

import (
	"maps"
	"math"
	"slices"

	"suncask/engine/pv"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// Work is what heats while meters are read: the same reading means different things.
type Work int8

// What heats.
const (
	SunHeats  Work = iota
	Satisfied      // a thermostat or limit is open: nothing does
	GridHeats
	Dusk // dawn or dusk: too little light to tell
	Works
)

// Asked is what a reading should be: a value, and from where to where it may lie, infinite where
// only one side matters.
type Asked struct{ Value, Least, Most float64 }

// Commission is a house at which meters are read, in the light and with the cells that are given.
type Commission struct {
	House    *simulate.Prepared
	Given    Given
	Work     Work
	Readings Readings

	Lit      bool // light and cells are known: what hangs on them can be expected
	Expected Expected
	Bands    [QuantityCount]Band
	strings  int
}

// NewCommission works out what is expected; lit is false where light or cells are not known.
func NewCommission(p *simulate.Prepared, g Given, lit bool, w Work, r Readings) *Commission {
	c := &Commission{House: p, Given: g, Work: w, Readings: r, Lit: lit, strings: p.Wiring().Strings}
	if lit && c.strings > 0 {
		c.Expected, c.Bands = Expect(p, g.Wm2, g.CellC), Bands(p, g)
	}
	return c
}

// Limits of tests that hang on no light.
const (
	nulledOhm    = 0.1  // left by a meter's leads and clips (common practice, no source)
	sheathMegohm = 1.0  // IEC 60364-6, from memory
	mainsShare   = 0.1  // of the mains' voltage (IEC 60038, from memory)
	dialK        = 5.0  // a thermostat about its dial (common practice, no source)
	equalShare   = 0.05 // strings among each other, and light before and after (IEC 62446-1, from memory)
	openAmps     = 0.2  // what a clamp shows of no current (assumption)
)

// Asked is what a reading should be; ok is false where nothing is asked of it as things are.
func (c *Commission) Asked(code Code) (a Asked, ok bool) {
	s, inf := &c.House.Scenario, math.Inf(1)
	switch code {
	case Earth:
		v := c.House.CableOhms()/2 + nulledOhm // one conductor as long and thick as the strings' cable
		return Asked{v, 0, 2 * v}, true
	case Sheath:
		return Asked{sheathMegohm, sheathMegohm, inf}, true
	case ElementOhm:
		least, most := ColdOhms(s.ElementW, s.ElementV)
		return Asked{c.House.ElementOhms(), least, most}, true
	case GridV:
		return Asked{s.SupplyV, s.SupplyV * (1 - mainsShare), s.SupplyV * (1 + mainsShare)}, c.Work == GridHeats
	case GridAmps:
		volts := s.SupplyV
		if read, measured := c.Readings[GridV]; measured {
			volts = read
		}
		amps := volts / c.House.ElementOhms()
		return Asked{amps, amps * (1 - pv.PlateDown - meterAmps), amps * (1 + pv.PlateUp + meterAmps)}, c.Work == GridHeats
	case TapC:
		return Asked{s.TapC, -inf, s.TapC}, true
	case TankTopC:
		at := s.SetC
		if c.Work == SunHeats {
			at = s.SunLimitC
		}
		return Asked{at, at - dialK, at + dialK}, c.Work != Satisfied // whose, nobody says
	case LightAfter:
		v := c.Given.Wm2
		return Asked{v, v * (1 - equalShare), v * (1 + equalShare)}, c.Lit
	case SunAmps:
		if c.Work == Satisfied || c.Work == GridHeats && !s.Elements.Apart() { // the sun's circuit is open
			return Asked{0, -openAmps, openAmps}, c.strings > 0
		}
	}
	q, share, ok := c.quantity(code)
	if !ok || !c.Lit || c.strings == 0 {
		return a, false
	}
	v := c.Expected.Of(q)
	least, most := Limits(q, v, c.Bands[q])
	return Asked{v * share, least * share, most * share}, true
}

// quantity is the expected value that a reading of the strings is compared with, and which share
// of it.
func (c *Commission) quantity(code Code) (q Quantity, share float64, ok bool) {
	heats := c.Work == SunHeats || c.Work == Dusk
	switch code {
	case SunV:
		return ElementVolts, 1, heats
	case SunAmps:
		return ElementAmps, 1, heats
	}
	for n := 1; n <= c.strings && n <= MostStrings; n++ {
		each := 1 / float64(c.strings)
		switch code {
		case StringCode(OpenOf, n):
			return OpenVolts, 1, true
		case StringCode(ShortOf, n):
			return ShortAmps, each, true
		case StringCode(WorkOf, n):
			if c.House.Scenario.Coupling == scenario.Converter {
				return MostAmps, each, heats
			}
			return ElementAmps, each, heats
		}
	}
	return 0, 0, false
}

// Judge compares a reading with what is asked of it. off is by what share it lies below or above;
// ok is false where there is no reading, or nothing is asked.
func (c *Commission) Judge(code Code) (o Outcome, off float64, ok bool) {
	v, measured := c.Readings[code]
	a, asked := c.Asked(code)
	if !measured || !asked {
		return 0, 0, false
	}
	q, share, ofLight := c.quantity(code)
	if ofLight && c.Lit {
		o, off = JudgeReading(q, v/share, c.Expected.Of(q), c.Bands[q], c.Given)
		unsure := c.moved() || c.Work == Dusk || c.Given.ClearSky && !q.Volts() && off < ByClearSky
		if (o == Lower || o == Higher) && unsure || o == Within && c.Work == Dusk {
			return NoJudge, 0, true
		}
		return o, off, true
	}
	switch {
	case v < a.Least:
		return Lower, partOf(a.Value-v, a.Value), true
	case v > a.Most:
		return Higher, partOf(v-a.Value, a.Value), true
	}
	return Within, 0, true
}

// partOf is a share of something, or all of it where that is nothing.
func partOf(part, of float64) float64 {
	if of == 0 {
		return 1
	}
	return math.Abs(part / of)
}

// moved tells whether the light changed while meters were read.
func (c *Commission) moved() bool {
	after, ok := c.Readings[LightAfter]
	return ok && math.Abs(after-c.Given.Wm2) > equalShare*c.Given.Wm2
}

// Apart are the strings whose readings of a kind differ by more than 5 % from the one in the middle
// of all, counted from 1; of two that differ both. None where fewer than two were read.
func (c *Commission) Apart(kind rune) (list []int) {
	read := map[int]float64{}
	for n := 1; n <= min(c.strings, MostStrings); n++ {
		if v, ok := c.Readings[StringCode(kind, n)]; ok {
			read[n] = v
		}
	}
	if len(read) < 2 {
		return nil
	}
	sorted := slices.Sorted(maps.Values(read))
	middle := (sorted[(len(sorted)-1)/2] + sorted[len(sorted)/2]) / 2
	for n := 1; n <= MostStrings; n++ {
		if v, ok := read[n]; ok && math.Abs(v-middle) > equalShare*math.Abs(middle) {
			list = append(list, n)
		}
	}
	return list
}
