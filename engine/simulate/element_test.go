package simulate

import (
	"math"
	"testing"

	"suncask/engine/climate"
	"suncask/engine/draw"
	"suncask/engine/scenario"
	"suncask/engine/tank"
)

// idle is a house without draws whose sun gives the element so many watts from 10 to 14
// every day.
func idle(t *testing.T, sunW float64, change func(*scenario.Scenario)) *Prepared {
	t.Helper()
	p := prepared(t, change)
	p.uses, p.steps, p.coarse = nil, nil, 0
	p.tankParams.Geometry.ConductivityWPerMK, p.sunTankParams.Geometry.ConductivityWPerMK = 0, 0
	for day := range p.sun {
		p.sun[day].power = [24]float64{}
		for h := 10; h < 14; h++ {
			p.sun[day].power[h] = sunW
		}
	}
	p.integrate()
	return p
}

// day runs one day from a tank at the backup's thermostat.
func (p *Prepared) day(t *testing.T, b scenario.Backup, day int) (f Flows, ws *Workspace) {
	t.Helper()
	ws = new(Workspace)
	p.timeline(b, ws)
	r := p.start(b, ws)
	r.onDay(day)
	if off := r.run(&p.sun[day], p.Weather.ColdC[day], &f); math.Abs(off) > 1e-3 {
		t.Errorf("the day does not close by %g J", off)
	}
	return f, ws
}

// heated is a stretch of heating at P watts of the water above the element, degC from
// its start, by hand: T = A + (T0 - A) e^(-t/tau), A = room + P/(UA share).
type heated struct{ tau, room, gain float64 }

func (p *Prepared) heated(watts float64) heated {
	share := 1 - p.sunElement.Low
	return heated{p.tankParams.Tau(), p.roomC, watts / (p.tankParams.LossWPerK * share)}
}

func (h heated) after(fromC, seconds float64) float64 {
	end := h.room + h.gain
	return end + (fromC-end)*math.Exp(-seconds/h.tau)
}

func (h heated) until(fromC, toC float64) (seconds float64) {
	end := h.room + h.gain
	return h.tau * math.Log((end-fromC)/(end-toC))
}

// Who has the element from 10 to 14 on a day whose sun gives 500 W then, after a tank
// at its thermostat's 60 degC has cooled since midnight: worked by hand.
func TestRules_HandComputedDay(t *testing.T) {
	b := hours(10, 14)
	house := func(rule scenario.Rule, keepL float64) *Prepared {
		return idle(t, 500, func(s *scenario.Scenario) { s.Rule, s.KeepL, s.SetC, s.SunLimitC = rule, keepL, 60, 85 })
	}
	const sunJ = 4 * 3600 * 500.0
	p := house(scenario.WholeWindow, 0)
	cooled := p.heated(0).after(60, 10*3600)
	fire := p.heated(p.backupW).until(cooled, 60)
	keepW := p.tankParams.LossWPerK * (1 - p.sunElement.Low) * 40

	f, _ := p.day(t, b, 3)
	if want := fire*p.backupW + (4*3600-fire)*keepW; math.Abs(f.BoughtJ/want-1) > 1e-9 || f.SunJ != 0 || math.Abs(f.DisplacedJ-sunJ) > 1e-6 {
		t.Errorf("the whole window: bought %.0f J, by hand %.0f; sun %.0f, displaced %.0f", f.BoughtJ, want, f.SunJ, f.DisplacedJ)
	}
	f, _ = house(scenario.SunWhenSatisfied, 0).day(t, b, 3)
	if want := fire * p.backupW; math.Abs(f.BoughtJ/want-1) > 1e-9 || math.Abs(f.SunJ-(4*3600-fire)*500) > 1 || math.Abs(f.DisplacedJ-fire*500) > 1 {
		t.Errorf("when satisfied: bought %.0f J, by hand %.0f; sun %.0f, displaced %.0f", f.BoughtJ, want, f.SunJ, f.DisplacedJ)
	}
	f, _ = house(scenario.SunFirst, 50).day(t, b, 3)
	if f.BoughtJ != 0 || math.Abs(f.SunJ-sunJ) > 1e-6 || f.DisplacedJ != 0 {
		t.Errorf("sun first with water ready: bought %.0f J, sun %.0f", f.BoughtJ, f.SunJ)
	}
	f, _ = house(scenario.SunFirst, 1000).day(t, b, 3)
	if want := fire * p.backupW; math.Abs(f.BoughtJ/want-1) > 1e-9 {
		t.Errorf("sun first without water enough: bought %.0f J, by hand %.0f", f.BoughtJ, want)
	}
	strong := house(scenario.SunFirst, 1000)
	strong.backupW = 400
	if f, _ = strong.day(t, b, 3); f.BoughtJ != 0 {
		t.Errorf("a sun stronger than the grid lets it have %.0f J", f.BoughtJ)
	}
	// Without sun all three are the same.
	for _, rule := range []scenario.Rule{scenario.WholeWindow, scenario.SunWhenSatisfied, scenario.SunFirst} {
		p := idle(t, 0, func(s *scenario.Scenario) { s.Rule, s.SetC = rule, 60 })
		if f, _ := p.day(t, b, 3); math.Abs(f.BoughtJ/(fire*p.backupW+(4*3600-fire)*keepW)-1) > 1e-9 {
			t.Errorf("rule %d without sun: bought %.0f J", rule, f.BoughtJ)
		}
	}
}

