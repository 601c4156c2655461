package ui

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"suncask/engine/simulate"
	"suncask/ui/state"
	"suncask/ui/view"
)

// What tables of parts show adds up to the year's figures as they are shown, and counts are
// whole.
func TestTables_AddUpAsShown(t *testing.T) {
	for _, link := range []string{"", "v=2&place=oslo&modules=6", "v=2&place=santiago&backup=none0000&people=6", "v=2&couple=direct&modules=5&tank=150", "v=2&place=phoenix&tank=80"} {
		p := NewPage(state.Open(link), view.New())
		total := &p.Store.Results.Year.Total
		shown := func(sh *sheet, column, from int) (sum float64) {
			for i := from; i < len(sh.rows); i++ {
				text := strings.NewReplacer("\u202f", "", "\u2212", "-").Replace(shownCell(sh.rows[i].cells[column]))
				v, err := strconv.ParseFloat(text, 64)
				if err != nil {
					t.Fatalf("%s, %s: %v", link, sh.id, err)
				}
				sum += v
			}
			return sum
		}
		months := (&Yearly{p}).months()
		for column, joules := range map[int]float64{1: total.SunJ, 2: total.BoughtJ, 3: total.LostJ, 4: total.UnusedSunJ} {
			if got, want := shown(months, column, 0), math.Round(joules/simulate.JPerKWh); math.Abs(got-want) > 1e-6 {
				t.Errorf("%s, %s: months show %g, the year %g", link, months.head[column], got, want)
			}
		}
		if got, want := shown(months, 5, 0), math.Round(100*total.Cost)/100; math.Abs(got-want) > 1e-6 {
			t.Errorf("%s: months cost %.2f, the year %.2f", link, got, want)
		}
		for _, r := range months.rows {
			if text := shownCell(r.cells[6]); strings.ContainsAny(text, ".,") {
				t.Errorf("%s: %s cool uses", link, text)
			}
		}
		potential := (&Electrics{p}).sheet()
		for column := 1; column <= 2; column++ {
			if got, want := shown(potential, column, 1), shown(&sheet{rows: potential.rows[:1]}, column, 0); math.Abs(got-want) > 1e-6 {
				t.Errorf("%s: parts of the potential show %g of %g", link, got, want)
			}
		}
	}
}
