package plan

import (
	"iter"
	"math"

	"suncask/engine/climate"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// Range is the sensible part of a field's range, in even steps: what a household might choose
// among (assumptions).
type Range struct {
	Field      scenario.FieldID
	From, Step float64
	Count      int
}

// Ranges are those of the fields whose every value is worth a look.
var Ranges = [...]Range{
	{scenario.People, 1, 1, 8},
	{scenario.ShowerMinutes, 2, 1, 14},
	{scenario.ShowerFlow, 4, 1, 13},
	{scenario.Modules, 0, 1, 13},
	{scenario.TiltDeg, 0, 5, 19},
	{scenario.AzimuthDeg, 0, 15, 24},
	{scenario.CableM, 0, 5, 13},
	{scenario.TankLitres, 80, 20, 17},
	{scenario.SetC, 45, 2, 18},
	{scenario.LossKWh, 0.5, 0.25, 15},
}

// RangeOf returns a field's; ok is false for fields without one.
func RangeOf(id scenario.FieldID) (r Range, ok bool) {
	for _, r := range Ranges {
		if r.Field == id {
			return r, true
		}
	}
	return r, false
}

// To is the last value.
func (r *Range) To() float64 { return r.From + float64(r.Count-1)*r.Step }

// At is a value of a field with what a year would come to.
type At struct {
	Value, Cost float64
	CoolUses    int32
}

// Curve simulates a year for each value of a field's range, the nearest to the present one
// first. Values that a house cannot have are left out.
func Curve(p *simulate.Prepared, file *climate.Record, r Range) iter.Seq[At] {
	return func(yield func(At) bool) {
		f := scenario.FieldOf(r.Field)
		now := (f.Get(&p.Scenario) - r.From) / r.Step
		last := p
		var ws simulate.Workspace
		var y simulate.Year
		for _, i := range outward(now, r.Count) {
			s := p.Scenario
			at := At{Value: f.Snap(r.From + float64(i)*r.Step)}
			f.Set(&s, at.Value)
			s.Known = s.Known.With(r.Field)
			s.Settle()
			house, err := simulate.Prepare(&s, file, last)
			if err != nil {
				continue
			}
			last = house
			house.RunYear(s.Backup, &ws, &y)
			at.Cost, at.CoolUses = y.Total.Cost, y.Total.CoolUses
			if !yield(at) {
				return
			}
		}
	}
}

// outward lists n places from 0 on by their distance from a point.
func outward(from float64, n int) (list []int) {
	below := int(math.Floor(math.Max(-1, math.Min(float64(n-1), from))))
	above := below + 1
	for below >= 0 || above < n {
		if above >= n || below >= 0 && from-float64(below) <= float64(above)-from {
			list = append(list, below)
			below--
		} else {
			list = append(list, above)
			above++
		}
	}
	return list
}
