package format

import (
	"testing"

	"suncask/engine/scenario"
)

// What people write beside their numbers is read: units, signs of currencies, names of
// directions, marks between thousands, either decimal mark.
func TestTaken_AsPeopleWrite(t *testing.T) {
	for _, c := range []struct {
		id   scenario.FieldID
		text string
		want float64
	}{
		{scenario.Price, "$0.16", 0.16}, {scenario.Price, "0,16", 0.16}, {scenario.Price, "EUR 0.24", 0.24}, {scenario.Price, "0.24 \u20ac", 0.24}, {scenario.Price, "16 ct", 0.16},
		{scenario.Price, "16\u00a2", 0.16}, {scenario.Price, "0.16 /kWh", 0.16}, {scenario.Price, "R$ 0,90", 0.9}, {scenario.Price, "1.30", 1.3},
		{scenario.TankLitres, "50 gal", 189.3}, {scenario.TankLitres, "200 L", 200}, {scenario.TankLitres, "150 litres", 150},
		{scenario.ReliefBar, "6 bar", 6}, {scenario.ReliefBar, "87 psi", 6}, {scenario.SupplyBar, "350 kPa", 3.5},
		{scenario.SetC, "140F", 60}, {scenario.SetC, "140 \u00b0F", 60}, {scenario.SetC, "60\u00b0C", 60},
		{scenario.ElementW, "3 kW", 3000}, {scenario.ElementW, "1.5kW", 1500}, {scenario.ElementW, "2000 W", 2000}, {scenario.ElementW, "1,200", 1200}, {scenario.ElementW, "1.200", 1200},
		{scenario.AzimuthDeg, "south", 180}, {scenario.AzimuthDeg, "SW", 225}, {scenario.AzimuthDeg, "suroeste", 225}, {scenario.AzimuthDeg, "190\u00b0", 190}, {scenario.AzimuthDeg, "north-east", 45},
		{scenario.CableM, "50 ft", 15.2}, {scenario.FixedCost, "1,200", 1200}, {scenario.FixedCost, "12.345.678", 12345678}, {scenario.FixedCost, "$1,250", 1250}, {scenario.LossKWh, "1,93", 1.93}, {scenario.LossKWh, "2 kWh/day", 2},
	} {
		if got, p := Taken(scenario.FieldOf(c.id), c.text); p != nil || got != c.want {
			t.Errorf("%q: %g, %v, want %g", c.text, got, p, c.want)
		}
	}
	for id, text := range map[scenario.FieldID]string{scenario.TankLitres: "200 kg", scenario.SetC: "60 K", scenario.ReliefBar: "6 m", scenario.Price: "cheap", scenario.ElementW: "2 m", scenario.AzimuthDeg: "up", scenario.LossKWh: "1.2.3"} {
		if got, p := Taken(scenario.FieldOf(id), text); p == nil || p.Got != text {
			t.Errorf("%q is read as %g", text, got)
		}
	}
}