// An outage buys nothing and lets the sun have the element: the same as hours cut in
// two; over midnight too.
func TestOutage_SameAsCut(t *testing.T) {
	for _, c := range []struct {
		b        scenario.Backup
		from, to int
		cut      scenario.Backup
	}{
		{hours(8, 14), 10 * 60, 12 * 60, scenario.Backup{Start: 480, End: 600, Second: scenario.Span{Start: 720, End: 840}}},
		{hours(20, 6), 23 * 60, 2 * 60, scenario.Backup{Start: 1200, End: 1380, Second: scenario.Span{Start: 120, End: 360}}},
		{allDay, 17 * 60, 20 * 60, hours(20, 17)},
	} {
		with := year(t, prepared(t, func(s *scenario.Scenario) { s.OutFrom, s.OutTo = c.from, c.to }), c.b).Total
		cut := year(t, prepared(t, func(*scenario.Scenario) {}), c.cut).Total
		if math.Abs(with.BoughtJ/cut.BoughtJ-1) > 1e-9 || math.Abs(with.SunJ/cut.SunJ-1) > 1e-9 || with.CoolUses != cut.CoolUses {
			t.Errorf("%+v without grid from %d to %d: bought %g J, cut %g", c.b, c.from, c.to, with.BoughtJ, cut.BoughtJ)
		}
	}
}

// Away nobody draws and the grid heats nothing; the sun goes on.
func TestHoliday_HandComputedDay(t *testing.T) {
	p := prepared(t, func(s *scenario.Scenario) { s.AwayFrom, s.AwayDays, s.Modules = 11, 40, 0 })
	y := year(t, p, allDay)
	first := climate.FirstDay(11)
	for day := range climate.Days {
		f := &y.Day[day]
		if away := day >= first || day < 9; away != (f.DeliveredJ == 0 && f.BoughtJ == 0) {
			t.Errorf("day %d: away %v, delivered %g J, bought %g", day, away, f.DeliveredJ, f.BoughtJ)
		}
	}
	// The first day away cools from the midnight before.
	start := 0.0
	for day := first; day < first+5; day++ {
		r := p.start(allDay, new(Workspace))
		r.load(&y.Midnight[day])
		mean := r.ws.tank.MeanC()
		if day > first {
			if want := p.roomC + (start-p.roomC)*math.Exp(-86400/p.tankParams.Tau()); math.Abs(mean-want) > 1e-6 {
				t.Errorf("day %d begins at %.4f degC, by hand %.4f", day, mean, want)
			}
		}
		start = mean
	}
}

// Once a week the grid brings the water above the element to 65 degC, whatever the
// hours.
func TestHeatUp_HandComputedDay(t *testing.T) {
	p := idle(t, 0, func(s *scenario.Scenario) { s.HeatUp, s.SetC = 1, 55 })
	if f, _ := p.day(t, never, 5); f.BoughtJ != 0 {
		t.Errorf("on another day %.0f J are bought", f.BoughtJ)
	}
	f, _ := p.day(t, never, 6)
	cooled := p.heated(0).after(55, scenario.HeatUpFrom*60)
	fire := p.heated(p.backupW).until(cooled, scenario.HeatUpC)
	keepW := p.tankParams.LossWPerK * (1 - p.sunElement.Low) * (scenario.HeatUpC - p.roomC)
	if want := fire*p.backupW + (scenario.HeatUpMinutes*60-fire)*keepW; math.Abs(f.BoughtJ/want-1) > 1e-9 {
		t.Errorf("bought %.0f J, by hand %.0f", f.BoughtJ, want)
	}
}

