package simulate

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"testing"

	"suncask/engine/climate"
	"suncask/engine/climate/hourly"
	"suncask/engine/scenario"
	"suncask/engine/solar"
)

// realFiles are years of hourly weather in the folder that SUNCASK_WEATHER names; the
// first five are the table of DEVELOPERS.md.
var realFiles = []string{"USA_Seattle_TMY3.epw", "CHL_Santiago_TMYx.epw", "CAN_Toronto_CWEC.epw", "USA_Phoenix_TMY3.epw", "ETH_AddisAbaba_SWERA.epw",
	"BRA_Salvador_SWERA.epw", "GTM_Guatemala_SWERA.epw", "USA_SanFrancisco_TMY2.epw", "USA_Greensboro_TMY3.csv", "ITA_45N8E_PVGIS_tmy.csv"}

// record reads one of them; ok is false where no folder is named.
func record(t *testing.T, name string) (r *climate.Record, ok bool) {
	t.Helper()
	folder := os.Getenv("SUNCASK_WEATHER")
	if folder == "" {
		return nil, false
	}
	raw, err := os.ReadFile(filepath.Join(folder, name))
	if err != nil {
		t.Fatal(err)
	}
	reader := hourly.NewReader(climate.Place{})
	if _, err := reader.Write(raw); err != nil {
		t.Fatal(err)
	}
	res, err := reader.Close()
	if err != nil {
		t.Fatal(err)
	}
	return res.Record, true
}

// houseAt is the example house at a record's place, its modules towards the equator;
// with the record, or with days drawn from the record's months.
func houseAt(t *testing.T, r *climate.Record, draw bool) *Prepared {
	t.Helper()
	s := scenario.Defaults(scenario.LatestVersion)
	s.Place, s.Weather = r.PointName(), r.Key()
	s.Known = s.Known.With(scenario.SummerTime)
	s.Settle()
	s.Summer = scenario.NoSummer
	if r.LatDeg < 0 {
		s.AzimuthDeg = 0
	}
	p, err := Prepare(&s, r, nil)
	if err != nil {
		t.Fatal(err)
	}
	if !draw {
		return p
	}
	y, err := climate.Typical(&p.Weather.Place, climate.Autoregressive, Seed)
	if err != nil {
		t.Fatal(err)
	}
	return p.With(y)
}

// The same house under a real year and under one drawn from that year's months. The
// aim, stated and not asserted: solar fraction within 3 points, cool days within a
// factor of 1.5.
func TestWeather_RealAgainstDrawn(t *testing.T) {
	for _, name := range realFiles {
		r, ok := record(t, name)
		if !ok {
			t.Log("SUNCASK_WEATHER names no folder: nothing to compare")
			return
		}
		ws, y := new(Workspace), new(Year)
		var fraction [2]float64
		var cool [2]int32
		var bought [2]float64
		for i, draw := range []bool{false, true} {
			p := houseAt(t, r, draw)
			p.RunYear(p.Scenario.Backup, ws, y)
			if y.Err != nil || y.WorstBalance > 1e-9 {
				t.Fatal(y.Err, y.WorstBalance)
			}
			fraction[i], cool[i], bought[i] = 100*y.Total.SolarFraction(), y.Total.CoolDays, y.Total.BoughtJ/JPerKWh
		}
		t.Logf("%-28s solar fraction %.1f %% and %.1f %% (%+.1f), cool days %d and %d, bought %.0f and %.0f kWh", name,
			fraction[0], fraction[1], fraction[1]-fraction[0], cool[0], cool[1], bought[0], bought[1])
		// A slip of units or of clocks would be far outside.
		if math.Abs(fraction[1]-fraction[0]) > 10 {
			t.Errorf("%s: solar fraction differs by %.1f points", name, fraction[1]-fraction[0])
		}
	}
}

// Which sky drawn days take: the yearly energy of a tilted array from days drawn from
// a real year's months, by each model, against Perez on the real hours, which has the
// least error in comparisons with measurements (Perez et al. 1990).
func TestSkyModel_Evidence(t *testing.T) {
	names := [...]string{"Hay & Davies", "Perez", "isotropic"}
	var sum, square [3]float64
	n := 0.0
	for _, name := range realFiles {
		r, ok := record(t, name)
		if !ok {
			t.Log("SUNCASK_WEATHER names no folder: nothing to compare")
			return
		}
		energy := func(p *Prepared, model solar.SkyModel) (joules float64) {
			p.Scenario.ElementW = 9000 // takes all
			roof, err := p.roof()
			if err != nil {
				t.Fatal(err)
			}
			var unused Potential
			roof.model = model
			y := p.Weather
			var w [24]float64
			for day := range climate.Days {
				roof.hours(&y.Sun[day], &y.Light[day], &y.AirC[day], &w, &unused)
				for _, v := range w {
					joules += v * 3600
				}
			}
			return joules
		}
		want := energy(houseAt(t, r, false), solar.Perez)
		drawn := houseAt(t, r, true)
		line := ""
		for i, model := range []solar.SkyModel{solar.HayDavies, solar.Perez, solar.Isotropic} {
			off := 100 * (energy(drawn, model)/want - 1)
			sum[i] += off
			square[i] += off * off
			line += fmt.Sprintf("  %s %+.1f %%", names[i], off)
		}
		n++
		t.Logf("%-28s%s", name, line)
	}
	for i, name := range names {
		t.Logf("%-14s mean %+.1f %%, root mean square %.1f %%", name, sum[i]/n, math.Sqrt(square[i]/n))
	}
}
