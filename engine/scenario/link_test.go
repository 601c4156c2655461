package scenario

import (
	"fmt"
	"math"
	"math/rand/v2"
	"net/url"
	"strings"
	"testing"

	"suncask/engine/climate"
)

func TestDefaults_Valid(t *testing.T) {
	d := Defaults(LatestVersion)
	if p := d.Problems(); len(p) > 0 {
		t.Errorf("defaults refused: %v", p)
	}
	for i, f := range Fields() {
		if int(f.ID) != i || f.Key == "" {
			t.Errorf("entry %d is field %d %q", i, f.ID, f.Key)
		}
		if f.Kind == Number && f.Snap(f.Get(&d)) != f.Get(&d) {
			t.Errorf("%s: default %v is not the float of its steps", f.Key, f.Get(&d))
		}
	}
}

// random fills every field with an allowed value.
func random(r *rand.Rand) Scenario {
	s := Defaults(LatestVersion)
	for _, f := range Fields() {
		if f.Kind == Number || f.Kind == Choice {
			n := int64((f.Max - f.Min) / f.Step)
			v := f.ofSteps(int64(f.steps(f.Min)) + r.Int64N(n+1))
			if f.Fine() && v < f.Max && r.IntN(4) == 0 {
				v = f.Snap(v + r.Float64()*f.Step)
			}
			f.Set(&s, v)
		}
	}
	s.Place = []string{"lisbon", "cape-town", "mcmurdo", "-12.5,130.85", "61.49,23.76"}[r.IntN(5)]
	s.Town = []string{"", "Manchester", "Xi\u2019an", "L'Aquila (AQ)", "\u6771\u4eac", "S\u00e3o Jos\u00e9 dos Campos"}[r.IntN(6)]
	s.Country = []string{"", "United Kingdom", "Antigua & Barbuda"}[r.IntN(3)]
	s.Summer = []string{NoSummer, "0329-1025", "1004-0405"}[r.IntN(3)]
	s.Weather = []string{"", "0123abcd"}[r.IntN(2)]
	var sky []HorizonPoint
	for az := r.IntN(40); az < 360; az += 10 + r.IntN(60) {
		sky = append(sky, HorizonPoint{az, r.IntN(86)})
	}
	s.Skyline = WriteHorizon(sky)
	s.Stages = WriteStages([]int{20 + r.IntN(8981), 500}[:r.IntN(3)])
	s.Bands = []string{"", "2200-0600:0.12", "11-2/wd1700-2000:0.5,we0000-0000:0.2"}[r.IntN(3)]
	s.Blocks = []string{"", "100:0.15,300:0.22"}[r.IntN(2)]
	for _, id := range []FieldID{MonthGHI, MonthTempC, MonthColdC} {
		f, m := FieldOf(id), s.MonthsOf(id)
		for i := range 12 {
			if m.Known[i] = r.IntN(2) == 0; m.Known[i] {
				m.Value[i] = f.Snap(f.Min + r.Float64()*(f.Max-f.Min))
			}
		}
	}
	s.Currency = []string{"R", "EUR", "€", "kr"}[r.IntN(4)]
	s.Backup = Backup{Start: 5 * r.IntN(288), End: 5 * r.IntN(288)}
	if r.IntN(4) == 0 {
		s.Backup = Backup{Start: 5 * r.IntN(288), AllDay: true}
		s.Backup.End = s.Backup.Start
	}
	if r.IntN(3) == 0 {
		s.Backup = Backup{StartFrom: Anchor(1 + r.IntN(2)), Start: 5 * (r.IntN(575) - 287), End: 5 * r.IntN(288)}
		if r.IntN(2) == 0 {
			s.Backup.EndFrom, s.Backup.End = Anchor(1+r.IntN(2)), 5*(r.IntN(575)-287)
		}
		if r.IntN(3) == 0 {
			s.Backup.StartFrom, s.Backup.EndFrom = s.Backup.EndFrom, s.Backup.StartFrom
			s.Backup.Start, s.Backup.End = s.Backup.End, s.Backup.Start
		}
	}
	s.Backup.Second = Span{5 * r.IntN(288), 5 * r.IntN(288)}
	return s
}