// Outside the hours the grid helps when too little water is ready, and stops once 20 L
// more are.
func TestRescue_HandComputedDay(t *testing.T) {
	p := idle(t, 0, func(s *scenario.Scenario) { s.RescueL, s.SetC, s.TankLitres = 50, 60, 100 })
	f, _ := p.day(t, never, 3)
	if f.BoughtJ != 0 {
		t.Errorf("with water enough %.0f J are bought", f.BoughtJ)
	}
	full := p.start(never, new(Workspace)).usable(p.Weather.ColdC[3])
	p.Scenario.RescueL = math.Floor(full) + 5 // more than the tank can have ready
	f, _ = p.day(t, never, 3)
	keepW := p.tankParams.LossWPerK * (1 - p.sunElement.Low) * 40
	if math.Abs(f.BoughtJ/(86400*keepW)-1) > 1e-6 {
		t.Errorf("bought %.0f J, by hand %.0f: the grid keeps the tank at its thermostat all day", f.BoughtJ, 86400*keepW)
	}
}

// An upper element heats only the water above it.
func TestUpperElement_HandComputedDay(t *testing.T) {
	p := idle(t, 0, func(s *scenario.Scenario) { s.Elements, s.UpperPct, s.SetC = 1, 60, 60 })
	f, ws := p.day(t, allDay, 3)
	keepW := p.tankParams.LossWPerK * 0.4 * 40
	if math.Abs(f.BoughtJ/(86400*keepW)-1) > 1e-9 {
		t.Errorf("bought %.0f J, by hand %.0f", f.BoughtJ, 86400*keepW)
	}
	top := ws.tank.At(ws.tank.Len() - 1)
	low := ws.tank.At(0)
	if want := p.heated(0).after(60, 86400); math.Abs(low.TempC-want) > 1e-6 || math.Abs(top.TempC-60) > 1e-6 || math.Abs(top.Litres-0.4*p.Scenario.TankLitres) > 1e-6 {
		t.Errorf("below %.3f degC, by hand %.3f; above %+v", low.TempC, want, top)
	}
}

// A single element near the top, upright and lying, keeps warm and buys only for the share of
// the water above it, as an upper one does; and reaching on it ends in the tank.
func TestHighElement_HandComputedDay(t *testing.T) {
	for _, c := range []struct{ lower, reach, above float64 }{{95, 0, 0.05}, {70, 0, 0.3}, {90, 45, 0.1}, {50, 45, 0.5}} {
		for _, stands := range []int8{0, 1} {
			p := idle(t, 0, func(s *scenario.Scenario) { s.LowerPct, s.ReachPct, s.SetC, s.Stands = c.lower, c.reach, 60, stands })
			if end := p.sunElement.High; end > 0.98+1e-9 {
				t.Errorf("ends at %g of the tank", end)
			}
			f, ws := p.day(t, allDay, 3)
			keepW := p.tankParams.LossWPerK * c.above * 40
			if top := ws.tank.At(ws.tank.Len() - 1); math.Abs(f.BoughtJ/(86400*keepW)-1) > 2e-3 || math.Abs(top.TempC-60) > 0.2 {
				t.Errorf("%+v: bought %.0f J, by hand %.0f; top at %.2f degC", c, f.BoughtJ, 86400*keepW, top.TempC)
			}
		}
	}
}

// A lying tank has more dead water under its element and gives less.
func TestLying_LessReady(t *testing.T) {
	up := prepared(t, func(*scenario.Scenario) {})
	lying := prepared(t, func(s *scenario.Scenario) { s.Stands = 1; s.Settle() })
	if a, b := year(t, up, hours(15, 18)).Total, year(t, lying, hours(15, 18)).Total; !(b.ShortfallJ > a.ShortfallJ) {
		t.Errorf("short by %g J upright, %g J lying", a.ShortfallJ, b.ShortfallJ)
	}
	// The circular segment below a third of the height, by hand.
	x := 1 - 2.0/3
	segment := (math.Acos(x) - x*math.Sqrt(1-x*x)) / math.Pi
	if math.Abs(segment-scenario.LyingLowerPct/100) > 5e-3 {
		t.Errorf("below a third of the height lie %.4f of the volume, taken %.3f", segment, scenario.LyingLowerPct/100)
	}
}

