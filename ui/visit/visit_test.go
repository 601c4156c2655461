package visit

import (
	"strings"
	"testing"

	"suncask/engine/plan"
	"suncask/engine/published"
	"suncask/engine/scenario"
	"suncask/engine/visit"
	"suncask/ui/page"
	"suncask/ui/state"
	"suncask/ui/view"
	"suncask/ui/words"
)

// at is the page of the check values' house, changed.
func at(t *testing.T, more string) *page.Page {
	t.Helper()
	var link string
	published.Block(t, "visit.json", "house", &link)
	return page.New(state.Open(link+more), view.New())
}

// What is typed is judged against what the check values' program expects in 800 W/m2 and 45 degC
// (testdata/visit.json): 207.97 V, 11.194 A; of a number that is none, nothing is said.
func TestMeters_Judged(t *testing.T) {
	p := at(t, "&couple=direct")
	w := p.View.Words
	open, short := visit.StringCode(visit.OpenOf, 1), visit.StringCode(visit.ShortOf, 1)
	codes := [4]visit.Code{open, short, visit.SunV, visit.SunAmps}
	for _, c := range []struct {
		name     string
		typed    map[visit.Code]string
		outcomes [4]string // begin so
	}{
		{"as expected", map[visit.Code]string{visit.Light: "800", visit.BackC: "42.6", open: "208", short: "11.2", visit.SunV: "181.3", visit.SunAmps: "9.44"},
			[4]string{"within what", "within what", "within what", "within what"}},
		{"one module missing", map[visit.Code]string{visit.BackC: "42.6", open: "173.3"}, [4]string{"lower than expected by 17 %; as if 1 of 6"}},
		{"reversed", map[visit.Code]string{visit.BackC: "42.6", open: "-208"}, [4]string{"reversed: do not connect"}},
		{"no current is a reading", map[visit.Code]string{visit.BackC: "42.6", short: "0"}, [4]string{1: "lower than expected by 100 %"}},
		{"weak light", map[visit.Code]string{visit.Light: "300", visit.BackC: "30", open: "208", short: "4"}, [4]string{"within what", "cannot be judged"}},
		{"words", map[visit.Code]string{visit.BackC: "42.6", open: "two hundred"}, [4]string{}},
	} {
		p.Visit.Typed = c.typed
		m := &Meters{Page: p}
		m.Compute()
		if m.problem != "" {
			t.Errorf("%s: %s", c.name, m.problem)
			continue
		}
		for i, want := range c.outcomes {
			if got := m.outcome(codes[i]); !strings.HasPrefix(got, want) || want == "" && got != "" {
				t.Errorf("%s: %s is %q, not %q", c.name, codes[i], got, want)
			}
		}
	}
	// Without a temperature, with one that is none, and in a light that is none, nothing of the light is expected.
	for _, typed := range []map[visit.Code]string{{}, {visit.BackC: "warm"}, {visit.BackC: "42", visit.Light: "9000"}, {visit.BackC: "42", visit.Light: "0"}} {
		p.Visit.Typed = typed
		m := &Meters{Page: p}
		if m.Compute(); m.problem != w.Text(words.TestEmpty) || m.expects(open) != "" {
			t.Errorf("%v: %q, %q", typed, m.problem, m.expects(open))
		}
	}
	says := func(m *Meters) string { return (&Lit{Page: p, Problem: m.problem, Light: m.now.Given}).cells() }
	p.Visit.Cells, p.Visit.Typed = byOpen, map[visit.Code]string{open: "100"}
	m := &Meters{Page: p}
	if m.Compute(); !strings.Contains(m.problem, "100 V") {
		t.Errorf("100 V of six modules: %q", m.problem)
	}
	p.Visit.Typed[open] = "205"
	if m.Compute(); m.problem != "" || !strings.HasPrefix(says(m), "Cells of 50 ") {
		t.Errorf("205 V: %q, %q", m.problem, says(m))
	}
	// Light by amps: 9.05 A at 45 degC are 647 W/m2, and amps are then not judged.
	p.Visit = page.Visit{LightBy: page.LightByAmps, Typed: map[visit.Code]string{short: "9.05", visit.BackC: "43.06", open: "207"}}
	if m.Compute(); m.problem != "" || says(m) != "Cells of 45 °C in 647 W/m²" {
		t.Errorf("9.05 A: %q, %q", m.problem, says(m))
	}
	if !strings.HasPrefix(m.outcome(short), "cannot be judged") || !strings.HasPrefix(m.outcome(open), "within") {
		t.Errorf("9.05 A: amps %q, volts %q", m.outcome(short), m.outcome(open))
	}
}

