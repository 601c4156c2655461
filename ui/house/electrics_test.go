package house

import (
	"math"
	"testing"

	"suncask/ui/page"
	"suncask/ui/parts/sheettest"
	"suncask/ui/state"
	"suncask/ui/view"
)

// What the parts of the potential show adds up to it as it is shown.
func TestPotential_AddsUpAsShown(t *testing.T) {
	for _, link := range sheettest.Links {
		rows := (&Electrics{page.New(state.Open(link), view.New())}).sheet().Rows
		for column := 1; column <= 2; column++ {
			if got, want := sheettest.Sum(t, rows, column, 1), sheettest.Sum(t, rows[:1], column, 0); math.Abs(got-want) > 1e-6 {
				t.Errorf("%s: parts of the potential show %g of %g", link, got, want)
			}
		}
	}
}
