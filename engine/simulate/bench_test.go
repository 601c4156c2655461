package simulate

import (
	"strconv"
	"testing"

	"suncask/engine/draw"
	"suncask/engine/scenario"
)

// benchYear is the year of the bars: 8760 weather hours, eight draws a day.
func benchYear(b *testing.B, exchange bool) {
	s := scenario.Defaults(scenario.LatestVersion)
	p, err := Prepare(&s, nil, nil)
	if err != nil {
		b.Fatal(err)
	}
	if !exchange {
		p.tankParams.Geometry.ConductivityWPerMK = 0
	}
	p.uses = draw.Household{People: 4, ShowerMinutes: 6, ShowerFlow: 8, ShowerC: s.ShowerC, When: draw.Both, At: s.UseAt}.Day()
	if len(p.uses) != 8 {
		b.Fatalf("%d draws a day", len(p.uses))
	}
	p.setSteps()
	ws, y := new(Workspace), new(Year)
	p.RunYear(s.Backup, ws, y)
	if y.Err != nil || y.WorstBalance > 1e-9 {
		b.Fatal(y.Err, y.WorstBalance)
	}
	b.ReportAllocs()
	for b.Loop() {
		p.RunYear(s.Backup, ws, y)
	}
	b.ReportMetric(y.Total.BoughtJ/JPerKWh, "kWh")
}

func BenchmarkYear(b *testing.B)         { benchYear(b, false) }
func BenchmarkYearExchange(b *testing.B) { benchYear(b, true) }

// The year of the example under every rule, and with every option that looks at the water.
func BenchmarkYearRule(b *testing.B) {
	rule := func(r scenario.Rule) func(*scenario.Scenario) { return func(s *scenario.Scenario) { s.Rule = r } }
	for _, c := range []struct {
		name   string
		change func(*scenario.Scenario)
	}{
		{"throughout", rule(scenario.WholeWindow)},
		{"satisfied", rule(scenario.SunWhenSatisfied)},
		{"sun first", rule(scenario.SunFirst)},
		{"rescue", func(s *scenario.Scenario) { s.RescueL = 40 }},
		{"switching", func(s *scenario.Scenario) { s.Switching = 1 }},
		{"upper element", func(s *scenario.Scenario) { s.Elements = scenario.TwoInTurn }},
		{"all", func(s *scenario.Scenario) {
			s.Rule, s.RescueL, s.Switching, s.HeatUp, s.Elements = scenario.SunFirst, 40, 1, 1, scenario.TwoInTurn
		}},
	} {
		b.Run(c.name, func(b *testing.B) {
			s := scenario.Defaults(scenario.LatestVersion)
			c.change(&s)
			p, err := Prepare(&s, nil, nil)
			if err != nil {
				b.Fatal(err)
			}
			ws, y := new(Workspace), new(Year)
			for b.Loop() {
				p.RunYear(s.Backup, ws, y)
			}
		})
	}
}

func BenchmarkPrepare(b *testing.B) {
	s := scenario.Defaults(scenario.LatestVersion)
	b.Run("drawn", func(b *testing.B) {
		for b.Loop() {
			if _, err := Prepare(&s, nil, nil); err != nil {
				b.Fatal(err)
			}
		}
	})
	// Weather is there: position, transposition, cell temperature, converter.
	b.Run("sun", func(b *testing.B) {
		p, err := Prepare(&s, nil, nil)
		if err != nil {
			b.Fatal(err)
		}
		for b.Loop() {
			p.setSun(func() {})
		}
	})
}

// Time grows with days and with uses, and no faster; nothing is allocated.
func BenchmarkDays(b *testing.B) {
	s := scenario.Defaults(scenario.LatestVersion)
	p, err := Prepare(&s, nil, nil)
	if err != nil {
		b.Fatal(err)
	}
	ws := new(Workspace)
	for _, days := range []int{10, 100, 365} {
		b.Run(strconv.Itoa(days), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				r := p.start(s.Backup, ws)
				p.timeline(s.Backup, ws)
				var f Flows
				for day := range days {
					r.onDay(day)
					r.run(&p.sun[day], p.Weather.ColdC[day], &f)
				}
			}
			b.ReportMetric(float64(b.Elapsed().Microseconds())/float64(b.N*days), "us/day")
		})
	}
}

func BenchmarkUses(b *testing.B) {
	s := scenario.Defaults(scenario.LatestVersion)
	for _, uses := range []int{4, 16, 64} {
		b.Run(strconv.Itoa(uses), func(b *testing.B) {
			p, err := Prepare(&s, nil, nil)
			if err != nil {
				b.Fatal(err)
			}
			p.uses = nil
			for i := range uses { // the same water in smaller parts
				p.uses = append(p.uses, draw.Use{Minute: 360 + float64(i*900/uses), Litres: 192 / float64(uses), Flow: 8, TempC: s.ShowerC})
			}
			p.setSteps()
			ws, y := new(Workspace), new(Year)
			b.ReportAllocs()
			for b.Loop() {
				p.RunYear(s.Backup, ws, y)
			}
			b.ReportMetric(float64(b.Elapsed().Microseconds())/float64(b.N*uses), "us/use")
		})
	}
}
