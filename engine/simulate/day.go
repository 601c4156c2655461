package simulate

import (
	"math"

	"suncask/engine/climate"
	"suncask/engine/draw"
	"suncask/engine/scenario"
	"suncask/engine/tank"
)

// Point is the state at an instant of a traced day. Two points at one instant
// are the states before and after a draw.
type Point struct {
	Minute  float64
	UsableL float64 // litres at the showers' temperature that could be drawn in one go
	Cost    float64 // spent since midnight
	BoughtJ float64 // since midnight
	SunJ    float64 // into the water, since midnight
	MeanC   float64

	from, count int     // its layers
	ahead       int     // and those of the sun's tank after them
	hotL        float64 // drawn from the tank since midnight
}

// A traced day is looked at this often beside its events.
const (
	samplesPerDay = 96
	sampleEveryS  = 86400.0 / samplesPerDay
)

// watch adds the points of a traced day after one event and up to the next. Each is run from the first
// event on and taken back, so that watching changes nothing.
func (r *dayRun) watch(now turn, sun *sunDay, from, to *event, price rate, f *Flows) {
	ws := r.ws
	backup, heatUp, limit, flows := r.backup, r.heatUp, r.sun, *f
	ws.tank.Keep(&ws.kept[0])
	ws.sunTank.Keep(&ws.kept[1])
	for i := int(from.at/sampleEveryS) + 1; i < samplesPerDay && float64(i)*sampleEveryS <= to.at; i++ {
		until, then := r.p.clock.quarters[i], now
		r.pass(&then, sun, from, &until, price, f)
		r.trace.point(r, until.at, r.coldC, f)
		r.backup, r.heatUp, r.sun, *f = backup, heatUp, limit, flows
		ws.tank.Back(&ws.kept[0])
		ws.sunTank.Back(&ws.kept[1])
	}
}

// Trace is a day's curve: event-exact at draws, every quarter of an hour between.
type Trace struct {
	Points []Point
	layers []tank.Layer // of all points, one after the other
}

// Layers returns the tank's layers at a point, bottom to top.
func (tr *Trace) Layers(point int) []tank.Layer {
	p := &tr.Points[point]
	return tr.layers[p.from : p.from+p.count]
}

// Ahead returns those of the sun's own tank; none where it has none.
func (tr *Trace) Ahead(point int) []tank.Layer {
	p := &tr.Points[point]
	return tr.layers[p.from+p.count : p.from+p.count+p.ahead]
}

func (tr *Trace) point(r *dayRun, at, coldC float64, f *Flows) {
	if tr == nil {
		return
	}
	t, sun := &r.ws.tank, &r.ws.sunTank
	p := Point{
		Minute: at / 60, UsableL: r.usable(coldC), Cost: f.Cost, BoughtJ: f.BoughtJ, SunJ: f.SunJ, MeanC: t.MeanC(),
		from: len(tr.layers), count: t.Len(),
	}
	for i := range r.ws.served {
		p.hotL += r.ws.served[i].HotLitres
	}
	for i := range t.Len() {
		tr.layers = append(tr.layers, t.At(i))
	}
	if r.p.twoTanks {
		p.ahead = sun.Len()
		for i := range sun.Len() {
			tr.layers = append(tr.layers, sun.At(i))
		}
	}
	tr.Points = append(tr.Points, p)
}

// usable litres; a tank that needs no heat gives what it holds.
func (r *dayRun) usable(coldC float64) float64 {
	u := r.ws.tank.UsableLitres(r.p.Scenario.ShowerC, coldC, ToleranceK)
	if math.IsInf(u, 1) {
		return r.p.Litres()
	}
	return u
}

// UseResult is how one use of the day went.
type UseResult struct {
	draw.Use
	RanCool bool
	HotL    float64 // that it took from the tank, those left in the pipe included
	// CoolAfter is after how many minutes it ran cool.
	CoolAfter float64
}

// Day is the result of one day.
type Day struct {
	Flows  Flows
	Trace  Trace
	Uses   []UseResult
	SunW   [24]float64 // power that could reach the element, by hour
	ColdC  float64
	FullL  float64 // the most usable litres this tank gives at its thermostats
	Varies bool    // a repeated day that does not settle: Flows are means of the last week
	Rounds int     // days run until it repeated

	midnight Midnight // what it started from
	sun      *sunDay
	day      int  // of the year
	repeats  bool // over and over
}

