package simulate

import (
	"math"

	"suncask/engine/draw"
	"suncask/engine/scenario"
	"suncask/engine/tank"
)

// Flows are the energies and counts of a span of time. Energies are in joules;
// heat delivered is above the cold water of its day.
type Flows struct {
	SunJ, BoughtJ float64 // into the water
	LostJ         float64 // to the room
	DeliveredJ    float64 // at the tap
	PipeJ         float64 // left behind in pipes
	ShortfallJ    float64 // missing to the use temperatures
	UnusedSunJ    float64 // could have reached the element and did not
	DisplacedJ    float64 // of that, while the grid had the element
	StoredJ       float64 // change of the tank's content
	Cost          float64 // of what was bought less what was paid for unused sun, in the scenario's currency
	BaseJ         float64 // of what was bought, outside all price bands
	CoolUses      int32   // body uses that ran cool
	CoolDays      int32   // days with such a use
}

// Add adds those of another span.
func (f *Flows) Add(o *Flows) {
	f.SunJ += o.SunJ
	f.BoughtJ += o.BoughtJ
	f.LostJ += o.LostJ
	f.DeliveredJ += o.DeliveredJ
	f.PipeJ += o.PipeJ
	f.ShortfallJ += o.ShortfallJ
	f.UnusedSunJ += o.UnusedSunJ
	f.DisplacedJ += o.DisplacedJ
	f.StoredJ += o.StoredJ
	f.Cost += o.Cost
	f.BaseJ += o.BaseJ
	f.CoolUses += o.CoolUses
	f.CoolDays += o.CoolDays
}

// buy adds bought energy at a rate.
func (f *Flows) buy(j float64, at rate) {
	f.BoughtJ += j
	f.Cost += j * at.perJ
	if at.base {
		f.BaseJ += j
	}
}

// SolarFraction is the part of the heat put into the water that came from the
// sun; 0 if none was put in.
func (f *Flows) SolarFraction() float64 {
	if f.SunJ+f.BoughtJ == 0 {
		return 0
	}
	return f.SunJ / (f.SunJ + f.BoughtJ)
}

// JPerKWh converts joules.
const JPerKWh = 3.6e6

// Workspace holds what a run needs, so that runs allocate nothing. The zero
// Workspace is ready; one belongs to one goroutine.
type Workspace struct {
	Turn func() // called between the months of a year, so that a browser can do something else; nil: not

	tank    tank.Tank
	sunTank tank.Tank // ahead of the other, where the house has one
	events  []event
	still   []event // a day's events but the edges that follow the sun
	// stretches are the lengths of the day's stretches of conduction, s; edges are work space.
	stretches, edges []float64
	kept             [2]tank.Kept  // by watch
	served           []tank.Served // by use, of the day running
	run              dayRun
	ramp             tank.Ramp
}

type eventKind uint8

// Kinds in the order in which they happen at one instant.
const (
	dayBegins  eventKind = iota
	conduction           // between layers; i counts Workspace.stretches
	windowEdge
	outageEdge
	heatUpEdge
	boostEdge
	priceEdge
	drawing
	dayEnds
)

type event struct {
	at       float64 // s after midnight
	kind     eventKind
	i        int32   // index into steps or prices; +1 where a window opens, -1 where one closes
	hour     int32   // that holds the instant; 24 at the day's end
	up, down float64 // e^(at/tau) and its inverse: spans between events are products
}

// spanTo is the time from an event to a later one.
func (e *event) spanTo(to *event) tank.Span {
	return tank.Span{Seconds: to.at - e.at, Up: to.up * e.down, Down: to.down * e.up}
}

