package words

import (
	"regexp"
	"sort"
	"strings"
	"testing"

	"suncask/engine/care"
	"suncask/engine/climate/hourly"
	"suncask/engine/plan"
	"suncask/engine/scenario"
)

// Every code, field, unit and key has its words, and they take their arguments.
func TestCatalogues_Complete(t *testing.T) {
	for _, c := range All() {
		t.Run(c.Page[LanguageCode], func(t *testing.T) { complete(t, c) })
	}
}

func complete(t *testing.T, c *Catalogue) {
	for _, f := range scenario.Fields() {
		text := c.Fields[f.ID]
		if text.Name == "" {
			t.Errorf("field %s has no name", f.Key)
		}
		if len(text.Choices) != len(f.Choices) {
			t.Errorf("field %s: %d choices in words, %d in the table", f.Key, len(text.Choices), len(f.Choices))
		}
		if int(f.Unit) >= len(c.Units) || f.Unit != scenario.NoUnit && f.Unit != scenario.PerPerson && f.Unit != scenario.Piece && f.Unit != scenario.ClockMinute && f.Unit != scenario.Money && c.Units[f.Unit] == "" {
			t.Errorf("field %s: unit %d has no word", f.Key, f.Unit)
		}
	}
	for code := scenario.NotANumber; code <= scenario.WeatherRefused; code++ {
		text := c.Problem(scenario.Problem{Field: scenario.TankLitres, Code: code, Got: "-5", Min: 3, Max: 9})
		if text == "" || strings.Contains(text, "%!") {
			t.Errorf("problem %d: %q", code, text)
		}
	}
	plain := map[care.Code]bool{care.CutOutUnknown: true, care.CutOutNotSun: true, care.TwoSupplies: true, care.StepDownOpen: true, care.ReliefUnknown: true, care.VesselOpen: true} // without numbers
	for _, code := range care.Codes() {
		if text := c.Finding(care.Finding{Code: code, Args: [3]float64{55, 60, 65}}); text == "" || strings.Contains(text, "55") == plain[code] || strings.Contains(text, "%!") {
			t.Errorf("finding %d: %q", code, text)
		}
	}
	for code := hourly.NotKnown; code <= hourly.Empty; code++ {
		text := c.FileError(&hourly.Error{Code: code, Line: 7, Column: 3, Name: "hour", Got: "25", Want: "1 to 24"})
		if !strings.Contains(text, "7") || !strings.Contains(text, "3 (hour): ") || len(text) < 35 || strings.Contains(text, "%!") {
			t.Errorf("file error %d: %q", code, text)
		}
	}
	for code := hourly.FilledShort; code <= hourly.HeightNotGiven; code++ {
		if text := c.FileNote(hourly.Note{Code: code, N: 14}); text == "" || strings.Contains(text, "%!") {
			t.Errorf("file note %d: %q", code, text)
		}
	}
	for k := range keyCount {
		if c.Text(k) == "" {
			t.Errorf("page text %d is missing", k)
		}
	}
}

func TestProblem_Words(t *testing.T) {
	c := English()
	_, problems := scenario.Decode("v=1&tank=-5&tilt=200&place=atlantis")
	want := []string{
		"Tank: -5 is outside what is allowed, 30 to 1000\u202fL.",
		"Tilt: 200 is outside what is allowed, 0 to 90\u202f\u00b0.",
		"Place: \u201catlantis\u201d is not among the towns that this page knows, nor a latitude and longitude. Type a larger town nearby, or 38.7, -9.1.",
	}
	for i, p := range problems {
		if got := c.Problem(p); got != want[i] {
			t.Errorf("%q, want %q", got, want[i])
		}
	}
}

// Every change has a name that its arguments fit.
func TestChanges_Named(t *testing.T) {
	for _, c := range All() {
		changesNamed(t, c)
	}
}

func changesNamed(t *testing.T, c *Catalogue) {
	for _, change := range plan.Changes() {
		if text := c.Change(change, "a", "b", "c", "d", "e", "f", "g", "h", "i", "j", "k", "l"); text == "" || strings.Contains(text, "%") {
			t.Errorf("change %d: %q", change, text)
		}
	}
}

