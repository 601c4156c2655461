package towns

import (
	"math"
	"math/rand/v2"
	"os"
	"strings"
	"testing"
)

// few reads a part of the list of the site, GeoNames (CC BY 4.0).
func few(t testing.TB, language string) *List {
	t.Helper()
	raw, err := os.ReadFile("../../testdata/towns.txt")
	if err != nil {
		t.Fatal(err)
	}
	l, err := Read(string(raw), language)
	if err != nil {
		t.Fatal(err)
	}
	return l
}

// Letters that are written otherwise somewhere.
func TestFold(t *testing.T) {
	for text, want := range map[string]string{
		"M\u00fcnchen": "munchen", "S\u00e3o Jos\u00e9 dos Campos": "sao jose dos campos", "\u0141\u00f3d\u017a": "lodz", "Troms\u00f8": "tromso",
		"St. John's": "st johns", "Aix-en-Provence": "aix en provence", "Gie\u00dfen": "giessen", "\u00c6r\u00f8": "aero",
		"\u0130zmir": "izmir", "Diyarbak\u0131r": "diyarbakir", "Hu\u1ebf": "hue", "\u041c\u043e\u0441\u043a\u0432\u0430": "\u043c\u043e\u0441\u043a\u0432\u0430",
		"\u6771\u4eac": "\u6771\u4eac", "  a  b ": "a b", "A;B c": "a;b c", "e\u0301": "e", "": "", "'": "", "Donostia / San Sebasti\u00e1n": "donostia san sebastian",
	} {
		if got := Fold(text); got != want {
			t.Errorf("%q is folded to %q, want %q", text, got, want)
		}
	}
}

func TestSearch(t *testing.T) {
	l := few(t, "en")
	for _, c := range []struct{ typed, name, country string }{
		{"manchester", "Manchester", "United Kingdom"}, {"MANCH", "Manchester", "United Kingdom"}, {"manchester uk", "Manchester", "United Kingdom"},
		{"manchester, united kingdom", "Manchester", "United Kingdom"}, {"Manchester, Reino Unido", "Manchester", "United Kingdom"},
		{"manchester nh", "Manchester", "United States"}, {"manchester new hampshire usa", "Manchester", "United States"},
		{"Manchester, Greater Manchester, England", "Manchester", "United Kingdom"},
		{"M\u00fcnchen", "Munich", "Germany"}, {"munchen", "Munich", "Germany"}, {"muenchen", "Munich", "Germany"}, {"munich", "Munich", "Germany"},
		{"k\u00f6ln", "K\u00f6ln", "Germany"}, {"koln", "K\u00f6ln", "Germany"}, {"cologne", "K\u00f6ln", "Germany"}, {"colonia alemania", "K\u00f6ln", "Germany"},
		{"goeppingen", "G\u00f6ppingen", "Germany"}, {"sevilla", "Sevilla", "Spain"}, {"seville spain", "Sevilla", "Spain"}, {"lisboa", "Lisbon", "Portugal"},
		{"cordoba espana", "C\u00f3rdoba", "Spain"}, {"c\u00f3rdoba, andalu", "C\u00f3rdoba", "Spain"}, {"cordoba", "C\u00f3rdoba", "Argentina"},
		{"st louis", "St. Louis", "United States"}, {"saint louis missouri", "St. Louis", "United States"}, {"st gallen", "Sankt Gallen", "Switzerland"},
		{"xian", "Xi\u2019an", "China"}, {"xi'an", "Xi\u2019an", "China"}, {"\u897f\u5b89", "Xi\u2019an", "China"}, {"\u041c\u043e\u0441\u043a\u0432\u0430", "Moscow", "Russia"},
		{"\u6771\u4eac", "Tokyo", "Japan"}, {"den haag", "The Hague", "Netherlands"}, {"hague", "The Hague", "Netherlands"}, {"la coruna", "A Coru\u00f1a", "Spain"},
		{"coru\u00f1a", "A Coru\u00f1a", "Spain"}, {"san jose costa rica", "San Jos\u00e9", "Costa Rica"}, {"york", "York", "United Kingdom"}, {"new york", "New York City", "United States"},
		{"geneva", "Gen\u00e8ve", "Switzerland"}, {"genf", "Gen\u00e8ve", "Switzerland"}, {"portland or", "Portland", "United States"},
	} {
		found := l.Search(c.typed, 8)
		if len(found) == 0 {
			t.Errorf("%q finds nothing", c.typed)
			continue
		}
		if town := l.Town(found[0].Town); town.Name != c.name || town.Country != c.country {
			t.Errorf("%q finds %s, %s, want %s, %s", c.typed, town.Name, town.Country, c.name, c.country)
		}
	}
	for _, typed := range []string{"", " ", ",", ";", "xyzzy"} {
		if found := l.Search(typed, 8); len(found) > 0 {
			t.Errorf("%q finds %v", typed, found)
		}
	}
}

