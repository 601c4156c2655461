package explain

import (
	"math"
	"math/rand/v2"
	"runtime"
	"testing"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// For every quantity of 1,000 random houses the formula evaluated is the figure shown, and a
// month's is the year's own month.
func TestOf_IsWhatIsShown(t *testing.T) {
	r := rand.New(rand.NewPCG(11, 25))
	houses := 1000
	if runtime.GOARCH == "wasm" {
		houses = 40 // the same code, five times slower
	}
	ws, y, bare := new(simulate.Workspace), new(simulate.Year), new(simulate.Year)
	var prev *simulate.Prepared
	day := new(simulate.Day)
	for i := range houses {
		s := scenario.Defaults(scenario.LatestVersion)
		if i%50 == 0 {
			prev = nil
		}
		s.Place = []string{"lisbon", "oslo", "cape-town", "seville"}[i/50%4]
		s.People, s.When, s.Modules = 1+r.IntN(6), scenario.When(r.IntN(3)), r.IntN(8)
		s.TankLitres, s.Rule = float64(80+r.IntN(300)), scenario.Rule(r.IntN(3))
		s.Backup = scenario.Backup{Start: 15 * r.IntN(96), End: 15 * r.IntN(96)}
		s.Bands = []string{"", "1700-2000:0.5", "11-2/wd0600-0900:0.4,we0000-0000:0.1"}[r.IntN(3)]
		s.Blocks = []string{"", "100:0.3,260:0.5"}[r.IntN(2)]
		s.ExportPrice, s.ExportKWh, s.ExportRest = []float64{0, 0.07}[r.IntN(2)], []float64{0, 30}[r.IntN(2)], 0.02
		s.AwayDays = 20 * r.IntN(2)
		s.Settle()
		p, err := simulate.Prepare(&s, nil, prev)
		if err != nil {
			t.Fatal(err)
		}
		prev = p
		p.RunYear(s.Backup, ws, y)
		if i%20 == 0 {
			p.RunYear(scenario.Backup{AllDay: true}, ws, bare)
		}
		p.RunDay(s.Backup, r.IntN(12), scenario.Sky(r.IntN(3)), ws, day)
		h := &House{p, y, &bare.Total, &day.Flows}
		near := func(what string, q Quantity, got, want float64) {
			if got == want { // both may be never
				return
			}
			if math.Abs(got-want) > 1e-9*math.Max(1, math.Abs(want)) {
				t.Fatalf("house %d, quantity %d, %s: %.12g, shown %.12g", i, q, what, got, want)
			}
		}
		for q := range Quantities {
			near("year", q, Of(q, Year, h).Value, Shown(q, h))
			if m := r.IntN(12); q.Summed() {
				near("month", q, Of(q, Span{m, -1}, h).Value, q.of(&y.Month[m]))
			}
		}
	}
}

// The terms put into the formula by hand give its value.
func TestOf_Terms(t *testing.T) {
	s := scenario.Defaults(scenario.LatestVersion)
	s.Bands, s.Blocks, s.ExportPrice, s.ExportKWh, s.ExportRest = "1600-1700:0.5", "210:0.3", 0.05, 10, 0.02
	p, err := simulate.Prepare(&s, nil, nil)
	if err != nil {
		t.Fatal(err)
	}
	y := new(simulate.Year)
	p.RunYear(s.Backup, new(simulate.Workspace), y)
	bare := simulate.Flows{Cost: y.Total.Cost + 200}
	h := &House{p, y, &bare, &y.Total}
	v := map[Symbol]float64{}
	e := Of(Cost, Span{0, -1}, h)
	for _, term := range e.Terms {
		v[term.Symbol] = term.Value
	}
	if want := v[BasePrice]*v[BaseEnergy] + v[BandCost] + v[BlockCost] - v[FedPrice]*v[FedBack] + v[FedLess]; math.Abs(e.Value-want) > 1e-9 || v[BandCost] <= 0 || v[BlockCost] <= 0 || math.Abs(v[FedLess]-0.03*(v[FedBack]-10)) > 1e-9 {
		t.Errorf("January costs %g, by hand %g, %v", e.Value, want, v)
	}
	for _, q := range []Quantity{NetValue, KWhCost, Payback} {
		clear(v)
		e := Of(q, Year, h)
		for _, term := range e.Terms {
			v[term.Symbol] = term.Value
		}
		sum, kWh, years := -v[Investment], 0.0, v[Horizon]
		if q == Payback {
			years = math.Floor(e.Value)
		}
		costs := v[Investment]
		for y := 1.0; y <= years; y++ {
			later, replaced := math.Pow(1+v[Discount], y), 0.0
			if y == v[ReplacementYear] {
				replaced = v[Replacement]
			}
			sum += (v[FirstSaving]*math.Pow((1+v[PriceRise])*(1-v[Ageing]), y-1) - v[Upkeep] - replaced) / later
			costs += (v[Upkeep] + replaced) / later
			kWh += v[SunEnergy] * math.Pow(1-v[Ageing], y-1) / later
		}
		switch {
		case q == NetValue && math.Abs(sum-e.Value) > 1e-9*math.Abs(e.Value),
			q == KWhCost && math.Abs(costs/kWh-e.Value) > 1e-9,
			q == Payback && !(sum < 0 && e.Value > 1):
			t.Errorf("quantity %d is %g; by hand value %g, a kWh %g", q, e.Value, sum, costs/kWh)
		}
	}
	if len(Of(Bought, Year, h).Parts) != 12 || len(Of(Bought, Span{1, -1}, h).Parts) != 28 {
		t.Error("a year has 12 months, February 28 days")
	}
}
