package hourly

import (
	"math"
	"strconv"

	"suncask/engine/climate"
	"suncask/engine/solar"
)

// sample is one row: the light of a stretch of time and the temperature at an
// instant, on the file's clock.
type sample struct {
	year, month, day     int     // as the file writes them
	start, length        float64 // minutes after that day's midnight, and how long
	tempAt               float64 // minutes after that day's midnight
	global, direct, diff float64 // W/m2: horizontal, normal to the beam, horizontal; NaN missing
	airC                 float64 // NaN missing
}

// airGrid is the number of half hours of a year.
const airGrid = 2 * climate.Hours

// collector sorts samples into the hours of a clock of whole hours.
type collector struct {
	rec     climate.Record
	sun     climate.SunYear
	ahead   float64 // the record's clock less the file's, minutes
	minutes [climate.Hours]float64
	global  [climate.Hours]float64 // W/m2 times minutes
	diffuse [climate.Hours]float64
	split   [climate.Hours]float64 // minutes whose diffuse part is known
	airSum  [airGrid]float64       // readings within a quarter of an hour of every half hour
	airN    [airGrid]float64

	rows, clipped, leapRows int
	years                   map[int]int // rows of each
	closure, closureOf      float64     // sums of beam and diffuse less global, and of global
	doubledLine             int         // the first that gives an hour again, 0 none
	crowded                 bool        // an hour was given more often than a clock put back can
	notes                   []Note
}

func newCollector(latDeg, lonDeg, elevationM, offsetH float64) *collector {
	c := &collector{years: map[int]int{}}
	c.rec.LatDeg, c.rec.LonDeg, c.rec.ElevationM = latDeg, lonDeg, elevationM
	c.rec.OffsetH = offsetH
	// A file on universal time is kept on its own zone's, so that its days are days.
	if zone := math.Round(lonDeg / 15); math.Abs(zone-offsetH) > 3.5 {
		c.rec.OffsetH = zone
	}
	c.ahead = (c.rec.OffsetH - offsetH) * 60
	p := climate.Place{LatDeg: latDeg, LonDeg: lonDeg, Clock: climate.Clock{OffsetH: c.rec.OffsetH}}
	c.sun = climate.SunYearOf(&p)
	return c
}

func (c *collector) add(s sample, line int) *Error {
	c.rows++
	c.years[s.year]++
	if s.month == 2 && s.day == 29 {
		c.leapRows++
		return nil
	}
	if s.length > 60 {
		return &Error{Code: TooCoarse, Got: strconv.Itoa(int(s.length + 0.5)), Line: line}
	}
	midnight := float64(climate.FirstDay(s.month-1)+s.day-1) * 1440
	start := midnight + s.start + c.ahead
	if !math.IsNaN(s.airC) {
		at := (int(math.Floor((midnight+s.tempAt+c.ahead)/30+0.5)) + airGrid) % airGrid
		c.airSum[at] += s.airC
		c.airN[at]++
	}
	c.complete(&s, start)
	if math.IsNaN(s.global) {
		return nil
	}
	if start == math.Trunc(start/60)*60 && s.length == 60 {
		c.put(int(start/60), 1, 1, &s, line)
	} else {
		c.sun.Cut(start/60, s.length/60, func(hour int, share float64) {
			c.put(hour, 1.0/climate.Slices, share, &s, line)
		})
	}
	if c.crowded {
		return c.several(line)
	}
	return nil
}

// complete derives what can be from the other two of global, direct and diffuse.
func (c *collector) complete(s *sample, start float64) {
	if math.IsNaN(s.direct) || s.direct == 0 && !math.IsNaN(s.global) {
		return
	}
	beam := s.direct * c.sun.MeanCosZenith(start/60, s.length/60)
	switch {
	case math.IsNaN(s.global) && !math.IsNaN(s.diff):
		s.global = beam + s.diff
	case math.IsNaN(s.diff):
		s.diff = math.Max(0, s.global-beam)
	default:
		c.closure += (beam + s.diff - s.global) * s.length
		c.closureOf += s.global * s.length
	}
}

