package plan

import (
	"math"
	"slices"
	"sort"

	"suncask/engine/care"
	"suncask/engine/climate"
	"suncask/engine/finance"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// Change is a kind of change to a house.
type Change int8

const (
	Longer    Change = iota // backup hours
	Shifted                 // backup hours
	Rescue                  // when little water is ready
	OtherRule               // for who has the element
	Jacket
	LessFlow  // of showers
	HotterSun // a higher limit for the sun
	CoolerSet // a lower thermostat of the backup, not below what hygiene asks, with a higher limit for the sun
	OneModule // more
	MoreLitres
	SecondWindow // that ends when a use begins
	MovedUse     // showers at another time of the day
	ShorterUse   // showers
	BoostPress   // before a use
	changeCount
)

// Changes returns all kinds.
func Changes() (list []Change) {
	for c := range changeCount {
		list = append(list, c)
	}
	return list
}

// Fix is a change with the year it was simulated for.
type Fix struct {
	Change  Change
	Field   scenario.FieldID // that is changed
	To      scenario.Scenario
	Year    simulate.Flows
	Saves   float64        // a year
	Invest  float64        // today, as far as the scenario knows what it costs
	Worth   float64        // today, over the scenario's years
	Brings  []care.Finding // cautions that were not there
	Presses int            // of a boost before the use, on its day; To is the house as it is
	changed float64        // how far, in steps of its kind
}

// Fixes are the changes that leave fewer uses cool, where more run cool than accepted;
// else those that cost less in a year and keep to what is accepted. Each is a simulated
// year, the best of its kind, and brings no finding that stops, nor worsens one. Those
// that bring no caution come first, then what is worth most.
func Fixes(p *simulate.Prepared, file *climate.Record, ws *simulate.Workspace) []Fix {
	s := &p.Scenario
	accept := int32(s.AcceptUses)
	return choose(p, file, ws, candidates(s), accept, func(now *simulate.Flows, f *Fix, _ *simulate.Prepared, _ *simulate.Year) bool {
		if now.CoolUses > accept {
			return f.Year.CoolUses < now.CoolUses
		}
		return f.Year.CoolUses <= accept && f.Saves >= 0.005*now.Cost+1e-9
	})
}

// choose simulates changes and returns the best of each kind among those that are good, in
// order.
func choose(p *simulate.Prepared, file *climate.Record, ws *simulate.Workspace, tried []Fix, accept int32,
	good func(now *simulate.Flows, f *Fix, q *simulate.Prepared, y *simulate.Year) bool) []Fix {
	s := &p.Scenario
	y := new(simulate.Year)
	p.RunYear(s.Backup, ws, y)
	now, found := y.Total, care.Findings(p)
	best := map[Change]Fix{}
	for _, f := range tried {
		q, err := simulate.Prepare(&f.To, file, p)
		if err != nil {
			continue // no module has such a datasheet, or no weather
		}
		var stops bool
		if f.Brings, stops = brought(found, care.Findings(q)); stops {
			continue
		}
		q.RunYear(f.To.Backup, ws, y)
		f.Year, f.Saves = y.Total, now.Cost-y.Total.Cost
		if !good(&now, &f, q, y) {
			continue
		}
		project := Project(s, f.Saves, 0)
		project.Cost, project.Upkeep, project.Replacement = f.Invest, 0, 0
		f.Worth = finance.NPV(project.Discount, project.Payments())
		if b, ok := best[f.Change]; !ok || f.before(&b, accept) {
			best[f.Change] = f
		}
	}
	var list []Fix
	for c := range changeCount {
		if f, ok := best[c]; ok {
			list = append(list, f)
		}
	}
	order(list, accept)
	return list
}

// order puts what brings a caution last, then what misses the promise most, then what is
// worth least.
func order(list []Fix, accept int32) {
	sort.SliceStable(list, func(i, j int) bool {
		a, b := &list[i], &list[j]
		if x, y := min(1, len(a.Brings)), min(1, len(b.Brings)); x != y {
			return x < y
		}
		if x, y := max(0, a.Year.CoolUses-accept), max(0, b.Year.CoolUses-accept); x != y {
			return x < y
		}
		return a.Worth > b.Worth
	})
}

// before orders fixes of one kind: the promise, then worth, then the smaller change.
func (f *Fix) before(o *Fix, accept int32) bool {
	if a, b := max(0, f.Year.CoolUses-accept), max(0, o.Year.CoolUses-accept); a != b {
		return a < b
	}
	if math.Abs(f.Worth-o.Worth) > costSlack {
		return f.Worth > o.Worth
	}
	return f.changed < o.changed
}

// brought lists the cautions that a change brings, and tells whether it brings or worsens
// a finding that stops.
func brought(was, is []care.Finding) (cautions []care.Finding, stops bool) {
	for _, f := range is {
		i := slices.IndexFunc(was, func(w care.Finding) bool { return w.Code == f.Code && w.Severity >= f.Severity })
		switch {
		case f.Severity == care.Stop && (i < 0 || f.Args[0] > was[i].Args[0]+1e-9):
			stops = true
		case f.Severity == care.Caution && i < 0:
			cautions = append(cautions, f)
		}
	}
	return cautions, stops
}
