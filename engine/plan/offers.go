package plan

import (
	"iter"
	"math"
	"sort"

	"suncask/engine/care"
	"suncask/engine/climate"
	"suncask/engine/finance"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// Offer is a house as it could be, with its year.
type Offer struct {
	Way    Way // of setting the hours, in a search of Ways
	To     scenario.Scenario
	Months *[12]scenario.Backup // hours of each month, with EachMonth
	Year   simulate.Flows       // a mean of years, with ManyYears
	Kept   bool                 // no more uses run cool than accepted
	Worth  float64              // today, against backup all day without modules in the house's own tank
	Mind   []care.Code          // cautions that the house did not have
}

// Search is what kind of houses are tried.
type Search int8

const (
	Sizes    Search = iota // numbers of modules, tanks and wirings, each with its best hours
	Elements               // rated watts of the element, each with its best hours
	Ways                   // of setting the hours, of the house as it is
)

// Run tries houses one after another. Between two simulated years it hands out nil, so
// that a caller can stop or show progress. file is the scenario's weather record or nil. Only
// Sizes can be shared.
func (k Search) Run(p *simulate.Prepared, file *climate.Record, share Share) iter.Seq[*Offer] {
	return func(yield func(*Offer) bool) {
		t := trial{p: p, file: file, yield: yield, share: share, found: care.Findings(p), accept: p.Scenario.AcceptUses}
		t.allDay = t.bare()
		switch k {
		case Sizes:
			t.sizes()
		case Elements:
			t.elements()
		case Ways:
			t.ways()
		}
	}
}

// trial is a search on its way.
type trial struct {
	p      *simulate.Prepared
	file   *climate.Record
	yield  func(*Offer) bool
	share  Share
	over   bool // the caller stopped
	found  []care.Finding
	accept int
	allDay simulate.Flows // backup all day without modules
	ws     simulate.Workspace
	year   simulate.Year
}

// step hands out nil; false where the caller stops.
func (t *trial) step() bool {
	t.over = t.over || !t.yield(nil)
	return !t.over
}

// offer hands out a house.
func (t *trial) offer(o *Offer) {
	if t.over {
		return
	}
	o.Kept = int(o.Year.CoolUses) <= t.accept
	o.Worth = t.worth(&o.To, &o.Year)
	t.over = !t.yield(o)
}

// bare is the year of the house with backup all day and no modules.
func (t *trial) bare() simulate.Flows {
	s := t.p.Scenario.WithoutModules()
	q, err := simulate.Prepare(&s, t.file, t.p)
	if err != nil { // the same house has been prepared with modules
		panic("plan: " + err.Error())
	}
	q.RunYear(scenario.Backup{AllDay: true}, &t.ws, &t.year)
	return t.year.Total
}

// worth is the present value of a house with its year: what it saves, less what it costs.
func (t *trial) worth(s *scenario.Scenario, year *simulate.Flows) float64 {
	project := Project(s, t.allDay.Cost-year.Cost, 0)
	if s.TankLitres != t.p.Scenario.TankLitres {
		project.Cost += s.TankCost
	}
	return finance.NPV(project.Discount, project.Payments())
}

// best offers a house with its best hours; prev is a prepared house like it.
func (t *trial) best(s scenario.Scenario, prev *simulate.Prepared) {
	q, mind, ok := t.prepare(&s, prev)
	if !ok {
		return
	}
	w, ok := t.seek(NewGrid(q, s.Backup.Second))
	if !ok {
		return
	}
	s.Backup = w.Backup(s.Backup.Second)
	s.Known = s.Known.With(scenario.BackupHours)
	q.RunYear(s.Backup, &t.ws, &t.year)
	t.offer(&Offer{To: s, Year: t.year.Total, Mind: mind})
}

// seek looks for the best window of a grid; false where the caller stops.
func (t *trial) seek(g *Grid) (w Window, ok bool) {
	b := NewBest(g, t.accept)
	for b.Step() {
		if !t.step() {
			b.Stop()
			return w, false
		}
	}
	w, _, _ = b.Result()
	return w, true
}

// prepare prepares a house; ok is false for one that brings a finding that stops, or that
// cannot be.
func (t *trial) prepare(s *scenario.Scenario, prev *simulate.Prepared) (q *simulate.Prepared, mind []care.Code, ok bool) {
	s.Settle()
	if len(s.Problems()) > 0 {
		return nil, nil, false
	}
	q, err := simulate.Prepare(s, t.file, prev)
	if err != nil {
		return nil, nil, false
	}
	cautions, stops := brought(t.found, care.Findings(q))
	for _, f := range cautions {
		mind = append(mind, f.Code)
	}
	return q, mind, !stops
}

// MostModules is how many modules the sizes go up to.
const MostModules = 12

// sizes tries 0 to MostModules modules on the first plane: first in the house's own tank and
// coupling, then in a smaller and a larger one, and each coupling.
func (t *trial) sizes() {
	own := t.p.Scenario
	var fits [MostModules + 1]*wired
	for _, n := range t.share.counts(own.Modules) {
		if fits[n] = t.wire(n, own.Coupling); fits[n] != nil {
			t.best(fits[n].in(t, own.TankLitres), fits[n].house)
		}
	}
	for _, n := range t.share.counts(own.Modules) {
		for coupling := scenario.Converter; coupling <= scenario.Staged; coupling++ {
			as, same := fits[n], coupling == own.Coupling
			switch {
			case t.over || n == 0 && !same: // nothing is coupled
				continue
			case !same:
				as = t.wire(n, coupling)
			}
			for _, litres := range tanks(own.TankLitres) {
				if as != nil && !t.over && !(same && litres == own.TankLitres) {
					t.best(as.in(t, litres), as.house)
				}
			}
		}
	}
}

// Share is the part of a search that one of several workers does.
type Share struct{ Part, Of int }

// Whole is a search that one does alone.
var Whole = Share{0, 1}

// counts are the share's numbers of modules, those near the house's own first.
func (h Share) counts(own int) (list []int) {
	for n := range MostModules + 1 {
		if n%h.Of == h.Part {
			list = append(list, n)
		}
	}
	away := func(n int) int { return max(n-own, own-n) }
	sort.SliceStable(list, func(i, k int) bool { return away(list[i]) < away(list[k]) })
	return list
}

// tankSizes are common ones, L.
var tankSizes = [...]float64{80, 100, 120, 150, 200, 250, 300, 400, 500, 750, 1000}

// tanks are a tank's litres, and the common sizes next below and above.
func tanks(litres float64) (list []float64) {
	smaller, larger := 0.0, 0.0
	for _, l := range tankSizes {
		if l < litres {
			smaller = l
		} else if l > litres && larger == 0 {
			larger = l
		}
	}
	for _, l := range [...]float64{smaller, litres, larger} {
		if l > 0 {
			list = append(list, l)
		}
	}
	return list
}

// mostParallel is how many strings are tried in parallel.
const mostParallel = 4

// wired is the house with another number of modules and their wiring.
type wired struct {
	scenario scenario.Scenario
	house    *simulate.Prepared
}

// wire wires so many modules as gets most of the sun into the element without a finding that
// stops; nil where there is no such way.
func (t *trial) wire(modules int, coupling scenario.Coupling) (best *wired) {
	for parallel := 1; parallel <= mostParallel && !t.over; parallel++ {
		s := t.p.Scenario
		s.Modules, s.Coupling, s.InString = modules, coupling, 0
		if parallel > 1 {
			if modules%parallel != 0 || modules == 0 {
				continue
			}
			s.InString = modules / parallel
		}
		s.Known = s.Known.With(scenario.Modules, scenario.TankLitres, scenario.CoupledBy, scenario.InString)
		q, _, fits := t.prepare(&s, t.p)
		if fits && (best == nil || q.Potential.ElementJ > best.house.Potential.ElementJ) {
			best = &wired{s, q}
		}
	}
	return best
}

// in is that house with another tank.
func (w *wired) in(t *trial, litres float64) scenario.Scenario {
	s := w.scenario
	if own := t.p.Scenario.TankLitres; litres != own {
		s.TankLitres = litres
		scaleLoss(&s, own)
	}
	return s
}

// scaleLoss gives another tank a loss in proportion to its surface, where it is a figure.
func scaleLoss(s *scenario.Scenario, was float64) {
	f := scenario.FieldOf(scenario.LossKWh)
	s.LossKWh = f.Snap(math.Min(f.Max, math.Max(f.Min, s.LossKWh*math.Pow(s.TankLitres/was, 2.0/3))))
	s.Known = s.Known.With(scenario.LossKWh)
}

// elementWatts are common elements.
var elementWatts = [...]float64{1000, 1200, 1500, 2000, 2400, 3000, 3600}

// elements tries common elements, and the house's own.
func (t *trial) elements() {
	own := false
	for _, watts := range elementWatts {
		own = own || watts == t.p.Scenario.ElementW
		t.element(watts)
	}
	if !own {
		t.element(t.p.Scenario.ElementW)
	}
}

func (t *trial) element(watts float64) {
	s := t.p.Scenario
	s.ElementW = watts
	s.Known = s.Known.With(scenario.ElementW)
	t.best(s, t.p)
}