// timeline lists a day's events in order: the same for every day, but for hours that
// follow the sun, see follow.
func (p *Prepared) timeline(b scenario.Backup, ws *Workspace) {
	e := append(ws.events[:0], event{kind: dayBegins})
	if p.tankParams.Geometry.ConductivityWPerMK > 0 {
		e = p.stretches(&b, ws, e)
	}
	for _, s := range spans(&b) {
		if !b.AllDay && s.Start != s.End {
			e = append(e, event{at: float64(s.Start) * 60, kind: windowEdge, i: 1}, event{at: float64(s.End) * 60, kind: windowEdge, i: -1})
		}
	}
	s := &p.Scenario
	if s.OutFrom != s.OutTo {
		e = append(e, event{at: float64(s.OutFrom) * 60, kind: outageEdge, i: 1}, event{at: float64(s.OutTo) * 60, kind: outageEdge, i: -1})
	}
	if s.HeatUp == 1 {
		e = append(e, event{at: scenario.HeatUpFrom * 60, kind: heatUpEdge, i: 1},
			event{at: (scenario.HeatUpFrom + scenario.HeatUpMinutes) * 60, kind: heatUpEdge, i: -1})
	}
	for i, edge := range p.bill.edges {
		e = append(e, event{at: float64(edge) * 60, kind: priceEdge, i: int32(i + 1)})
	}
	for i := range p.steps {
		if step := &p.steps[i]; i >= p.coarse == p.gridDuring(&b, &p.uses[step.use]) {
			e = append(e, event{at: step.at, kind: drawing, i: int32(i)})
		}
	}
	for i := 1; i < len(e); i++ {
		for j := i; j > 0 && e[j].before(&e[j-1]); j-- {
			e[j], e[j-1] = e[j-1], e[j]
		}
	}
	e = append(e, event{at: 86400, kind: dayEnds})
	for i := range e {
		e[i] = p.timed(e[i])
	}
	ws.events = e
	if b.FollowsSun() {
		ws.still = append(ws.still[:0], e...)
	}
	if cap(ws.served) < len(p.uses) {
		ws.served = make([]tank.Served, len(p.uses))
	}
	ws.served = ws.served[:len(p.uses)]
}

// timed fills in what follows from an event's instant.
func (p *Prepared) timed(e event) event { return timed(p.tankParams, e) }

func timed(p tank.Params, e event) event {
	s := p.Span(e.at)
	e.up, e.down = s.Up, s.Down
	e.hour = int32(e.at / 3600)
	return e
}

// gridDuring tells whether the grid may heat while water is drawn for a use.
func (p *Prepared) gridDuring(b *scenario.Backup, u *draw.Use) bool {
	s := &p.Scenario
	if b.FollowsSun() || s.RescueL > 0 {
		return true
	}
	from, to := u.Minute, u.Minute+u.Minutes()
	if p.gridOpen(b, from+0.01) {
		return true
	}
	for _, edge := range p.gridEdges(b) {
		if (edge > from && edge < to || edge+scenario.DayMinutes < to) && p.gridOpen(b, edge+0.5) {
			return true
		}
	}
	return s.HeatUp == 1 && from < scenario.HeatUpFrom+scenario.HeatUpMinutes && to > scenario.HeatUpFrom
}

// spans are the hours by the clock.
func spans(b *scenario.Backup) [2]scenario.Span {
	if b.FollowsSun() {
		return [2]scenario.Span{b.Second}
	}
	return [2]scenario.Span{{Start: b.Start, End: b.End}, b.Second}
}

// open counts the windows by the clock that are open just before midnight's events.
func open(b scenario.Backup) int32 {
	if b.AllDay {
		return 1
	}
	n := int32(0)
	for _, s := range spans(&b) {
		if s.Start > s.End {
			n++
		}
	}
	return n
}

// dayRun runs one day: see pass for who has the element, or which of two.
type dayRun struct {
	p       *Prepared
	ws      *Workspace
	backup  tank.Thermostat
	heatUp  tank.Thermostat
	sun     tank.Thermostat
	away    bool    // nobody is at home
	weekly  bool    // the weekly heat-up falls on this day
	coldC   float64 // of this day
	prices  []rate  // of this day
	roomC   float64
	mid     event    // work space: when a thermostat was satisfied
	piece   [2]event // work space of pieces
	open0   int32    // windows open at midnight
	stretch float64  // when the present stretch of conduction begins, s after midnight
	hours   scenario.Backup
	// stillOpen counts those of open0 that keep the clock.
	stillOpen int32
	trace     *Trace
}

