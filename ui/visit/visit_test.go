package visit

import (
	"strings"
	"testing"

	"suncask/engine/plan"
	"suncask/engine/published"
	"suncask/engine/scenario"
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
	for _, c := range []struct {
		name     string
		typed    map[string]string
		outcomes [5]string // begin so
	}{
		{"as expected", map[string]string{"test-light": "800", "test-back": "42.6", "read-open": "208", "read-short": "11.2", "read-volts": "181.3", "read-amps": "9.44", "read-watts": "1711"},
			[5]string{"within what", "within what", "within what", "within what", "within what"}},
		{"one module missing", map[string]string{"test-back": "42.6", "read-open": "173.3"}, [5]string{"lower than expected by 17 %; as if 1 of 6"}},
		{"reversed", map[string]string{"test-back": "42.6", "read-open": "-208"}, [5]string{"reversed: do not connect"}},
		{"no current is a reading", map[string]string{"test-back": "42.6", "read-short": "0"}, [5]string{1: "lower than expected by 100 %"}},
		{"weak light", map[string]string{"test-light": "300", "test-back": "30", "read-open": "208", "read-short": "4"}, [5]string{"within what", "cannot be judged"}},
		{"words", map[string]string{"test-back": "42.6", "read-open": "two hundred"}, [5]string{}},
	} {
		p.Visit.Typed = c.typed
		m := &Meters{Page: p}
		m.Compute()
		if m.problem != "" {
			t.Errorf("%s: %s", c.name, m.problem)
			continue
		}
		for i, want := range c.outcomes {
			if got := m.outcome(i); !strings.HasPrefix(got, want) || want == "" && got != "" {
				t.Errorf("%s: %s is %q, not %q", c.name, measured[i].id, got, want)
			}
		}
	}
	// Without a temperature, with one that is none, and with volts that no cells give, nothing is expected.
	for _, typed := range []map[string]string{{}, {"test-back": "warm"}, {"test-back": "42", "test-light": "9000"}} {
		p.Visit.Typed = typed
		m := &Meters{Page: p}
		if m.Compute(); m.problem != w.Text(words.TestEmpty) {
			t.Errorf("%v: %q", typed, m.problem)
		}
	}
	p.Visit.Cells, p.Visit.Typed = byOpen, map[string]string{"test-open": "100"}
	m := &Meters{Page: p}
	if m.Compute(); !strings.Contains(m.problem, "100 V") {
		t.Errorf("100 V of six modules: %q", m.problem)
	}
	p.Visit.Typed["test-open"] = "205"
	if m.Compute(); m.problem != "" || !strings.HasPrefix(m.cells(), "Cells of 50 ") {
		t.Errorf("205 V: %q, %q", m.problem, m.cells())
	}
	// Light by amps: 9.05 A at 45 degC are 647 W/m2, and amps are then not judged.
	p.Visit = page.Visit{ByAmps: true, Typed: map[string]string{"test-amps": "9.05", "test-back": "43.06", "read-short": "9.05", "read-open": "207"}}
	if m.Compute(); m.problem != "" || m.cells() != "Cells of 45 °C in 647 W/m²" {
		t.Errorf("9.05 A: %q, %q", m.problem, m.cells())
	}
	if !strings.HasPrefix(m.outcome(1), "cannot be judged") || !strings.HasPrefix(m.outcome(0), "within") {
		t.Errorf("9.05 A: amps %q, volts %q", m.outcome(1), m.outcome(0))
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