// A repeated day has settled when neither its midnight content nor any use moves
// by more than this, and is given up after maxRounds.
const (
	settledJ   = 0.1 * 3600 // 0.1 Wh
	settledK   = 0.01
	maxRounds  = 30
	meanRounds = 7
)

// RunDay simulates the average day of a month (0-11) under one sky, over and
// over until it repeats: "as if every day were like this one".
func (p *Prepared) RunDay(b scenario.Backup, month int, sky scenario.Sky, ws *Workspace, out *Day) {
	p.timeline(b, ws)
	r := p.start(b, ws)
	sun, coldC := &p.sky[month][sky], p.skyColdC[month]
	out.SunW, out.ColdC = sun.power, coldC
	out.sun, out.day, out.repeats = sun, climate.AverageDay(month), true
	r.always(out.day)
	out.Varies = true
	var last [meanRounds]Flows
	var before [128]float64
	content := r.content()
	for out.Rounds = 1; out.Rounds <= maxRounds; out.Rounds++ {
		f := &last[out.Rounds%meanRounds]
		r.run(sun, coldC, f)
		moved := 0.0
		for i := range p.uses {
			heat := ws.served[i].HeatJ
			if i < len(before) {
				moved = math.Max(moved, math.Abs(heat-before[i])/(p.uses[i].Litres*tank.HeatCapacity))
				before[i] = heat
			}
		}
		now := r.content()
		settled := math.Abs(now-content) < settledJ && moved < settledK
		content = now
		if settled {
			out.Varies = false
			break
		}
	}
	r.always(out.day)
	r.traced(sun, coldC, out)
	if out.Varies {
		out.Rounds = maxRounds
		out.Flows = Flows{}
		for i := range last {
			out.Flows.Add(&last[i])
		}
		out.Flows.scale(1.0 / meanRounds)
	}
}

// scale multiplies the energies; counts become rounded means.
func (f *Flows) scale(k float64) {
	for _, v := range []*float64{&f.SunJ, &f.BoughtJ, &f.LostJ, &f.DeliveredJ, &f.PipeJ, &f.ShortfallJ, &f.UnusedSunJ, &f.DisplacedJ, &f.StoredJ, &f.Cost, &f.BaseJ} {
		*v *= k
	}
	f.CoolUses = int32(math.Round(float64(f.CoolUses) * k))
	f.CoolDays = int32(math.Round(float64(f.CoolDays) * k))
}

// Replay runs one day of a year (0-364) again from its midnight, with its curve.
func (p *Prepared) Replay(b scenario.Backup, y *Year, day int, ws *Workspace, out *Day) {
	r := p.start(b, ws)
	r.load(&y.Midnight[day])
	out.SunW, out.ColdC = p.sun[day].power, p.Weather.ColdC[day]
	out.sun, out.day, out.repeats = &p.sun[day], day, false
	out.Varies, out.Rounds = false, 1
	p.timeline(b, ws)
	r.onDay(day)
	r.traced(&p.sun[day], out.ColdC, out)
}

// traced runs a day from the tank's present state and keeps its curve.
func (r *dayRun) traced(sun *sunDay, coldC float64, out *Day) {
	p, ws := r.p, r.ws
	r.save(&out.midnight)
	out.Trace.Points, out.Trace.layers = out.Trace.Points[:0], out.Trace.layers[:0]
	r.trace = &out.Trace
	r.trace.point(r, 0, coldC, &Flows{})
	r.run(sun, coldC, &out.Flows)
	r.trace.point(r, 86400, coldC, &out.Flows)
	out.Uses = out.Uses[:0]
	for i := range p.uses {
		out.Uses = append(out.Uses, UseResult{p.uses[i], r.coolUse(i), ws.served[i].HotLitres, ws.served[i].BeforeLitres / p.uses[i].Flow})
	}
	sunC, gridC := p.reached()
	p.fill(ws, math.Max(sunC, gridC))
	out.FullL = r.usable(coldC)
}