// put adds a part of a sample to an hour: part of its time, share of its energy.
func (c *collector) put(hour int, part, share float64, s *sample, line int) {
	h := wrap(hour)
	c.minutes[h] += s.length * part
	c.global[h] += s.global * s.length * share
	if !math.IsNaN(s.diff) {
		c.diffuse[h] += math.Min(s.diff, s.global) * s.length * share
		c.split[h] += s.length * part
	}
	c.crowded = c.crowded || c.minutes[h] > mostMinutes
	if c.minutes[h] > doubledMinutes && c.doubledLine == 0 {
		c.doubledLine = line
	}
}

func (c *collector) several(line int) *Error {
	if c.doubledLine > 0 {
		line = c.doubledLine
	}
	return &Error{Code: SeveralYears, Line: line, Got: strconv.Itoa(line)}
}

func wrap(hour int) int { return ((hour % climate.Hours) + climate.Hours) % climate.Hours }

// Limits of filling.
const (
	shortGap       = 3   // hours that neighbours fill
	mostMissing    = 876 // hours of a year, a tenth
	mostDoubled    = 30  // hours given twice: a clock put back once or twice, and edges
	doubledMinutes = 90  // of one hour, above which it was given twice
	mostMinutes    = 185 // of one hour, above which another year is there
)

// leastMinutes of an hour make it known.
const leastMinutes = 30

// result ends the year: gaps are filled, what was done is listed.
func (c *collector) result(near *climate.Place) (*Result, *Error) {
	doubled, gone := 0, 0
	var k, share [climate.Hours]float64 // clearness against the sun's height, diffuse part
	var known [climate.Hours]bool
	for h := range c.minutes {
		if c.minutes[h] > doubledMinutes {
			doubled++
		}
		known[h] = c.minutes[h] >= leastMinutes
		if !known[h] {
			gone++
		}
	}
	if doubled > mostDoubled {
		return nil, c.several(c.doubledLine)
	}
	if gone > mostMissing {
		return nil, &Error{Code: TooManyMissing, Got: strconv.Itoa(gone), Want: strconv.Itoa(mostMissing)}
	}
	c.note(DoubledHours, doubled)
	if c.leapRows > 0 {
		c.note(LeapDayLeft, 1)
	}
	withoutDiffuse := 0
	for h := range known {
		if !known[h] {
			continue
		}
		outside := c.outside(h)
		g := c.global[h] / c.minutes[h]
		if outside > 20 { // lower, a clearness says nothing
			k[h] = g / outside
		}
		if g > 0 && c.split[h] >= 0.5*c.minutes[h] {
			share[h] = math.Min(1, c.diffuse[h]/c.split[h]/g)
		} else {
			share[h] = solarShare(g, outside)
			if g > 0 {
				withoutDiffuse++
			}
		}
		c.keep(h, g, share[h])
	}
	short, long := c.fill(&known, &k, &share)
	c.note(FilledShort, short)
	c.note(FilledLong, long)
	c.note(SplitByErbs, withoutDiffuse)
	c.fillAir(near)
	c.note(NightClipped, c.clipped)
	years := 0
	for _, rows := range c.years {
		if rows > c.rows/100 { // not the hours that a clock's offset moves over New Year
			years++
		}
	}
	if years > 1 {
		c.note(MixedYears, years)
	}
	if c.closureOf > 0 {
		if off := 100 * c.closure / c.closureOf; math.Abs(off) >= 5 {
			c.note(GlobalDiffers, int(math.Round(math.Abs(off))))
		}
	}
	if math.IsNaN(c.rec.ElevationM) {
		c.note(HeightNotGiven, 0)
	}
	rec := c.rec
	return &Result{Record: &rec, Rows: c.rows, Years: years, ClockMin: clock(&rec), Notes: c.notes}, nil
}

func (c *collector) note(code NoteCode, n int) {
	if n > 0 || code == HeightNotGiven {
		c.notes = append(c.notes, Note{code, n})
	}
}

// solarShare is the diffuse part of an hour without a diffuse value.
func solarShare(global, outside float64) float64 {
	if outside <= 0 {
		return 1
	}
	return solar.DiffuseShareHourly(math.Min(1, global/outside))
}

