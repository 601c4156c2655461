package visit

import (
	"math"

	"github.com/vugu/vugu"

	"suncask/engine/scenario"
	"suncask/engine/tank"
	"suncask/engine/visit"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/words"
)

// Plates work out what a plate would say that cannot be read, from what can be measured.
type Plates struct{ Page *page.Page }

// plate is one such calculation: its boxes, and what they come to for a field.
type plate struct {
	id    string
	name  words.Key
	boxes []plateBox
	field scenario.FieldID
	of    func(s *scenario.Scenario, v []float64) (value float64, ok bool)
	said  func(c *Plates, v []float64, value float64) string // nil: the value with the field's unit
}

type plateBox struct {
	id    string
	label words.Key
	unit  scenario.Unit
}

var plates = []plate{
	{"watts", words.PlateWatts, []plateBox{{"ohms", words.OhmsBox, scenario.NoUnit}}, scenario.ElementW,
		func(s *scenario.Scenario, v []float64) (float64, bool) {
			least, most, ok := visit.HotWatts(v[0], s.ElementV)
			return (least + most) / 2, ok
		},
		func(c *Plates, v []float64, _ float64) string {
			least, most, _ := visit.HotWatts(v[0], c.Page.Store.Scenario.ElementV)
			return c.Page.View.Words.Text(words.PlateWattsAre, format.Number(least, 0), format.Number(most, 0))
		}},
	{"pulses", words.PlatePulse, []plateBox{{"pulses", words.PlatePulses, scenario.NoUnit}, {"perkwh", words.PlateKWh, scenario.NoUnit}, {"seconds", words.PlateSeconds, scenario.NoUnit}}, scenario.ElementW,
		func(s *scenario.Scenario, v []float64) (float64, bool) {
			watts, ok := visit.PulseWatts(v[0], v[1], v[2])
			at := s.ElementV / s.SupplyV // measured on the mains; the plate's is at its own volts
			return watts * at * at, ok
		}, nil},
	{"size", words.PlateSize, []plateBox{{"wide", words.PlateWide, scenario.NoUnit}, {"high", words.PlateHigh, scenario.NoUnit}, {"thick", words.PlateThick, scenario.NoUnit}}, scenario.TankLitres,
		func(_ *scenario.Scenario, v []float64) (float64, bool) { return visit.OutsideLitres(v[0], v[1], v[2]) }, nil},
	{"rise", words.PlateRise, []plateBox{{"energy", words.PlateEnergy, scenario.NoUnit}, {"kelvin", words.PlateKelvin, scenario.Kelvin}}, scenario.TankLitres,
		func(_ *scenario.Scenario, v []float64) (float64, bool) { return visit.HeatedLitres(v[0], v[1]) }, nil},
	{"night", words.PlateNight, []plateBox{{"reheat", words.PlateReheat, scenario.NoUnit}, {"hours", words.PlateHours, scenario.NoUnit}, {"mean", words.PlateMean, scenario.Celsius}, {"room", words.PlateRoom, scenario.Celsius}}, scenario.LossKWh,
		func(_ *scenario.Scenario, v []float64) (float64, bool) {
			wPerK, ok := visit.ReheatLoss(v[0], v[1], v[2], v[3])
			return visit.LabelLoss(wPerK), ok
		}, nil},
}

func (c *Plates) boxID(p plate, b plateBox) string { return "plate-" + p.id + "-" + b.id }

func (c *Plates) typed(event vugu.DOMEvent, id string) {
	c.Page.Visit.Plates[id] = event.PropString("target", "value")
}

func (c *Plates) shown(id string) string { return c.Page.Box(id, c.Page.Visit.Plates[id]) }

// values are a plate's boxes as metric numbers; typed is false while one is empty.
func (c *Plates) values(p plate) (v []float64, typed, ok bool) {
	ok = true
	for _, b := range p.boxes {
		text := c.Page.Visit.Plates[c.boxID(p, b)]
		if text == "" {
			return nil, false, false
		}
		n, number := format.Parse(text)
		ok = ok && number
		v = append(v, format.Metric(b.unit, n))
	}
	return v, true, ok
}

// result is what a plate's boxes come to, in steps of its field.
func (c *Plates) result(p plate) (value float64, v []float64, typed, ok bool) {
	v, typed, ok = c.values(p)
	if !ok {
		return 0, v, typed, false
	}
	value, ok = p.of(&c.Page.Store.Scenario, v)
	if !ok || math.IsNaN(value) || math.IsInf(value, 0) {
		return 0, v, typed, false
	}
	f := scenario.FieldOf(p.field)
	return f.Snap(math.Round(value/f.Step) * f.Step), v, typed, true
}

// says is the result in words.
func (c *Plates) says(p plate) string {
	value, v, typed, ok := c.result(p)
	switch {
	case !typed:
		return ""
	case !ok:
		return c.Page.T(words.PlateNone)
	case p.said != nil:
		return p.said(c, v, value)
	}
	f := scenario.FieldOf(p.field)
	return c.Page.View.Words.Text(words.PlateAbout, format.Value(f, value)+format.Space+c.Page.View.Words.Units[f.Unit])
}

// canTake tells whether the field takes the result.
func (c *Plates) canTake(p plate) bool {
	value, _, _, ok := c.result(p)
	return ok && scenario.FieldOf(p.field).Check(value) == nil
}

// take types the result into its field, and lets the loss be known by that figure.
func (c *Plates) take(p plate) {
	value, _, _, _ := c.result(p)
	c.Page.Store.Set(p.field, value)
	if p.field == scenario.LossKWh {
		c.Page.Store.Choose(scenario.LossBy, int(scenario.LossFigure))
	}
	c.Page.Changed()
}

func (c *Plates) turn() { c.Page.Visit.PlatesOpen = !c.Page.Visit.PlatesOpen }

// night says how well the evening and the morning tell the loss; nothing where another figure does.
func (c *Plates) night() string {
	s := &c.Page.Store.Scenario
	if _, ok := tank.LossOvernight(s.TankLitres, s.EveningC, s.MorningC, s.RoomC, s.NightH); s.LossBy != scenario.LossOvernight || !ok {
		return ""
	}
	return c.Page.View.Words.Text(words.NightShare, format.Number(100*visit.NightShare(s.EveningC, s.MorningC, s.RoomC), 0))
}