// Matches come by fit, then size, each town once, no more than asked for.
func TestSearch_Property(t *testing.T) {
	l := few(t, "es")
	for _, typed := range []string{"m", "s", "san", "man", "new", "york", "c\u00f3rdoba", "ma"} {
		all := l.Search(typed, 1000)
		seen := map[int]bool{}
		for i, m := range all {
			if seen[m.Town] || i > 0 && l.before(m, all[i-1]) {
				t.Errorf("%q: %v twice, or out of order", typed, m)
			}
			seen[m.Town] = true
			if !strings.Contains(" "+Fold(m.Name), " "+Fold(typed)) {
				t.Errorf("%q finds %s", typed, m.Name)
			}
		}
		for n := 1; n < len(all); n++ {
			part := l.Search(typed, n)
			for i := range part {
				if len(part) != n || part[i] != all[i] {
					t.Errorf("%q: the first %d are %v, of %v", typed, n, part, all)
				}
			}
		}
	}
	if town := l.Town(l.Search("munich", 1)[0].Town); town.Country != "Alemania" || town.English != "Germany" || town.Zone != "Europe/Berlin" || town.Region != "Bavaria" {
		t.Errorf("%+v", town)
	}
}

func TestSimilar(t *testing.T) {
	l := few(t, "en")
	for typed, want := range map[string]string{"manchestre": "Manchester", "Lisbn": "Lisbon", "kathmndu": "Kathmandu", "sevila": "Sevilla", "aquila": "L'Aquila", "Portand, Oregon": "Portland", "Munnich": "Munich"} {
		found := l.Similar(typed, 3)
		if len(found) == 0 || l.Town(found[0].Town).Name != want || found[0].Fit != Near {
			t.Errorf("%q is near %v, want %s", typed, found, want)
		}
	}
	for _, typed := range []string{"", "abc", "xyzzyx", strings.Repeat("a", 100)} {
		if found := l.Similar(typed, 3); len(found) > 0 {
			t.Errorf("%q is near %v", typed, found)
		}
	}
}

// Restricted distances of Damerau and Levenshtein, counted by hand.
func TestDiffer(t *testing.T) {
	for _, c := range []struct {
		a, b string
		want int
	}{{"", "", 0}, {"a", "", 1}, {"abc", "abc", 0}, {"abc", "acb", 1}, {"abc", "abd", 1}, {"kitten", "sitting", 3}, {"ca", "abc", 3}, {"abcd", "bcda", 2}} {
		if got := differ(c.a, c.b, 9); got != c.want || differ(c.b, c.a, 9) != c.want {
			t.Errorf("%q, %q: %d, want %d", c.a, c.b, got, c.want)
		}
		if got := differ(c.a, c.b, 1); c.want > 1 && got <= 1 {
			t.Errorf("%q, %q within 1: %d", c.a, c.b, got)
		}
	}
}

func TestNearest(t *testing.T) {
	l := few(t, "en")
	for i := range l.Len() {
		town := l.Town(i)
		if _, km := l.Nearest(town.LatDeg, town.LonDeg); km > 1e-9 {
			t.Errorf("%s is %g km from the nearest", town.Name, km)
		}
		if math.IsNaN(town.HeightM) != (town.Name == "Suva") || town.Zone == "" || town.Country == "" {
			t.Errorf("%+v", town)
		}
	}
	// Across the date line: Suva is nearer to 179.9 W than Apia.
	if i, km := l.Nearest(-16, -179.9); l.Town(i).Name != "Suva" || km > 300 {
		t.Errorf("%s at %.0f km", l.Town(i).Name, km)
	}
	if zone, _ := l.Zone(53.4, -2.3); zone != "Europe/London" {
		t.Errorf("Manchester is in %s", zone)
	}
	o := l.outposts[0]
	if zone, km := l.Zone(float64(o.lat)/100, float64(o.lon)/100); zone != o.zone || km > 1e-9 {
		t.Errorf("outpost in %s at %g km", zone, km)
	}
}

// A list that came damaged is refused, never half read, and breaks nothing.
func TestRead_Damaged(t *testing.T) {
	raw, err := os.ReadFile("../../testdata/towns.txt")
	if err != nil {
		t.Fatal(err)
	}
	text := strings.TrimSuffix(string(raw), "\n")
	for n := 0; n < len(text); n += 7 {
		if _, err := Read(text[:n], "en"); err == nil {
			t.Fatalf("the first %d of %d bytes are read", n, len(text))
		}
	}
	for _, bad := range []string{strings.Replace(text, "Europe/London", "Europe/London\tx", 1), strings.Replace(text, "5348", "x", 1), strings.Replace(text, "5348", "95348", 1), strings.Replace(text, "GB\t", "GBX\t", 1)} {
		if _, err := Read(bad, "en"); err == nil || bad == text {
			t.Error("a damaged list is read")
		}
	}
}

// Nothing that can be typed breaks a search, and what is found is among the towns.
func TestSearch_AnyText(t *testing.T) {
	l := few(t, "en")
	r := rand.New(rand.NewPCG(5, 6))
	parts := []string{"man", "s", " ", ",", ";", "\xff", "\u0301", "\u6771", "\u00df", "-", "'", "9", "\u00b0", ".", "lis", "uk", "O", "w", "\n", "\t", "\u2019", "sao", "st "}
	for range 20000 {
		text := ""
		for range r.IntN(8) {
			text += parts[r.IntN(len(parts))]
		}
		for _, m := range append(l.Search(text, 8), l.Similar(text, 8)...) {
			if m.Town < 0 || m.Town >= l.Len() || m.Name == "" {
				t.Fatalf("%q finds %+v", text, m)
			}
		}
		if p, ok := ReadPoint(text); ok && (math.IsNaN(p.LatDeg) || math.IsNaN(p.LonDeg)) {
			t.Fatalf("%q is %+v", text, p)
		}
	}
}
