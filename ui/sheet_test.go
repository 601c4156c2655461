package ui

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"suncask/engine/explain"
	"suncask/engine/simulate"
	"suncask/ui/format"
	"suncask/ui/state"
	"suncask/ui/view"
)

func rounded(v float64, decimals int) float64 {
	unit := math.Pow(10, float64(decimals))
	return math.Round(v*unit) / unit
}

// What tables of parts show adds up to the year's figures as they are shown, and counts are
// whole.
func TestTables_AddUpAsShown(t *testing.T) {
	for _, link := range []string{"", "v=2&place=oslo&modules=6", "v=2&place=santiago&backup=none0000&people=6", "v=2&couple=direct&modules=5&tank=150", "v=2&place=phoenix&tank=80", "v=2&place=tokyo&lowfrom=276&lowto=84", "v=2&money=XYZ&export=800&meter=90"} {
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
		if got, want := shown(months, 5, 0), rounded(total.Cost, format.Cents(p.Store.Scenario.Currency)); math.Abs(got-want) > 1e-6 {
			t.Errorf("%s: months cost %.2f, the year %.2f", link, got, want)
		}
		for _, r := range months.rows {
			if text := shownCell(r.cells[6]); strings.ContainsAny(text, ".,") {
				t.Errorf("%s: %s cool uses", link, text)
			}
		}
		explained := &Explain{p}
		for q := range explain.Quantities {
			for _, at := range []explain.Span{explain.Year, {Month: 6, Day: -1}} {
				if p.Explained, p.ExplainedAt = q, at; at != explain.Year && !q.Summed() {
					continue
				}
				e := explained.value()
				if len(e.Parts) == 0 {
					continue
				}
				f := explained.figure(e.Value)
				if got, want := shown(explained.sheet(), 1, len(e.Terms)), rounded(f.value, f.decimals); math.Abs(got-want) > 1e-6 {
					t.Errorf("%s: parts of %s show %g, their sum %g", link, explained.name(q), got, want)
				}
				if q == explain.CoolDays && f.decimals > 0 {
					t.Errorf("cool days with decimals")
				}
			}
		}
		worth := &Worth{p}
		cash := worth.cash()
		for year := range cash.rows {
			if got, want := shown(&sheet{rows: cash.rows[:year+1]}, 1, 0), shown(&sheet{rows: cash.rows[year : year+1]}, 2, 0); got != want {
				t.Errorf("%s: payments to year %d show %g, their sum %g", link, year, got, want)
			}
		}
		savings := p.Store.Savings()
		amount := func(v float64) float64 {
			text := strings.NewReplacer("\u202f", "", "\u2212", "-", p.Store.Scenario.Currency, "").Replace(format.Money(v, p.Store.Scenario.Currency))
			n, err := strconv.ParseFloat(text, 64)
			if err != nil {
				t.Fatal(err)
			}
			return n
		}
		if got, want := amount(worth.sum(savings.Timer(), savings.Sun())), amount(savings.Timer())+amount(savings.Sun()); math.Abs(got-want) > 0.006 {
			t.Errorf("%s: savings of %g and %g are shown as %g", link, amount(savings.Timer()), amount(savings.Sun()), got)
		}
		potential := (&Electrics{p}).sheet()
		for column := 1; column <= 2; column++ {
			if got, want := shown(potential, column, 1), shown(&sheet{rows: potential.rows[:1]}, column, 0); math.Abs(got-want) > 1e-6 {
				t.Errorf("%s: parts of the potential show %g of %g", link, got, want)
			}
		}
	}
}