// keep stores an hour in the record's steps.
func (c *collector) keep(h int, global, share float64) {
	c.rec.Global[h] = uint16(math.Round(global / climate.LightStep))
	c.rec.Diffuse[h] = min(c.rec.Global[h], uint16(math.Round(global*share/climate.LightStep)))
}

// outside is the hour's mean irradiance outside the air on the horizontal, W/m2.
func (c *collector) outside(h int) float64 {
	return c.sun.MeanCosZenith(float64(h), 1) * c.sun[h/24].ExtraWm2
}

// fill puts light into hours that have none: in gaps of up to three hours the
// neighbours' clearness, joined straight; in longer ones that of the same hour on
// the nearest days that have it.
func (c *collector) fill(known *[climate.Hours]bool, k, share *[climate.Hours]float64) (short, long int) {
	for h := 0; h < climate.Hours; h++ {
		if known[h] {
			continue
		}
		end := h
		for end < climate.Hours && !known[end] {
			end++
		}
		for at := h; at < end; at++ {
			var a, b int
			part := 0.5
			if end-h <= shortGap {
				a, b = wrap(h-1), wrap(end)
				part = float64(at-h+1) / float64(end-h+1)
				short++
			} else {
				a, b = dayAway(known, at, -24), dayAway(known, at, 24)
				long++
			}
			// A neighbour in the dark knows no clearness.
			if k[a] == 0 {
				part = 1
			} else if k[b] == 0 {
				part = 0
			}
			kt := k[a]*(1-part) + k[b]*part
			c.keep(at, kt*c.outside(at), share[a]*(1-part)+share[b]*part)
		}
		h = end
	}
	return short, long
}

// dayAway is the nearest hour of that clock time, day by day, that is known.
func dayAway(known *[climate.Hours]bool, h, step int) int {
	for n := 1; n < climate.Days; n++ {
		if at := wrap(h + n*step); known[at] {
			return at
		}
	}
	return h
}

// fillAir makes hours' means of the readings at their ends; gaps are joined
// straight, and a file without temperature gets the built-in climate's.
func (c *collector) fillAir(near *climate.Place) {
	last := -1
	for h, n := range c.airN {
		if n > 0 {
			last = h
			break
		}
	}
	if last < 0 {
		p := climate.Point(c.rec.LatDeg, c.rec.LonDeg, c.rec.ElevationM).Place
		if near.LatDeg == c.rec.LatDeg && near.LonDeg == c.rec.LonDeg {
			p = *near
		}
		for h, t := range p.AirCourse() {
			c.rec.Air[h] = int16(math.Round(t / climate.AirStep))
		}
		c.note(NoTemperature, climate.Hours)
		return
	}
	var at [airGrid]float64 // at every half hour
	filled := 0
	for done := 0; done < airGrid; {
		span := 1
		for c.airN[(last+span)%airGrid] == 0 && span < airGrid {
			span++
		}
		next := (last + span) % airGrid
		from, to := c.airSum[last]/c.airN[last], c.airSum[next]/c.airN[next]
		for j := 1; j <= span; j++ {
			at[(last+j)%airGrid] = from + (to-from)*float64(j)/float64(span)
		}
		// Readings an hour apart leave every other half hour to be joined.
		filled += (span - 1) / 2
		last = next
		done += span
	}
	c.note(AirJoined, filled)
	for h := range climate.Hours {
		mean := (at[2*h] + 2*at[2*h+1] + at[(2*h+2)%airGrid]) / 4
		c.rec.Air[h] = int16(math.Round(mean / climate.AirStep))
	}
}

// clock is the energy-weighted mean time of the light less mean solar noon, minutes.
func clock(r *climate.Record) float64 {
	noon := 12 - (r.LonDeg/15 - r.OffsetH)
	sum, weight := 0.0, 0.0
	for h, g := range r.Global {
		away := math.Remainder(float64(h%24)+0.5-noon, 24)
		sum += float64(g) * away
		weight += float64(g)
	}
	if weight == 0 {
		return 0
	}
	return sum / weight * 60
}
