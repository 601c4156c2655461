// Package visit is what an installer works out at a house before and while fitting: ways to wire
// its modules, the least ratings of what is fitted, cables. It has no clock; local codes and
// licensed people decide.
package visit

import (
	"cmp"
	"iter"

	"suncask/engine/care"
	"suncask/engine/climate"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// MostStrings are as many as are tried side by side.
const MostStrings = 6

// Wiring is a way to wire the modules of a house's first plane and to bring their power to the
// element, with what limits say of it.
type Wiring struct {
	To       scenario.Scenario
	OfferedJ float64 // a year at the element, whoever needs it
	IntoJ    float64 // a year into the water, with the house's own hours
	HotV     float64 // of a string at most power, hot cells, behind the cable, see simulate.Wiring
	Strings  int     // side by side, of all planes
	RunV     float64 // where they work in full sun, cells of 25 degC: at most power with a converter, else as the element holds them
	RunA     float64
	CableMM2 float64 // the smallest for the loss that is allowed, 0 where none is
	Ratings
	Findings []care.Finding // of what is electric
}

// Stops tells whether a finding says that it is not to be built like this.
func (w *Wiring) Stops() bool { return care.Count(w.Findings, care.Stop) > 0 }

// Cautions counts the findings to be dealt with.
func (w *Wiring) Cautions() int { return care.Count(w.Findings, care.Caution) }

// Compare orders wirings: those that nothing stops first, then those with fewer cautions, then
// by the heat that they bring into the water.
func Compare(a, b *Wiring) int {
	if x, y := a.Stops(), b.Stops(); x != y {
		if x {
			return 1
		}
		return -1
	}
	if c := cmp.Compare(a.Cautions(), b.Cautions()); c != 0 {
		return c
	}
	return cmp.Compare(b.IntoJ, a.IntoJ)
}

// Houses are the house with each way to wire its modules: every number in series that goes up,
// with up to MostStrings strings, with each coupling; its own is among them if it goes up.
func Houses(s *scenario.Scenario) (list []scenario.Scenario) {
	for strings := 1; strings <= MostStrings; strings++ {
		if s.Modules == 0 || s.Modules%strings != 0 {
			continue
		}
		for coupling := scenario.Converter; coupling <= scenario.Staged; coupling++ {
			to := *s
			to.Coupling, to.InString = coupling, s.Modules/strings
			to.Known = to.Known.With(scenario.CoupledBy, scenario.InString)
			list = append(list, to)
		}
	}
	return list
}

// Wirings judges them one by one. Those of which no such house can be prepared are left out.
// file is the house's weather record or nil.
func Wirings(p *simulate.Prepared, file *climate.Record) iter.Seq[*Wiring] {
	return func(yield func(*Wiring) bool) {
		ws := new(simulate.Workspace)
		var year simulate.Year
		for _, to := range Houses(&p.Scenario) {
			q, err := simulate.Prepare(&to, file, p)
			if err != nil {
				continue
			}
			q.RunYear(to.Backup, ws, &year)
			w := Judge(q)
			w.IntoJ = year.Total.SunJ
			if !yield(w) {
				return
			}
		}
	}
}

// Judge works out a prepared house's wiring but for the year's heat.
func Judge(p *simulate.Prepared) *Wiring {
	s, of := &p.Scenario, p.Wiring()
	w := &Wiring{To: *s, OfferedJ: p.Potential.ElementJ, HotV: of.HotV, Strings: of.Strings, RunV: of.FullV, RunA: of.FullA, Ratings: RatingsOf(p), Findings: care.Electric(p)}
	if s.Coupling == scenario.Converter { // also where its window holds them off it
		w.RunV, w.RunA = float64(of.InString)*s.MostV, s.ModuleW/s.MostV*float64(of.Strings)
	}
	w.CableMM2, _ = SmallestCable(s.CableM, w.RunV, w.RunA, w.DesignA, s.DropPct)
	return w
}

// Assumed are the fields on which electric findings hang and that nobody confirmed.
func Assumed(s *scenario.Scenario) (list []scenario.FieldID) {
	for _, id := range hangsOn {
		f := scenario.FieldOf(id)
		if !s.Known.Has(id) || f.Optional && f.Empty(f.Get(s)) {
			list = append(list, id)
		}
	}
	return list
}

// hangsOn are those fields.
var hangsOn = [...]scenario.FieldID{
	scenario.Place, scenario.ColdestC, scenario.ModuleW, scenario.OpenV, scenario.MostV, scenario.ShortA, scenario.VoltPct,
	scenario.MaxSystemV, scenario.MaxFuseA, scenario.CableM, scenario.CableSize, scenario.ElementW, scenario.ElementV, scenario.SupplyV,
	scenario.ConverterLowV, scenario.ConverterHighV, scenario.ConverterMaxV, scenario.ConverterMaxA, scenario.ConverterShortA, scenario.ConverterSteps, scenario.ConverterOut,
	scenario.BreaksBy, scenario.ChangeBy,
}