func TestLink_RoundTrip_Property(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	longest := 0
	for range 2000 {
		s := random(r)
		s.Known = AllFields()
		link := Encode(&s)
		longest = max(longest, len(link))
		back, problems := Decode("#" + link)
		if len(problems) > 0 || back != s {
			t.Fatalf("%s\nproblems %v\ngot  %+v\nwant %+v", link, problems, back, s)
		}
	}
	t.Logf("longest link with every field: %d bytes", longest)
	if longest >= 2000 {
		t.Errorf("longest link has %d bytes, want under 2000", longest)
	}
}

// A house without its own weather, skyline, further planes, datasheet, wiring and
// choices for experts, its hours by the clock: all that an ordinary one has.
func TestLink_OrdinaryHouseIsShort(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	longest, link := 0, ""
	for range 2000 {
		s := random(r)
		s.Known = FieldSet{}.With(Place, Month, SkyKind, UsesFrom, People, ShowerMinutes, ShowerFlow, Showers, PipeLitres,
			TankLitres, LossKWh, SetC, SunLimitC, ElementW, RoomC, Modules, ModuleW, TiltDeg, AzimuthDeg,
			Price, LowPrice, LowFrom, LowTo, Currency, BackupHours, SecondHours)
		s.Backup = Backup{Start: 1285, End: 1430, Second: s.Backup.Second}
		s.Price, s.LowPrice = math.Mod(s.Price, 100), math.Mod(s.LowPrice, 100) // the range is for the smallest currencies, up to six characters more
		if l := Encode(&s); len(l) > longest {
			longest, link = len(l), l
		}
	}
	t.Logf("longest link of an ordinary house: %d bytes, %s", longest, link)
	if longest >= 300 {
		t.Errorf("longest link has %d bytes, want under 300", longest)
	}
}

// Links that must open the same for ever; version 2 completes one of version 1 as that did.
func TestLink_Golden(t *testing.T) {
	cases := []struct {
		link string
		want func(*Scenario)
	}{
		{"", func(s *Scenario) {}},
		{"v=1", func(s *Scenario) {}},
		{"v=1&place=cape-town&month=jun&sky=dull&people=5&backup=2230-0515", func(s *Scenario) {
			s.Place, s.Month, s.Sky, s.People = "cape-town", 5, Dull, 5
			s.ZoneH, s.Summer, s.GridCO2 = 2, NoSummer, 708 // the place's
			s.Backup = Backup{Start: 22*60 + 30, End: 5*60 + 15}
		}},
		{"v=1&loss=193&price=125&money=R&backup=all", func(s *Scenario) {
			s.LossKWh, s.Price, s.Currency = 1.93, 0.125, "R"
			s.Backup = Backup{AllDay: true}
		}},
		{"v=1&backup=1500-1800&backup2=0400-0530", func(s *Scenario) {
			s.Backup = Backup{Start: 900, End: 1080, Second: Span{240, 330}}
		}},
		{"v=1&place=-33.92,18.42,25&zone=8&summer=1004-0405&weather=00ff12ab&shift=-45", func(s *Scenario) {
			s.Place, s.ZoneH, s.Summer, s.Weather, s.ShiftMin, s.GridCO2 = "-33.92,18.42,25", 2, "1004-0405", "00ff12ab", -45, 0
		}},
		{"v=1&light=......700.....&air=-46...........105&draws=markov", func(s *Scenario) {
			s.GHI.Known[6], s.GHI.Value[6] = true, 7
			s.TempC.Known[0], s.TempC.Value[0] = true, -4.6
			s.TempC.Known[11], s.TempC.Value[11] = true, 10.5
			s.Draws = climate.Markov
		}},
		{"v=1&modules2=4&tilt2=20&face2=90&horizon=90:15,120:22,270:5", func(s *Scenario) {
			s.More[0] = Plane{4, 20, 90}
			s.Skyline = "90:15,120:22,270:5"
		}},
		{"v=1&backup=noon0130to1800", func(s *Scenario) {
			s.Backup = Backup{StartFrom: SolarNoon, Start: 90, End: 1080}
		}},
		{"v=1&backup=set-0200toset0015&backup2=0400-0530", func(s *Scenario) {
			s.Backup = Backup{StartFrom: Sunset, Start: -120, EndFrom: Sunset, End: 15, Second: Span{240, 330}}
		}},
		{"v=1&shower=15&uses=m&backup=none1200", func(s *Scenario) {
			s.ShowerMinutes, s.Uses = 7.5, ProfileM
			s.Backup = Backup{Start: 720, End: 720}
		}},
	}
	for _, c := range cases {
		want := first()
		if c.link == "" {
			want = Defaults(LatestVersion)
		}
		c.want(&want)
		got, problems := Decode(c.link)
		want.Known, want.ColdestC = got.Known, got.ColdestC // the place's: TestColdest_Place
		if len(problems) > 0 || got != want {
			t.Errorf("%q: %v\ngot  %+v\nwant %+v", c.link, problems, got, want)
		}
		if n := strings.Count(c.link, "&"); bitsIn(got.Known) < n {
			t.Errorf("%q: %d fields confirmed, want %d at least", c.link, bitsIn(got.Known), n)
		}
		again, problems := Decode(Encode(&got))
		if len(problems) > 0 || again != got {
			t.Errorf("%q, written anew: %v\ngot  %+v\nwant %+v", c.link, problems, again, got)
		}
	}
}

