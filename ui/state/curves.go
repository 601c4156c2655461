package state

import (
	"slices"
	"sort"
	"strconv"
	"strings"

	"suncask/engine/climate"
	"suncask/engine/plan"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// curve is what a year would come to at the values of a field, of a house but for that field.
type curve struct {
	of     scenario.Scenario
	points []plan.At // ascending
}

// butFor is the part of a scenario that a field's curve depends on.
func butFor(id scenario.FieldID, s scenario.Scenario) scenario.Scenario {
	s.Month, s.Sky, s.Known = 0, 0, scenario.FieldSet{}
	scenario.FieldOf(id).Set(&s, 0)
	if id == scenario.Modules { // strings of all of them follow
		s.ShortA = 0
	}
	return s
}

// Curve is what a year would come to over a field's range, as far as known: stale tells that it
// is of a house that has changed since.
func (s *Store) Curve(id scenario.FieldID) (points []plan.At, stale bool) {
	c := s.curves[id]
	return c.points, c.of != butFor(id, s.Scenario)
}

// curvesMark stands in a job's link before the fields whose curves are asked for.
const curvesMark = "~"

// BeginCurves asks for the curves of those of the fields that are not known for the present
// house; ok is false where all are.
func (s *Store) BeginCurves(fields []scenario.FieldID) (link string, ok bool) {
	var list []string
	for _, id := range fields {
		r, ranged := plan.RangeOf(id)
		if points, stale := s.Curve(id); ranged && (stale || len(points) < r.Count) {
			list = append(list, strconv.Itoa(int(id)))
			s.curves[id] = curve{of: butFor(id, s.Scenario)}
		}
	}
	return s.BeginJob(CurvesJob) + curvesMark + strings.Join(list, ","), len(list) > 0
}

// curveNumbers are those of a point: field, value, cost, cool uses.
const curveNumbers = 4

// workCurves simulates the curves of the fields that a link names.
func workCurves(p *simulate.Prepared, file *climate.Record, fields string, yield func(Part) bool) {
	for _, text := range strings.Split(fields, ",") {
		n, err := strconv.Atoi(text)
		r, ok := plan.RangeOf(scenario.FieldID(n))
		if err != nil || !ok {
			continue
		}
		for at := range plan.Curve(p, file, r) {
			if !yield(Part{Steps: 1, Numbers: []float64{float64(n), at.Value, at.Cost, float64(at.CoolUses)}}) {
				return
			}
		}
	}
}

// takeCurves adds points to their curves.
func (s *Store) takeCurves(numbers []float64) {
	for n := range slices.Chunk(numbers, curveNumbers) {
		if len(n) < curveNumbers {
			return
		}
		id := scenario.FieldID(n[0])
		c, ok := s.curves[id]
		if !ok || c.of != butFor(id, s.Scenario) {
			continue
		}
		c.points = append(c.points, plan.At{Value: n[1], Cost: n[2], CoolUses: int32(n[3])})
		sort.Slice(c.points, func(i, j int) bool { return c.points[i].Value < c.points[j].Value })
		s.curves[id] = c
	}
}
