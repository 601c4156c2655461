package tank

import (
	"fmt"
	"math"
	"testing"

	"suncask/engine/cells"
)

// movedSlab is the heat that has crossed the middle of a slab of height H whose upper half
// was a step warmer, as a part of all that can: 1 - sum over odd n of 8/(n pi)^2
// e^(-alpha (n pi/H)^2 t), insulated ends (Carslaw & Jaeger 1959, 3.3; for short times
// 4/H sqrt(alpha t/pi)).
func movedSlab(alpha, height, seconds float64) float64 {
	left := 0.0
	for n := 1.0; n < 4000; n += 2 {
		k := n * math.Pi / height
		left += 8 / (n * n * math.Pi * math.Pi) * math.Exp(-alpha*k*k*seconds)
	}
	return 1 - left
}

// A hot half over a cold half, let alone, in one stretch and in many.
func TestExchange_HalfOverHalf_Analytic(t *testing.T) {
	for _, k := range []float64{0.65, 1, 1.7, 3} {
		p := Params{Litres: 200, LossWPerK: 1e-9, Geometry: Geometry{ConductivityWPerMK: k}}
		_, height := p.Geometry.sizes(200)
		for _, c := range []struct{ seconds, stretch float64 }{
			{600, 600}, {3600, 3600}, {7200, 7200}, {7200, 600}, {6 * 3600, 6 * 3600}, {6 * 3600, 7200},
			{24 * 3600, 24 * 3600}, {24 * 3600, 7200}, {48 * 3600, 12 * 3600}, {48 * 3600, 7200},
		} {
			if k*c.stretch > 3*12*3600 {
				continue // longer than any stretch of a day
			}
			tank := New(p, 60, 20)
			runOff(tank, 100) // cold water of 10 degC in the lower half
			tank.Settle()
			before := tank.ContentJ()
			for s := 0.0; s < c.seconds; s += c.stretch {
				tank.Rest(c.stretch / 2)
				tank.Exchange(c.stretch, 0)
				tank.Rest(c.stretch / 2)
			}
			near(t, "heat", tank.ContentJ(), before, 1e-10*before)
			got := 100*HeatCapacity*50 - (heatAbove(tank, 100, 10))
			want := movedSlab(k/(1000*HeatCapacity), height, c.seconds) * 100 * HeatCapacity * 25
			if math.Abs(got/want-1) > 0.02 {
				t.Errorf("k %g, %.0f min by %.0f: %.4f kWh, closed form %.4f (%+.1f %%)", k, c.seconds/60, c.stretch/60, got/3.6e6, want/3.6e6, 100*(got/want-1))
			}
		}
	}
}

// heatAbove is the heat over baseC of the water above so many litres, J.
func heatAbove(t *Tank, litres, baseC float64) (joules float64) {
	foot := 0.0
	for i := range t.Len() {
		l := t.At(i)
		if v := foot + l.Litres - math.Max(foot, litres); v > 0 {
			joules += v * t.perLitre * (l.TempC - baseC)
		}
		foot += l.Litres
	}
	return joules
}

// Cold water below an element that holds what is above at 60 degC: a slab with one end
// insulated and the other held, 1 - sum of 8/((2n+1) pi)^2 e^(-alpha ((2n+1) pi/(2h))^2 t)
// (Carslaw & Jaeger 1959, 3.4).
func TestExchange_UnderHeldWater_Analytic(t *testing.T) {
	const k, low = 1.0, 0.08
	{
		p := Params{Litres: 200, LossWPerK: 1e-4, Geometry: Geometry{ConductivityWPerMK: k}}
		_, height := p.Geometry.sizes(200)
		for _, c := range []struct{ seconds, stretch float64 }{
			{600, 600}, {3600, 3600}, {7200, 7200}, {7200, 900}, {6 * 3600, 7200}, {12 * 3600, 7200}, {24 * 3600, 7200}, {48 * 3600, 7200},
		} {
			tank := New(p, 60, 20)
			tank.s[tank.lo].x = 40 // of 60 degC in a room of 20
			tank.cutAt(low * 200)
			tank.s[tank.lo].x = -4
			tank.Settle()
			before := tank.ContentJ()
			el, th := Element{low, low}, Thermostat{SetC: 60, Sensor: low}
			taken := 0.0
			for s := 0.0; s < c.seconds; s += c.stretch {
				taken += tank.Heat(c.stretch/2, 3000, &el, &th)
				tank.Exchange(c.stretch, low)
				taken += tank.Heat(c.stretch/2, 3000, &el, &th)
			}
			near(t, "heat", tank.ContentJ(), before+taken-tank.Ledger().LossJ, 1e-9*before)
			h, left := low*height, 0.0
			for n := 1.0; n < 4000; n += 2 {
				m := n * math.Pi / (2 * h)
				left += 8 / (n * n * math.Pi * math.Pi) * math.Exp(-k/(1000*HeatCapacity)*m*m*c.seconds)
			}
			want := (1 - left) * low * 200 * HeatCapacity * 44
			if math.Abs(taken/want-1) > 0.02 {
				t.Errorf("%.0f min by %.0f: %.4f kWh, closed form %.4f (%+.1f %%)", c.seconds/60, c.stretch/60, taken/3.6e6, want/3.6e6, 100*(taken/want-1))
			}
		}
	}
}

// Water that is heated from cold over cold water, standing and lying, against cells of a
// 300th of the tank: heat below the element.
func TestExchange_Cells(t *testing.T) {
	for _, lying := range []Orientation{Upright, Lying} {
		for _, low := range []float64{0.1, 0.3, 0.5} {
			t.Run(fmt.Sprintf("orientation %d, element at %g", lying, low), func(t *testing.T) {
				p := Params{Litres: 250, LossWPerK: 1e-9, Resolve: lying == Upright && low > 0.35, Geometry: Geometry{ConductivityWPerMK: 1.7, Orientation: lying}}
				tank := New(p, 16, 20)
				c := cells.New(300, 250, 1e-9, 20, 16)
				c.Conduct(1.7, defaultSlenderness, lying == Lying)
				el, th := Element{low, low}, Thermostat{SetC: 60, Sensor: low}
				for hours := 2; hours <= 12; hours += 2 {
					const stretch = 3600.0
					for s := 0.0; s < 7200; s += stretch {
						tank.Heat(stretch/2, 1000, &el, &th)
						tank.Exchange(stretch, low)
						tank.Heat(stretch/2, 1000, &el, &th)
					}
					for s := 0.0; s < 7200; s += 10 {
						c.Warm(10, 1000, 60, low, low, low)
						c.Step(10)
					}
					got := tank.ContentJ() - 250*HeatCapacity*16 - heatAbove(tank, low*250, 16)
					want := 0.0
					for _, x := range c.C[:int(low*300+0.5)] {
						want += 250.0 / 300 * HeatCapacity * (x - 16)
					}
					// The first stretch takes a step that is not yet there for half of it.
					if bar := math.Max(0.05*want, 0.02*3.6e6); math.Abs(got-want) > bar {
						t.Errorf("after %d h %.3f kWh below, cells %.3f", hours, got/3.6e6, want/3.6e6)
					}
				}
			})
		}
	}
}