// Every question of the tree has its texts, and a way through it can be walked and taken back.
func TestTrouble_Walked(t *testing.T) {
	p := at(t, "&breaks=contactor")
	p.Compute()
	c := &Trouble{Page: p}
	for n := visit.IsTrouble; n < visit.Nodes; n++ {
		q := visit.QuestionOf(n)
		if len(questions[n].answers) != len(q.Answers) {
			t.Fatalf("question %d: %d answers in words, %d in the tree", n, len(questions[n].answers), len(q.Answers))
		}
		for i, a := range q.Answers {
			if (a.Next == visit.NoNode) != (questions[n].answers[i].means != none) {
				t.Errorf("question %d, answer %d: it ends or leads on, its words otherwise", n, i)
			}
		}
	}
	c.Compute()
	c.open(0)
	if c.ended() || len(c.looks()) != 2 {
		t.Errorf("the first question: %v", c.looks())
	}
	for _, answer := range []int{1, 1, 0, 0} { // no heat, clock right, volts there, within the window
		c.answer(answer)
	}
	if c.last().At != visit.ConverterWorks {
		t.Fatalf("at question %d", c.last().At)
	}
	c.answer(0)
	c.answer(3)
	if !c.ended() || !c.stopped() || !strings.Contains(c.path(), "Welded") || strings.Count(c.path(), "\n") != 7 {
		t.Errorf("a welded contactor: %q", c.path())
	}
	c.back()
	if c.ended() || c.last().At != visit.ContactorWorks {
		t.Error("a step back leaves the end")
	}
	for range 6 {
		c.back()
	}
	if c.started() {
		t.Error("all steps back lead to no beginning")
	}
	// One fault to earth, worked out from two readings (testdata/plates.json).
	c.open(3)
	c.answer(1)
	p.Visit.Typed = map[visit.Code]string{visit.PlusToEarth: "137.4", visit.MinusToEarth: "-68.6"}
	if c.Compute(); !strings.Contains(c.worked(), "2.0 of 6") {
		t.Errorf("a fault to earth: %q", c.worked())
	}
}

// A coefficient typed without its sign, as on keyboards that have none, is taken with it.
func TestSurvey_SignOfVoltage(t *testing.T) {
	p := at(t, "")
	p.Store.Type(scenario.VoltPct, "0.26")
	if got := p.Store.Scenario.VoltPct; got != -0.26 || len(p.Store.Refused) > 0 {
		t.Errorf("0.26 is taken as %g, refused %v", got, p.Store.Refused)
	}
}