// A switching thermostat lets the water above the element fall by its differential and
// brings it back; over a day it buys what a holding one does within the content of the
// differential, and a day replayed keeps its memory.
func TestCycle_HandComputedDay(t *testing.T) {
	set := func(s *scenario.Scenario) { s.Switching, s.DiffK, s.SetC = 1, 6, 60 }
	p := idle(t, 0, set)
	f, ws := p.day(t, allDay, 3)
	// By hand: it falls to 54 by cooling, is fired to 60, and so on to midnight.
	cold, hot := p.heated(0), p.heated(p.backupW)
	down := cold.tau * math.Log((60-p.roomC)/(54-p.roomC))
	up := hot.until(54, 60)
	left, fired, at := 86400.0, 0.0, 60.0
	for left > 0 {
		rest := math.Min(left, down)
		at = cold.after(60, rest)
		left -= rest
		if left > 0 {
			on := math.Min(left, up)
			at = hot.after(54, on)
			fired += on
			left -= on
		}
	}
	if want := fired * p.backupW; math.Abs(f.BoughtJ-want) > 1e-3*want {
		t.Errorf("bought %.0f J, by hand %.0f", f.BoughtJ, want)
	}
	if top := ws.tank.At(ws.tank.Len() - 1).TempC; math.Abs(top-at) > 1e-3 {
		t.Errorf("at midnight %.4f degC, by hand %.4f", top, at)
	}
	q := prepared(t, set)
	y, ws2, d := year(t, q, hours(10, 20)), new(Workspace), new(Day)
	for day := 5; day < climate.Days; day += 37 {
		q.Replay(hours(10, 20), y, day, ws2, d)
		if math.Abs(d.Flows.BoughtJ-y.Day[day].BoughtJ) > 1e-3 {
			t.Errorf("day %d replayed buys %g J, in the year %g", day, d.Flows.BoughtJ, y.Day[day].BoughtJ)
		}
	}
}

// A tank in the outside air loses what its difference to each day's mean asks for;
// jacket and pipes change the loss by their share and their watts.
func TestRoom_Outside(t *testing.T) {
	p := idle(t, 0, func(s *scenario.Scenario) { s.RoomBy, s.SetC, s.Jacket, s.PipeLossW = 1, 60, 1, 0.5 })
	plain := idle(t, 0, func(*scenario.Scenario) {})
	if want := plain.tankParams.LossWPerK*scenario.JacketShare + 0.5; math.Abs(p.tankParams.LossWPerK-want) > 1e-12 {
		t.Errorf("loss %g W/K, want %g", p.tankParams.LossWPerK, want)
	}
	for _, day := range []int{20, 200} {
		mean := 0.0
		for _, c := range p.Weather.AirC[day] {
			mean += c / 24
		}
		f, _ := p.day(t, allDay, day)
		keepW := p.tankParams.LossWPerK * (1 - p.sunElement.Low) * (60 - mean)
		if math.Abs(f.BoughtJ/(86400*keepW)-1) > 1e-9 {
			t.Errorf("day %d at %.1f degC: bought %.0f J, by hand %.0f", day, mean, f.BoughtJ, 86400*keepW)
		}
	}
}

// Dirt, mismatch, age and every other named loss each take their part of the modules' potential.
func TestLosses_Named(t *testing.T) {
	energy := func(change func(*scenario.Scenario)) float64 { return prepared(t, change).Potential.MaximumJ }
	clean := energy(func(s *scenario.Scenario) { s.SoilPct, s.MismatchPct = 0, 0 })
	for name, c := range map[string]struct {
		change func(*scenario.Scenario)
		left   float64
	}{
		"dirt":        {func(s *scenario.Scenario) { s.SoilPct, s.MismatchPct = 5, 0 }, 0.95},
		"shade":       {func(s *scenario.Scenario) { s.SoilPct, s.MismatchPct, s.ShadePct = 0, 0, s.ShadePct+10 }, 0.87 / 0.97},
		"connections": {func(s *scenario.Scenario) { s.SoilPct, s.MismatchPct, s.ConnectPct = 0, 0, 1.5 }, 0.985 / 0.995},
		"first light": {func(s *scenario.Scenario) { s.SoilPct, s.MismatchPct, s.FirstLightPct = 0, 0, 0 }, 1 / 0.985},
		"plate":       {func(s *scenario.Scenario) { s.SoilPct, s.MismatchPct, s.PlatePct = 0, 0, 4 }, 0.96 / 0.99},
		"down":        {func(s *scenario.Scenario) { s.SoilPct, s.MismatchPct, s.DownPct = 0, 0, 0 }, 1 / 0.97},
		"mismatch":    {func(s *scenario.Scenario) { s.SoilPct, s.MismatchPct = 0, 2 }, 0.98},
		"age":         {func(s *scenario.Scenario) { s.SoilPct, s.MismatchPct, s.AgeYears = 0, 0, 20 }, math.Pow(0.995, 20)},
	} {
		// Less light is also a little less efficient.
		if got := energy(c.change) / clean; math.Abs(got-c.left) > 0.004 {
			t.Errorf("%s leaves %.4f, want %.4f", name, got, c.left)
		}
	}
}

