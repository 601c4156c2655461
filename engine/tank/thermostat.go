package tank

// Mode says how a thermostat switches.
type Mode uint8

const (
	Hold  Mode = iota // ideal: keeps the sensor's layer at the set point
	Cycle             // on at SetC - DifferentialK, off at SetC
)

// Thermostat limits the water temperature at its sensor.
type Thermostat struct {
	SetC          float64 // set point, degC
	Sensor        float64 // height as a fraction of the volume, >= Low of its element, < 1
	Mode          Mode
	DifferentialK float64 // Cycle only, > 0
	On            bool    // Cycle only: its memory
	CutC          float64 // no layer that the element reaches is heated above it, see cut; 0: BoilingC
}

// BoilingC is where heating ends in any case: the boiling point of water at 1 atm, degC.
const BoilingC = 100.0

// cut is where the independent cut-out, or boiling, ends heating, degC. It is taken to
// close again as the water cools.
func (th *Thermostat) cut() float64 {
	if th.CutC == 0 {
		return BoilingC
	}
	return lesser(th.CutC, BoilingC)
}

// feel lets a switching thermostat act on the temperature at its sensor and tells whether
// it is on.
func (th *Thermostat) feel(tempC float64) bool {
	switch {
	case tempC >= th.SetC-atSetK:
		th.On = false
	case tempC <= th.SetC-th.DifferentialK+atSetK:
		th.On = true
	}
	return th.On
}

type calling uint8

const (
	satisfied calling = iota
	holding
	firing
	limited // the thermostat calls, the cut-out keeps the highest layer where it is
	tripped // and lets nothing through
)

// call says what the element does now: what its thermostat asks for, as far as the
// cut-out lets it.
func (h *heating) call() calling {
	asked := h.asked()
	hot := h.t.temp(h.top)
	if asked == satisfied || hot < h.cutC-atSetK {
		return asked
	}
	if hot > h.cutC+atSetK {
		return tripped
	}
	most := h.t.lossW(h.t.s[h.top].v, h.cutC) / h.shareOf(h.top)
	power := h.powerW
	if asked == holding {
		power = h.holdW() / h.shareOf(h.sensor)
	}
	switch {
	case power <= most:
		return asked
	case most <= 0: // the room keeps it there
		return tripped
	}
	return limited
}

// asked says what the thermostat asks for.
func (h *heating) asked() calling {
	t, th := h.t, h.th
	temp := t.temp(h.sensor)
	if th.Mode == Cycle {
		if th.feel(temp) {
			return firing
		}
		return satisfied
	}
	switch {
	case temp > th.SetC+atSetK:
		return satisfied
	case temp < th.SetC-atSetK:
		return firing
	}
	need := h.holdW()
	switch {
	case need <= 0: // the room keeps it warm
		return satisfied
	case h.powerW*h.shareOf(h.sensor) >= need:
		return holding
	}
	return firing
}

// holdW is the loss of the sensor's layer at the set point, W.
func (h *heating) holdW() float64 { return h.t.lossW(h.t.s[h.sensor].v, h.th.SetC) }