// verb is a place for an argument.
var verb = regexp.MustCompile(`%[.0-9]*(\[\d+\])?[a-z%]`)

// All languages have the same lists, and each text takes the same arguments; each is among
// Languages.
func TestCatalogues_TakeTheSame(t *testing.T) {
	verbs := func(text string) string {
		list := verb.FindAllString(text, -1)
		sort.Strings(list)
		return strings.Join(list, " ")
	}
	en := English()
	if len(All()) != len(Languages) {
		t.Errorf("%d catalogues, %d languages", len(All()), len(Languages))
	}
	for l, other := range All() {
		if code := other.Text(LanguageCode); code != Languages[l].Code {
			t.Errorf("language %d is %s in one list, %s in the other", l, code, Languages[l].Code)
		}
		lists := other.lists()
		for i, list := range en.lists() {
			if len(*list) != len(*lists[i]) {
				t.Fatalf("list %d: %d texts in English, %d in %s", i, len(*list), len(*lists[i]), Languages[l].Name)
			}
			for k, text := range *list {
				if o := (*lists[i])[k]; verbs(text) != verbs(o) || (text == "") != (o == "") {
					t.Errorf("%q takes %s, %q takes %s", text, verbs(text), o, verbs(o))
				}
			}
		}
		for i, f := range en.Fields {
			if o := other.Fields[i]; (f.Help == "") != (o.Help == "") || len(f.Choices) != len(o.Choices) || l > 0 && f.Name == o.Name {
				t.Errorf("field %q: %q", f.Name, o.Name)
			}
		}
	}
}

// What something must bear at least is rounded up, what it may at most down: 15.3 A is never
// a fuse of 15 A, nor 78.2 V shown as 78.
func TestFinding_Rounds(t *testing.T) {
	c := English()
	for _, f := range []struct {
		finding care.Finding
		want    []string
	}{
		{care.Finding{Code: care.StringFuses, Args: [3]float64{15.3, 24.48, 3}}, []string{"between 16 and 24 A"}},
		{care.Finding{Code: care.StringFuses, Args: [3]float64{15, 20, 3}}, []string{"between 15 and 20 A"}},
		{care.Finding{Code: care.AboveLowVoltage, Args: [3]float64{78.2, 60, 2.3}}, []string{"79 V", "60 V"}},
		{care.Finding{Code: care.IsolatorRating, Args: [3]float64{250.1, 17.02}}, []string{"251 V", "18 A"}},
		{care.Finding{Code: care.IsolatorRating, Args: [3]float64{250.00000000001, 8.11}}, []string{"250 V", "8.2 A"}},
		{care.Finding{Code: care.InsulationLow, Args: [3]float64{0.996, 1, 500}}, []string{"0.99 megohm"}},
		{care.Finding{Code: care.GridStuck, Args: [3]float64{3.59, 88}}, []string{"3.5 h"}},
		{care.Finding{Code: care.StoredScalds, Args: [3]float64{65.2, 50, 1.96}}, []string{"66 °C", "within 1.9 s"}},
		{care.Finding{Code: care.VesselSmall, Args: [3]float64{21.4, 21.46, 6.37}}, []string{"vessel of 21 L", "22 L at least", "the 6.4 L"}},
		{care.Finding{Code: care.VesselNeeds, Args: [3]float64{21.46, 3.5, 6}}, []string{"3.5 bar", "22 L at least", "6 bar"}},
		{care.Finding{Code: care.SupplyNearRelief, Args: [3]float64{4.81, 6}}, []string{"water's 4.9 bar", "valve's 6 bar"}},
		{care.Finding{Code: care.SupplyLow, Args: [3]float64{0.9, 1}}, []string{"has 0.90 bar", "below 1 bar"}},
		{care.Finding{Code: care.CloudEdge, Args: [3]float64{2500.3, 2000, 1250}}, []string{"1250 W/m²", "of 2000 W then takes 2501 W"}},
		{care.Finding{Code: care.Soiled, Args: [3]float64{10.5, 10}}, []string{"takes 11 %", "more than 10 %"}},
	} {
		text := c.Finding(f.finding)
		for _, want := range f.want {
			if !strings.Contains(text, want) {
				t.Errorf("%q has no %q", text, want)
			}
		}
	}
}