// A boost is a press of a kilowatt hour that ends when the use begins: one use that
// runs cool by hand asks for as many presses as its missing heat, and no more are cool.
func TestBoost_HandComputedDay(t *testing.T) {
	p := idle(t, 0, func(s *scenario.Scenario) { s.SetC, s.TankLitres, s.LossKWh = 60, 200, 0.2 })
	p.uses = []draw.Use{{Minute: 1200, Litres: 100, TempC: 40, Flow: 10, Kind: draw.Body}}
	p.steps = drawSteps(p.uses, 0, 0, slugSeconds)
	p.coarse = len(p.steps)
	y := year(t, p, never)
	boost := p.RunBoost(never, new(Workspace))
	if y.Total.CoolUses < 300 || boost.CoolUses != 0 {
		t.Fatalf("without backup %d uses run cool, with boost %d", y.Total.CoolUses, boost.CoolUses)
	}
	// Over the year presses bring what is drawn and lost, but for what the tank held; the
	// thermostat refuses what is over the set point.
	need := 0.0
	for day := range climate.Days {
		need += 100 * tank.HeatCapacity * (38 - p.Weather.ColdC[day]) / JPerKWh
	}
	if float64(boost.Presses) < need*0.9 || float64(boost.Presses) > need*1.5 {
		t.Errorf("%d presses, the uses need %.0f kWh a year at least", boost.Presses, need)
	}
	if paid := boost.Cost / p.Scenario.Price; paid > float64(boost.Presses)*BoostKWh*(1+1e-9) {
		t.Errorf("%.1f kWh paid for %d presses", paid, boost.Presses)
	}
	// Where nothing runs cool, nothing is pressed and the year is the same.
	warm := prepared(t, func(s *scenario.Scenario) { s.TankLitres = 400 })
	year := year(t, warm, allDay).Total
	if b := warm.RunBoost(allDay, new(Workspace)); year.CoolUses != 0 || b.Presses != 0 || math.Abs(b.Cost-year.Cost) > 1e-6 {
		t.Errorf("%d cool uses, %+v, cost %g", year.CoolUses, b, year.Cost)
	}
}

// A mixing valve caps what hotter uses get; what they miss is counted, and body uses
// below it do not change.
func TestValve_Caps(t *testing.T) {
	with := prepared(t, func(s *scenario.Scenario) { s.Uses, s.ValveC, s.TankLitres = scenario.ProfileM, 45, 400 })
	none := prepared(t, func(s *scenario.Scenario) { s.Uses, s.TankLitres = scenario.ProfileM, 400 })
	a, b := year(t, with, allDay).Total, year(t, none, allDay).Total
	miss := 0.0
	for _, u := range none.uses {
		miss += math.Max(0, u.TempC-45) * u.Litres * tank.HeatCapacity * climate.Days
	}
	if miss == 0 || math.Abs(a.ShortfallJ-b.ShortfallJ-miss) > 1e-6*miss || a.CoolUses != b.CoolUses {
		t.Errorf("short by %g J more, by hand %g; cool uses %d and %d", a.ShortfallJ-b.ShortfallJ, miss, a.CoolUses, b.CoolUses)
	}
	if !(a.DeliveredJ < b.DeliveredJ) {
		t.Errorf("delivered %g J with a valve, %g without", a.DeliveredJ, b.DeliveredJ)
	}
}

// Water that is just as much as asked is enough, whatever rounding says: the default is the
// water above an upper element, which is a sum of layers.
func TestSunFirst_JustEnough(t *testing.T) {
	year := func(keepL float64) float64 {
		s := scenario.Defaults(scenario.LatestVersion)
		s.Rule, s.Elements, s.KeepL = scenario.SunFirst, scenario.TwoInTurn, keepL
		p, err := Prepare(&s, nil, nil)
		if err != nil {
			t.Fatal(err)
		}
		var y Year
		p.RunYear(s.Backup, new(Workspace), &y)
		return y.Total.BoughtJ
	}
	if less, just, more := year(80-4e-7), year(80), year(80+4e-7); less != just || more != just {
		t.Errorf("a hair less or more than 80 L: %g, %g, %g J bought", less, just, more)
	}
}