// run takes the tank through a day with that sun and that cold water, adds up
// what flowed and returns by how many joules the day's balance fails to close.
func (r *dayRun) run(sun *sunDay, coldC float64, f *Flows) (imbalanceJ float64) {
	p, ws := r.p, r.ws
	t := &ws.tank
	before := r.clearLedgers()
	served := ws.served
	clear(served)
	*f = Flows{}
	r.coldC, r.stretch = coldC, t.StretchIn()
	now := turn{open: r.open0, out: p.Scenario.OutFrom > p.Scenario.OutTo}
	price := r.prices[0]
	last := &ws.events[0]
	for i := range ws.events {
		e := &ws.events[i]
		if e.at > last.at {
			if r.trace != nil {
				r.watch(now, sun, last, e, price, f)
			}
			r.pass(&now, sun, last, e, price, f)
			last = e
		}
		switch e.kind {
		case conduction:
			t.Exchange(ws.stretches[e.i], p.sunElement.Low)
			r.stretch = e.at + ws.stretches[e.i]/2
			if p.twoTanks {
				ws.sunTank.Exchange(ws.stretches[e.i], p.sunElement.Low)
			}
		case windowEdge:
			now.open += e.i
		case outageEdge:
			now.out = e.i > 0
		case boostEdge:
			now.boosts += e.i
		case heatUpEdge:
			now.heatUp = e.i > 0 && r.weekly
		case priceEdge:
			price = r.prices[e.i]
		case drawing:
			if r.away {
				continue
			}
			step := &p.steps[e.i]
			if r.trace != nil {
				r.trace.point(r, e.at, coldC, f)
			}
			t.Draw(&step.draw, coldC, &served[step.use])
			if r.trace != nil {
				r.trace.point(r, e.at, coldC, f)
			}
		}
	}
	r.count(f)
	f.UnusedSunJ = sun.j[24] - f.SunJ
	f.Cost -= f.UnusedSunJ * p.bill.exportPerJ
	return r.close(before, f)
}

// shine lets the sun have the element from one event to the next: in one piece
// where its thermostat stays out of it, else hour by hour.
func (r *dayRun) shine(sun *sunDay, from, to *event, f *Flows) {
	if r.p.twoTanks {
		r.ws.tank.RestSpan(from.spanTo(to))
		r.shineAhead(sun, from, to, f)
		return
	}
	t, c := &r.ws.tank, &r.p.clock
	if sun.j[from.hour] == sun.j[min(to.hour+1, 24)] { // night
		t.RestSpan(from.spanTo(to))
		return
	}
	ramp := &r.ws.ramp
	sun.between(c, from, to, ramp)
	ramp.Stirred = sun.litFrom(math.Max(from.at, r.stretch), to)
	if r.sun.Mode == tank.Hold && r.p.sunElement.High == r.p.sunElement.Low && t.HeatRamp(ramp, &r.p.sunElement, r.sun.SetC) {
		f.SunJ += ramp.Joules
		return
	}
	r.byHour(from, to, func(span tank.Span, hour int32) {
		f.SunJ += t.HeatSpan(span, sun.power[hour], &r.p.sunElement, &r.sun)
	})
}

// byHour cuts a stretch at the full hours.
func (r *dayRun) byHour(from, to *event, do func(span tank.Span, hour int32)) {
	c := &r.p.clock
	at, up, down := from.at, from.up, from.down
	for h := from.hour; at < to.at; h++ {
		next, nextUp, nextDown := to.at, to.up, to.down
		if h < to.hour {
			next, nextUp, nextDown = float64(h+1)*3600, c.g[h+1], c.d[h+1]
		}
		if next > at {
			do(tank.Span{Seconds: next - at, Up: nextUp * down, Down: nextDown * up}, h)
		}
		at, up, down = next, nextUp, nextDown
	}
}

// count adds up what the uses got and decides which ran cool: a body use with
// more cool litres than two, and than a tenth of it.
func (r *dayRun) count(f *Flows) {
	for i := range r.p.uses {
		got := &r.ws.served[i]
		f.DeliveredJ += got.HeatJ
		f.PipeJ += got.PipeJ
		f.ShortfallJ += got.ShortfallJ
		if valve := r.p.Scenario.ValveC; valve > 0 && valve < r.p.uses[i].TempC && !r.away {
			f.ShortfallJ += r.p.uses[i].Litres * tank.HeatCapacity * (r.p.uses[i].TempC - valve)
		}
		if r.coolUse(i) {
			f.CoolUses++
		}
	}
	if f.CoolUses > 0 {
		f.CoolDays = 1
	}
}

func (r *dayRun) coolUse(i int) bool {
	u := &r.p.uses[i]
	return u.Kind == draw.Body && r.ws.served[i].CoolLitres > math.Max(2, 0.1*u.Litres)
}