// The list's texts: limits of the check values rounded to the safe side, fuses, what stops a wiring,
// cables by length; without modules the grid's ratings alone.
func TestWiring_Texts(t *testing.T) {
	p := at(t, "&coldest=-26&maxfuse=50")
	for part := range state.Work(state.WiringsJob, plan.Whole, p.Store.BeginJob(state.WiringsJob), nil) {
		p.Store.TakePart(state.WiringsJob, part)
	}
	c := &Wiring{Page: p}
	c.Compute()
	if len(c.list) != 12 || len(c.free())+len(c.stopped()) != 12 || len(c.stopped()) == 0 {
		t.Fatalf("%d wirings, %d free, %d stopped", len(c.list), len(c.free()), len(c.stopped()))
	}
	one := &c.list[0]
	if line := c.line(one); !strings.Contains(line, "251 V at the coldest, 17.4 A by design") || !strings.Contains(line, "not needed") {
		t.Errorf("%s: %s", c.name(one), line)
	}
	for i := range c.list {
		if w := &c.list[i]; w.To.InString == 2 && !strings.Contains(c.line(w), "20.8 to 25.0 A") {
			t.Errorf("three strings: %s", c.line(w))
		}
	}
	cells := map[string]string{}
	for _, r := range c.ratings().Rows {
		cells[r.Cells[0].(string)] = r.Cells[1].(string)
	}
	if len(cells) != 7 || cells[p.T(words.RatingSwitch)] != "17.4\u202fA" {
		t.Errorf("ratings: %v", cells)
	}
	if row := c.cables().Rows[2]; row.Cells[1] != "6" || row.Cells[2] != "2.5" || row.Cells[3] != "2.5" {
		t.Errorf("15 m: %v", row.Cells)
	}
	bare := &Wiring{Page: at(t, "&modules=0")}
	bare.Page.Store.Type(scenario.Modules, "0")
	if bare.Compute(); bare.modules() || len(bare.ratings().Rows) != 3 {
		t.Errorf("without modules: %v", bare.ratings().Rows)
	}
}

// Plates: what is worked out is taken into its field (testdata/plates.json), what cannot be says so, and
// a night's readings say how well they tell the loss.
func TestPlates_Taken(t *testing.T) {
	p := at(t, "")
	c := &Plates{Page: p}
	type values map[string]string
	for _, k := range []struct {
		plate int
		typed values
		says  string
		link  string // what it then holds
	}{
		{0, values{"plate-watts-ohms": "18.4"}, "2926 to 3130 W", "element="},
		{1, values{"plate-pulses-pulses": "10", "plate-pulses-perkwh": "1000", "plate-pulses-seconds": "12.5"}, "about ", "element="},
		{2, values{"plate-size-wide": "0.56", "plate-size-high": "1.55", "plate-size-thick": "0.05"}, "about 229", "tank=229"},
		{3, values{"plate-rise-energy": "4", "plate-rise-kelvin": "14.8"}, "about 233", "tank=233"},
		{4, values{"plate-night-reheat": "1.9", "plate-night-hours": "24", "plate-night-mean": "59", "plate-night-room": "18"}, "about 2.09", "loss=209"},
	} {
		p.Visit.Plates = k.typed
		if got := c.says(plates[k.plate]); !strings.HasPrefix(got, k.says) || !c.canTake(plates[k.plate]) {
			t.Errorf("plate %d says %q", k.plate, got)
		}
		if c.take(plates[k.plate]); !strings.Contains(p.Store.Link(), k.link) || len(p.Store.Refused) > 0 {
			t.Errorf("plate %d: %s, %v", k.plate, p.Store.Link(), p.Store.Refused)
		}
	}
	p.Visit.Plates = values{"plate-size-wide": "0.1", "plate-size-high": "1", "plate-size-thick": "0.05"}
	if got := c.says(plates[2]); got != p.T(words.PlateNone) || c.canTake(plates[2]) {
		t.Errorf("insulation alone: %q", got)
	}
	p.Visit.Plates = values{"plate-size-wide": "0.1"}
	if got := c.says(plates[2]); got != "" || c.canTake(plates[2]) {
		t.Errorf("half typed: %q", got)
	}
	if got := c.night(); got != "" {
		t.Errorf("no night was read: %q", got)
	}
	p.Store.Choose(scenario.LossBy, int(scenario.LossOvernight))
	for id, text := range map[scenario.FieldID]string{scenario.TankLitres: "200", scenario.EveningC: "60", scenario.MorningC: "56", scenario.NightH: "10", scenario.RoomC: "20"} {
		p.Store.Type(id, text)
	}
	if got := c.night(); !strings.Contains(got, "37 %") {
		t.Errorf("a short night: %q", got)
	}
}
