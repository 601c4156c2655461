package simulate

import "suncask/engine/tank"

// Midnight is what a day starts from.
type Midnight struct {
	tank, sunTank       tank.State
	backup, heatUp, sun bool // memory of the thermostats
}

func (r *dayRun) save(m *Midnight) {
	r.ws.tank.Save(&m.tank)
	if r.p.twoTanks {
		r.ws.sunTank.Save(&m.sunTank)
	}
	m.backup, m.heatUp, m.sun = r.backup.On, r.heatUp.On, r.sun.On
}

func (r *dayRun) load(m *Midnight) {
	r.ws.tank.Load(&m.tank)
	if r.p.twoTanks {
		r.ws.sunTank.Load(&m.sunTank)
	}
	r.backup.On, r.heatUp.On, r.sun.On = m.backup, m.heatUp, m.sun
}

// fill fills all tanks with water of one temperature.
func (p *Prepared) fill(ws *Workspace, tempC float64) {
	ws.tank.Reset(p.tankParams, tempC, p.roomC)
	if p.twoTanks {
		ws.sunTank.Reset(p.sunTankParams, tempC, p.roomC)
		ws.tank.FedBy(&ws.sunTank)
	}
}

// content is the heat in all tanks above 0 degC, J.
func (r *dayRun) content() float64 {
	joules := r.ws.tank.ContentJ()
	if r.p.twoTanks {
		joules += r.ws.sunTank.ContentJ()
	}
	return joules
}

// clearLedgers begins a day and returns the content.
func (r *dayRun) clearLedgers() (contentJ float64) {
	r.ws.tank.ClearLedger()
	r.ws.sunTank.ClearLedger()
	return r.content()
}

// close ends a day: it fills in what was lost and stored and returns by how many joules
// the balance fails to close.
func (r *dayRun) close(beforeJ float64, f *Flows) (imbalanceJ float64) {
	r.ws.tank.Settle()
	l := r.ws.tank.Ledger()
	f.LostJ = l.LossJ
	net := l.HeatJ + l.ColdJ - l.DrawnJ - l.LossJ
	if r.p.twoTanks {
		r.ws.sunTank.Settle()
		l := r.ws.sunTank.Ledger()
		f.LostJ += l.LossJ
		net += l.HeatJ + l.ColdJ - l.DrawnJ - l.LossJ
	}
	f.StoredJ = r.content() - beforeJ
	return net - f.StoredJ
}

// beside lets the grid heat by its thermostat while the sun heats with an element, or in
// a tank, of its own. It returns the joules bought.
func (r *dayRun) beside(th *tank.Thermostat, sun *sunDay, from, to *event, f *Flows) (boughtJ float64) {
	t, p := &r.ws.tank, r.p
	if p.twoTanks {
		r.shineAhead(sun, from, to, f)
		return t.HeatSpan(from.spanTo(to), p.backupW, &p.backupElement, th)
	}
	lower := tank.Supply{Element: p.sunElement, Thermostat: &r.sun}
	upper := tank.Supply{PowerW: p.backupW, Element: p.backupElement, Thermostat: th}
	r.byHour(from, to, func(span tank.Span, hour int32) {
		lower.PowerW = sun.power[hour]
		if lower.PowerW == 0 {
			boughtJ += t.HeatSpan(span, p.backupW, &p.backupElement, th)
			return
		}
		sunJ, gridJ := t.HeatTwo(span, &lower, &upper)
		f.SunJ += sunJ
		boughtJ += gridJ
	})
	return boughtJ
}

// shineAhead lets the sun heat its own tank. That has another time constant than the
// events are prepared for.
func (r *dayRun) shineAhead(sun *sunDay, from, to *event, f *Flows) {
	t := &r.ws.sunTank
	if sun.j[from.hour] == sun.j[min(to.hour+1, 24)] { // night
		t.Rest(to.at - from.at)
		return
	}
	r.byHour(from, to, func(span tank.Span, hour int32) {
		f.SunJ += t.Heat(span.Seconds, sun.power[hour], &r.p.sunElement, &r.sun)
	})
}
