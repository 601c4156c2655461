package pv

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"suncask/engine/published"
)

type sheetRow struct {
	Vmp   float64 `json:"v_mp"`
	Imp   float64 `json:"i_mp"`
	Voc   float64 `json:"v_oc"`
	Isc   float64 `json:"i_sc"`
	Alpha float64 `json:"alpha_sc"`
	Beta  float64 `json:"beta_voc"`
	Cells int
}

func sheet60(t *testing.T) Datasheet {
	t.Helper()
	var b struct{ Sheet sheetRow }
	published.Block(t, "pv.json", "datasheet", &b)
	s := b.Sheet
	return Datasheet{OpenCircuitV: s.Voc, ShortCircuitA: s.Isc, MaximumV: s.Vmp, MaximumA: s.Imp, VoltagePerK: s.Beta, CurrentPerK: s.Alpha, Cells: s.Cells}
}

func module60(t *testing.T) Module {
	t.Helper()
	m, err := sheet60(t).Module()
	if err != nil {
		t.Fatal(err)
	}
	return m
}

func TestDatasheet_Pvlib(t *testing.T) {
	var b struct {
		Expected struct {
			IL  float64 `json:"I_L_ref"`
			I0  float64 `json:"I_o_ref"`
			Rs  float64 `json:"R_s"`
			Rsh float64 `json:"R_sh_ref"`
			A   float64 `json:"a_ref"`
		}
		ImpossibleCells int `json:"impossible_cells"`
	}
	published.Block(t, "pv.json", "datasheet", &b)
	m := module60(t)
	nearRel(t, "IL", m.LightA, b.Expected.IL, 1e-4)
	nearRel(t, "I0", m.SaturationA, b.Expected.I0, 1e-3) // exponential in a, which is known to 1e-5
	nearRel(t, "Rs", m.SeriesOhm, b.Expected.Rs, 1e-4)
	nearRel(t, "Rsh", m.ShuntOhm, b.Expected.Rsh, 1e-3)
	nearRel(t, "a", m.ThermalV, b.Expected.A, 1e-4)
	s := sheet60(t)
	s.Cells = b.ImpossibleCells
	var refused *DatasheetError
	if _, err := s.Module(); !errors.As(err, &refused) || refused.Value != CellCount {
		t.Errorf("with %d cells: %v", s.Cells, err)
	}
}

// The fit meets its sheet's five points to 1e-9 for sheets of all kinds.
func TestDatasheet_Property(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 8))
	fitted := 0
	for range 300 {
		cells := 36 + 6*r.IntN(19)
		s := Datasheet{
			OpenCircuitV: float64(cells) * (0.60 + 0.14*r.Float64()), ShortCircuitA: 2 + 16*r.Float64(), Cells: cells,
		}
		s.MaximumV = s.OpenCircuitV * (0.79 + 0.06*r.Float64())
		s.MaximumA = s.ShortCircuitA * (0.92 + 0.04*r.Float64())
		s.VoltagePerK = -s.OpenCircuitV * (0.0024 + 0.001*r.Float64())
		s.CurrentPerK = s.ShortCircuitA * 0.0005 * r.Float64()
		m, err := s.Module()
		if err != nil {
			var refused *DatasheetError
			if !errors.As(err, &refused) {
				t.Fatal(err)
			}
			continue
		}
		fitted++
		v, i := m.MaximumPower()
		nearRel(t, "Isc", m.ShortCircuitA(), s.ShortCircuitA, 1e-9)
		nearRel(t, "Voc", m.OpenCircuitV(), s.OpenCircuitV, 1e-9)
		nearRel(t, "Vmp", v, s.MaximumV, 1e-6)
		nearRel(t, "Imp", i, s.MaximumA, 1e-6)
		warm := m.At(1000, 27)
		nearRel(t, "warm Voc", warm.OpenCircuitV(), s.OpenCircuitV+2*s.VoltagePerK, 1e-9)
	}
	t.Logf("%d of 300 random sheets are possible", fitted)
	if fitted < 150 {
		t.Errorf("only %d of 300 random sheets were fitted", fitted)
	}
}

// Impossible sheets are refused and name the value that is off, with what is allowed.
func TestDatasheet_Refusals(t *testing.T) {
	for name, c := range map[string]struct {
		change func(*Datasheet)
		value  Value
	}{
		"no voltage":           {func(s *Datasheet) { s.OpenCircuitV = 0 }, OpenCircuit},
		"not a number":         {func(s *Datasheet) { s.ShortCircuitA = math.NaN() }, ShortCircuit},
		"Vmp above Voc":        {func(s *Datasheet) { s.MaximumV = 40 }, MaximumVoltage},
		"Vmp below half":       {func(s *Datasheet) { s.MaximumV = 10 }, MaximumVoltage},
		"Imp above Isc":        {func(s *Datasheet) { s.MaximumA = 9.5 }, MaximumCurrent},
		"voltage rises":        {func(s *Datasheet) { s.VoltagePerK = 0.1 }, VoltageChange},
		"current falls fast":   {func(s *Datasheet) { s.CurrentPerK = -1 }, CurrentChange},
		"no cells":             {func(s *Datasheet) { s.Cells = 0 }, CellCount},
		"change of other cell": {func(s *Datasheet) { s.VoltagePerK = -0.04 }, VoltageChange},
	} {
		s := sheet60(t)
		c.change(&s)
		var refused *DatasheetError
		if _, err := s.Module(); !errors.As(err, &refused) || refused.Value != c.value || !(refused.Min < refused.Max) {
			t.Errorf("%s: %v", name, err)
		}
	}
}
