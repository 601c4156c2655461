package simulate

import (
	"math"
	"math/rand/v2"
	"testing"

	"suncask/engine/climate"
	"suncask/engine/scenario"
)

// extreme fills every field with any value that its table allows.
func extreme(r *rand.Rand) scenario.Scenario {
	s := scenario.Defaults(scenario.LatestVersion)
	for _, f := range scenario.Fields() {
		if f.Kind != scenario.Number && f.Kind != scenario.Choice {
			continue
		}
		v := f.Min + float64(r.IntN(int((f.Max-f.Min)/f.Step)+1))*f.Step
		switch r.IntN(6) { // the ends often
		case 0:
			v = f.Min
		case 1:
			v = f.Max
		}
		f.Set(&s, f.Snap(v))
	}
	if r.IntN(4) > 0 { // several planes at one voltage take long
		for i := range s.More {
			s.More[i].Modules = 0
		}
	}
	// A datasheet that a module can have; impossible ones are tested in pv.
	s.OpenV = scenario.FieldOf(scenario.OpenV).Snap(20 + 40*r.Float64())
	s.MostV = scenario.FieldOf(scenario.MostV).Snap(s.OpenV * 0.83)
	s.ModuleW = math.Round(math.Max(20, math.Min(800, s.MostV*(2+10*r.Float64()))))
	s.VoltPct = -0.27
	places := climate.Places()
	s.Place = places[r.IntN(len(places))].Slug
	s.Settle()
	s.Backup = scenario.Backup{Start: 5 * r.IntN(288), End: 5 * r.IntN(288)}
	if r.IntN(4) == 0 {
		s.Backup.StartFrom, s.Backup.EndFrom = scenario.Anchor(r.IntN(3)), scenario.Anchor(r.IntN(3))
	}
	if r.IntN(3) == 0 {
		s.Backup.Second = scenario.Span{Start: 5 * r.IntN(288), End: 5 * r.IntN(288)}
	}
	return s
}

// Any scenario that the fields allow gives finite figures, a balance that closes
// and layers in order; none stops the engine.
func TestExtremes_Property(t *testing.T) {
	r := rand.New(rand.NewPCG(21, 22))
	worst, forced := 0.0, 0
	ws, y, d := new(Workspace), new(Year), new(Day)
	refused := 0
	for range 150 {
		s := extreme(r)
		if p := s.Problems(); len(p) > 0 {
			t.Fatal(p)
		}
		p, err := Prepare(&s, nil, nil)
		if err != nil {
			refused++ // the one place whose record cannot be true, or its hours beyond the sheet
			continue
		}
		p.RunYear(s.Backup, ws, y)
		p.RunDay(s.Backup, int(s.Month), s.Sky, ws, d)
		worst = math.Max(worst, y.WorstBalance)
		forced += y.ForcedMerges
		f := y.Total
		sum := f.SunJ + f.BoughtJ + f.LostJ + f.DeliveredJ + f.PipeJ + f.ShortfallJ + f.UnusedSunJ + f.Cost + d.Flows.Cost + d.FullL
		if y.Err != nil || !(y.WorstBalance <= 1e-9) || math.IsNaN(sum) || math.IsInf(sum, 0) {
			t.Fatalf("%+v: error %v, balance %g, flows %+v", s, y.Err, y.WorstBalance, f)
		}
		if f.SunJ < 0 || f.BoughtJ < 0 || f.UnusedSunJ < -1e-3 || f.CoolDays > climate.Days || f.ShortfallJ < 0 {
			t.Fatalf("%+v: %+v", s, f)
		}
		q := &p.Potential
		if parts := q.CouplingJ + q.CableJ + q.ConverterJ + q.OverJ + q.ElementJ; math.Abs(parts-q.MaximumJ) > 1e-9*(1+q.MaximumJ) {
			t.Fatalf("%+v: the parts of the potential are %g J of %g", s, parts, q.MaximumJ)
		}
		if min(q.CouplingJ, q.CableJ, q.ConverterJ, q.OverJ, q.ElementJ) < 0 {
			t.Fatalf("%+v: a part of the potential is below zero: %+v", s, q)
		}
		if used := f.SunJ + f.UnusedSunJ; math.Abs(used-q.ElementJ) > 1e-9*(1+q.ElementJ) {
			t.Fatalf("%+v: %g J at the element, %g used or not", s, q.ElementJ, used)
		}
		if f.DisplacedJ < 0 || f.DisplacedJ > f.UnusedSunJ+1e-6*(1+q.ElementJ) {
			t.Fatalf("%+v: %g J displaced of %g not used", s, f.DisplacedJ, f.UnusedSunJ)
		}
		if most := math.Max(s.ElementW, p.BackupW()) * float64(elements(&s)) * 3600 * 24 * climate.Days; s.Coupling == scenario.Converter && f.SunJ+f.BoughtJ > most*(1+1e-9) {
			t.Fatalf("%+v: the element gave %g J of %g", s, f.SunJ+f.BoughtJ, most)
		}
		for _, p := range d.Trace.Points {
			if math.IsNaN(p.UsableL) || p.UsableL < 0 || math.IsInf(p.UsableL, 0) {
				t.Fatalf("%+v: %+v", s, p)
			}
		}
	}
	t.Logf("worst balance %.1e, %d layers merged because a stack was full, %d refused", worst, forced, refused)
}

// elements is how many may heat at once.
func elements(s *scenario.Scenario) int {
	if s.Elements.Apart() {
		return 2
	}
	return 1
}