func bitsIn(s FieldSet) (n int) {
	for f := range fieldCount {
		if s.Has(f) {
			n++
		}
	}
	return n
}

func TestDecode_SaysWhatItRefused(t *testing.T) {
	for _, c := range []struct {
		link  string
		field FieldID
		code  Code
		got   string
	}{
		{"v=1&tank=-5", TankLitres, OutOfRange, "-5"},
		{"v=1&tilt=200", TiltDeg, OutOfRange, "200"},
		{"v=1&tilt=3x", TiltDeg, NotANumber, "3x"},
		{"v=1&place=atlantis", Place, UnknownPlace, "atlantis"},
		{"v=2&place=53.48,-2.24&town=%3Cb%3E", Town, WrongName, "%3Cb%3E"},
		{"v=2&town=%zz", Town, WrongName, "%zz"},
		{"v=2&in=Atlantis%0A", Country, WrongName, "Atlantis%0A"},
		{"v=1&sky=green", SkyKind, UnknownChoice, "green"},
		{"v=1&money=12", Currency, WrongCurrency, "12"},
		{"v=1&backup=1500", BackupHours, WrongHours, "1500"},
		{"v=1&backup=1500-1500", BackupHours, WrongHours, "1500-1500"},
		{"v=1&backup=2500-1500", BackupHours, WrongHours, "2500-1500"},
		{"v=1&backup=noon0130to", BackupHours, WrongHours, "noon0130to"},
		{"v=1&backup=1500to1800", BackupHours, WrongHours, "1500to1800"},
		{"v=1&backup=noon-0000to1800", BackupHours, WrongHours, "noon-0000to1800"},
		{"v=1&backup2=noon0000to1800", SecondHours, WrongHours, "noon0000to1800"},
		{"v=1&backup2=all", SecondHours, WrongHours, "all"},
		{"v=1&colour=3", NoField, UnknownKey, "colour"},
		{"v=1&tilt=3&tilt=4", TiltDeg, KeyTwice, "4"},
		{"v=1&tilt", NoField, NotAPair, "tilt"},
		{"tilt=3", NoField, NoVersion, ""},
		{"v=99", NoField, NewerVersion, "99"},
		{"v=x", NoField, NoVersion, "x"},
	} {
		s, problems := Decode(c.link)
		if len(problems) != 1 || problems[0].Field != c.field || problems[0].Code != c.code || problems[0].Got != c.got {
			t.Errorf("%q: %+v", c.link, problems)
		}
		if rest := s.Problems(); len(rest) > 0 {
			t.Errorf("%q left %v", c.link, rest)
		}
	}
	// A link cut in half keeps what stands before the cut.
	full := random(rand.New(rand.NewPCG(3, 4)))
	full.Known = AllFields()
	link := Encode(&full)
	s, problems := Decode(link[:len(link)/2])
	if s.Place != full.Place || s.People != full.People || len(problems) > 1 {
		t.Errorf("half a link: %v, place %s, people %d", problems, s.Place, s.People)
	}
	s, problems = Decode(strings.Repeat("%&=x\xff", 20000))
	if len(problems) != 1 || problems[0].Code != LinkTooLong || s != Defaults(LatestVersion) {
		t.Errorf("100 kB of noise: %+v", problems)
	}
}

