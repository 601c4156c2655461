package year

import (
	"math"
	"strings"
	"testing"

	"suncask/engine/simulate"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/parts"
	"suncask/ui/parts/sheettest"
	"suncask/ui/state"
	"suncask/ui/view"
)

// What the months show adds up to the year's figures as they are shown, and counts are whole.
func TestMonths_AddUpAsShown(t *testing.T) {
	for _, link := range sheettest.Links {
		p := page.New(state.Open(link), view.New())
		total := &p.Store.Results.Year.Total
		months := (&Yearly{p}).months()
		for column, joules := range map[int]float64{1: total.SunJ, 2: total.BoughtJ, 3: total.LostJ, 4: total.UnusedSunJ} {
			if got, want := sheettest.Sum(t, months.Rows, column, 0), math.Round(joules/simulate.JPerKWh); math.Abs(got-want) > 1e-6 {
				t.Errorf("%s, %s: months show %g, the year %g", link, months.Head[column], got, want)
			}
		}
		if got, want := sheettest.Sum(t, months.Rows, 5, 0), sheettest.Rounded(total.Cost, format.Cents(p.Store.Scenario.Currency)); math.Abs(got-want) > 1e-6 {
			t.Errorf("%s: months cost %.2f, the year %.2f", link, got, want)
		}
		for _, r := range months.Rows {
			if text := parts.Text(r.Cells[6]); strings.ContainsAny(text, ".,") {
				t.Errorf("%s: %s cool uses", link, text)
			}
		}
	}
}

// Payments add up to their sums as they are shown, and so do the savings of hours and sun.
func TestWorth_AddsUpAsShown(t *testing.T) {
	for _, link := range sheettest.Links {
		p := page.New(state.Open(link), view.New())
		worth := &Worth{p}
		rows := worth.cash().Rows
		for year := range rows {
			if got, want := sheettest.Sum(t, rows[:year+1], 1, 0), sheettest.Sum(t, rows[year:year+1], 2, 0); got != want {
				t.Errorf("%s: payments to year %d show %g, their sum %g", link, year, got, want)
			}
		}
		savings := p.Store.Savings()
		amount := func(v float64) float64 { return sheettest.Amount(t, v, p.Store.Scenario.Currency) }
		if got, want := amount(worth.sum(savings.Timer(), savings.Sun())), amount(savings.Timer())+amount(savings.Sun()); math.Abs(got-want) > 0.006 {
			t.Errorf("%s: savings of %g and %g are shown as %g", link, amount(savings.Timer()), amount(savings.Sun()), got)
		}
	}
}

// The year of the payback is the first whose sum, in the table too, is above zero, and what is
// read of it says that sum.
func TestReadCash(t *testing.T) {
	p := page.New(state.Open("v=2"), view.New())
	r, rows := ReadCash(p), (&Worth{p}).cash().Rows
	sum := func(year int) float64 { return rows[year].Cells[2].(parts.Figure).Value }
	if sum(r.Tells) < 0 || sum(r.Tells-1) >= 0 {
		t.Errorf("paid back in year %d, %g after %g", r.Tells, sum(r.Tells), sum(r.Tells-1))
	}
	if says, shown := r.Says(r.Tells), parts.Text(rows[r.Tells].Cells[2]); !strings.Contains(says, shown) {
		t.Errorf("%q without %s", says, shown)
	}
}
