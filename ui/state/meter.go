package state

import (
	"math"
	"slices"
	"sort"
	"strconv"
	"strings"

	"suncask/engine/climate"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/engine/visit"
)

// MeterRead is what the backup's own meter counted in a period.
type MeterRead struct {
	Period visit.Period
	KWh    float64
}

// meterMark stands in a job's link before a reading.
const meterMark = "!"

func (m MeterRead) text() string {
	return strconv.Itoa(m.Period.From) + "," + strconv.Itoa(m.Period.Days) + "," + strconv.FormatFloat(m.KWh, 'g', -1, 64)
}

// meterOf is the reverse of text.
func meterOf(text string) (m MeterRead, ok bool) {
	parts := strings.Split(text, ",")
	if len(parts) != 3 {
		return m, false
	}
	from, err1 := strconv.Atoi(parts[0])
	days, err2 := strconv.Atoi(parts[1])
	kWh, err3 := strconv.ParseFloat(parts[2], 64)
	ok = err1 == nil && err2 == nil && err3 == nil && from >= 0 && from < climate.Days && days > 0 && days <= climate.Days && kWh >= 0 && !math.IsInf(kWh, 1)
	return MeterRead{visit.Period{From: from, Days: days}, kWh}, ok
}

// ReadMeter makes a reading the one that is looked at; what was known of another is forgotten.
func (s *Store) ReadMeter(m MeterRead) {
	if m != s.meterRead {
		s.meterRead, s.tasks[MeterJob] = m, task{}
	}
}

// Numbers of a part: a cause's kind and what is known of it, or -1 and what is expected.
const meterNumbers = 7

func workMeter(p *simulate.Prepared, file *climate.Record, reading string, yield func(Part) bool) {
	m, ok := meterOf(reading)
	if !ok {
		return
	}
	for part := range visit.ReadMeter(p, file, m.Period, m.KWh) {
		next := Part{Steps: 1}
		switch {
		case part.Meter != nil:
			next = Part{Numbers: []float64{-1, part.Meter.Expected, part.Meter.Least, part.Meter.Most, part.Meter.MinuteKWh, 0, 0}}
		case part.Cause != nil:
			c, alone := part.Cause, 0.0
			if c.Alone {
				alone = 1
			}
			next = Part{Numbers: []float64{float64(c.Kind), c.Assumed, c.Value, alone, c.Far, c.Least, c.Most}}
		}
		if !yield(next) {
			return
		}
	}
}

// takeMeter reads parts that workMeter wrote.
func (t *task) takeMeter(numbers []float64) {
	for n := range slices.Chunk(numbers, meterNumbers) {
		switch {
		case len(n) < meterNumbers:
		case n[0] < 0:
			t.meter = &visit.Meter{Expected: n[1], Least: n[2], Most: n[3], MinuteKWh: n[4]}
		default:
			t.causes = append(t.causes, visit.Cause{Kind: visit.CauseKind(n[0]), Assumed: n[1], Value: n[2], Alone: n[3] == 1, Far: n[4], Least: n[5], Most: n[6]})
			sort.SliceStable(t.causes, func(i, k int) bool { return visit.CompareCauses(t.causes[i], t.causes[k]) < 0 })
		}
	}
}

// Meter is what the meter should have counted, and what would explain what it did, as far as known.
func (s *Store) Meter() (m *visit.Meter, causes []visit.Cause) {
	t, ok := s.known(MeterJob)
	if !ok {
		return nil, nil
	}
	return t.meter, slices.Clone(t.causes)
}

// TakeCause makes the house with a cause's value the present one, as one change; false where no
// field holds it.
func (s *Store) TakeCause(c *visit.Cause) bool {
	to, ok := c.Take(s.Prepared)
	if ok {
		s.takeHouse(causeFields[c.Kind], to)
	}
	return ok
}

// causeFields are what a cause changes.
var causeFields = map[visit.CauseKind]scenario.FieldID{
	visit.CauseShower: scenario.ShowerMinutes, visit.CausePeople: scenario.People, visit.CauseStat: scenario.SetC, visit.CauseLoss: scenario.LossKWh,
	visit.CauseSun: scenario.SoilPct, visit.CauseClock: scenario.BackupHours, visit.CauseAllDay: scenario.BackupHours,
}