func FuzzDecode(f *testing.F) {
	for _, seed := range []string{"", "v=1", "#v=1&tank=200&backup=1500-1800", "v=1&place=-33.92,18.42,25&voc=300", "v=2&tilt=-1&tilt=1", "v=1&money=%E2%82%AC", "&&==&v", "v=1&price=99999999999999999999", "v=1&backup=noon-0130toset0100"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, fragment string) {
		s, _ := Decode(fragment)
		if p := s.Problems(); len(p) > 0 {
			t.Fatalf("%q gives an invalid scenario: %v", fragment, p)
		}
		again, problems := Decode(Encode(&s))
		if len(problems) > 0 || again != s {
			t.Fatalf("%q: not stable: %v\n%+v\n%+v", fragment, problems, s, again)
		}
	})
}

func ExampleEncode() {
	s := Defaults(LatestVersion)
	s.TankLitres, s.Backup = 150, Backup{Start: 14*60 + 45, End: 18*60 + 15}
	s.Known = s.Known.With(TankLitres).With(BackupHours)
	fmt.Println(Encode(&s))
	// Output: v=2&tank=150&backup=1445-1815
}

// Every number and choice can be read and set; a choice's range counts its names.
func TestFields_GetSet(t *testing.T) {
	for _, f := range Fields() {
		if f.Kind != Number && f.Kind != Choice {
			continue
		}
		if f.Kind == Choice && (f.Min != 0 || f.Step != 1 || int(f.Max) != len(f.Choices)-1) {
			t.Errorf("%s: %d names, range %g to %g", f.Key, len(f.Choices), f.Min, f.Max)
		}
		s := Defaults(LatestVersion)
		for _, v := range []float64{f.Max, f.Min} {
			if f.Set(&s, v); f.Get(&s) != v {
				t.Errorf("%s: set %g, is %g", f.Key, v, f.Get(&s))
			}
		}
	}
}

// Currencies in links against net/url, and every text that is no link of ours.
func TestEscape_AgainstURL(t *testing.T) {
	for _, text := range []string{"EUR", "\u20ac", "R$", "kr", "\u00a3", "\u20bf\u20b9", "zl"} {
		if got := escape(text); got != url.QueryEscape(text) {
			t.Errorf("%q: %s, net/url %s", text, got, url.QueryEscape(text))
		}
		if back, ok := unescape(url.QueryEscape(text)); !ok || back != text {
			t.Errorf("%q comes back as %q", text, back)
		}
	}
	for _, text := range []string{"%", "%4", "%zz", "a%", "%+1", "%-1"} {
		if plain, ok := unescape(text); ok {
			t.Errorf("%q is read as %q", text, plain)
		}
	}
}

// The lowest air on record is taken 20 K below the coldest month's mean, also where that was
// overtyped or is between the places of the table: Toronto's table has -5.8 degC.
func TestColdest_Place(t *testing.T) {
	for link, want := range map[string]float64{"v=2&place=toronto": -26, "v=1&place=toronto": -26, "v=2&air=-46...........": -25, "v=2&coldest=-3": -3} {
		if s, problems := Decode(link); s.ColdestC != want || len(problems) > 0 {
			t.Errorf("%s: %g degC, want %g, %v", link, s.ColdestC, want, problems)
		}
	}
	if d := Defaults(1); d.ColdestC != Defaults(2).ColdestC {
		t.Errorf("Lisbon: %g degC", Defaults(2).ColdestC)
	}
}

// An optional number may be none; a reading of zero is one, but in version 1, which wrote
// so what was not measured.
func TestOptional_None(t *testing.T) {
	for link, want := range map[string]float64{"v=1&insulation=0": Unknown, "v=2&insulation=0": 0, "v=1&insulation=120": 1.2, "v=2&insulation=none": Unknown} {
		if s, problems := Decode(link); s.InsulationM != want || len(problems) > 0 {
			t.Errorf("%s: %g, %v", link, s.InsulationM, problems)
		}
	}
	for _, f := range Fields() {
		if !f.Optional {
			continue
		}
		s := Defaults(LatestVersion)
		if !f.Empty(f.Get(&s)) || f.Snap(Unknown) != Unknown || f.Min <= Unknown && Unknown <= f.Max {
			t.Errorf("%s: %g by default", f.Key, f.Get(&s))
		}
		s.Known = s.Known.With(f.ID)
		if link := Encode(&s); link != "v=2&"+f.Key+"=none" {
			t.Error(link)
		}
	}
	if s, problems := Decode("v=2&tank=none"); len(problems) != 1 || s.TankLitres != 200 {
		t.Errorf("a tank of none: %v", problems)
	}
}
