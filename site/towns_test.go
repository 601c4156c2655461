package main

import (
	"encoding/csv"
	"math"
	"os"
	"strconv"
	"strings"
	"testing"
	"time"

	"suncask/engine/climate"
	"suncask/engine/published"
	"suncask/ui/towns"
)

// theTowns reads the list that the build has made.
func theTowns(t testing.TB) *towns.List {
	t.Helper()
	raw, err := os.ReadFile("../dist/towns.txt")
	if err != nil {
		t.Fatal("dist/ is not built: run ./build.sh build first")
	}
	l, err := towns.Read(string(raw), "en")
	if err != nil {
		t.Fatal(err)
	}
	return l
}

// clock is a zone's by Go's copy of the IANA data.
func clock(t *testing.T, zone string) climate.Clock {
	t.Helper()
	offsets, err := published.Offsets(zone, climate.RefYear)
	if err != nil {
		t.Fatal(err)
	}
	c, ok := climate.ClockOver(&offsets)
	if !ok {
		t.Fatalf("%s has more than one summer time", zone)
	}
	return c
}

// Every town has a zone that Go's IANA data knows, with a clock that a house can hold, and
// is on earth.
func TestTowns_Property(t *testing.T) {
	l := theTowns(t)
	if l.Len() < 25000 {
		t.Errorf("%d towns", l.Len())
	}
	zones := map[string]climate.Clock{}
	heights := 0
	for i := range l.Len() {
		town := l.Town(i)
		if _, known := zones[town.Zone]; !known {
			zones[town.Zone] = clock(t, town.Zone)
		}
		c := zones[town.Zone]
		if gap := math.Remainder(c.OffsetH-town.LonDeg/15, 24); math.Abs(gap) > 3.6 || math.Mod(c.OffsetH*4, 1) != 0 || c.ShiftH != 0 && c.ShiftH != 1 {
			t.Errorf("%s, %s: %s, %+v is %.1f h from the sun", town.Name, town.Country, town.Zone, c, gap)
		}
		if climate.PointProblem(town.LatDeg, town.LonDeg, town.HeightM) != "" || town.Name == "" || town.Country == "" {
			t.Errorf("%+v", town)
		}
		if !math.IsNaN(town.HeightM) {
			heights++
		}
	}
	t.Logf("%d towns in %d zones, %d with their height", l.Len(), len(zones), heights)
}

// Points near borders get their own clock nearly always from the towns, far less often from
// the 463 places. testdata/borders.csv; offsets by Go's copy of the IANA data.
func TestTowns_Borders(t *testing.T) {
	l := theTowns(t)
	f, err := os.Open("../testdata/borders.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	rows, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	var wrong []string
	byPlace := 0
	for _, row := range rows[1:] {
		lat, _ := strconv.ParseFloat(row[2], 64)
		lon, _ := strconv.ParseFloat(row[3], 64)
		want := clock(t, row[4])
		if zone, _ := l.Zone(lat, lon); clock(t, zone) != want {
			wrong = append(wrong, row[0]+" "+row[1]+": "+zone+", not "+row[4])
		}
		if climate.Point(lat, lon, math.NaN()).Clock != want {
			byPlace++
		}
	}
	t.Logf("of %d points %d have the wrong clock by the towns, %d by the places; %s", len(rows)-1, len(wrong), byPlace, strings.Join(wrong, "; "))
	if len(rows) != 98 || len(wrong) > 10 || byPlace < 30 {
		t.Errorf("%d points, %d wrong, %d by the places", len(rows)-1, len(wrong), byPlace)
	}
}

// What people type finds the town that they mean; each within a frame.
func TestTowns_Found(t *testing.T) {
	l := theTowns(t)
	slowest := time.Duration(0)
	for typed, want := range map[string]string{
		"manchester uk": "Manchester, England", "manchester, united kingdom": "Manchester, England", "M\u00fcnchen": "Munich, Bavaria", "koln": "K\u00f6ln, North Rhine-Westphalia",
		"seville": "Sevilla, Andalusia", "Lisboa": "Lisbon, Lisbon", "Firenze": "Florence, Tuscany", "la coru\u00f1a": "A Coru\u00f1a, Galicia", "san jose costa rica": "San Jos\u00e9, San Jos\u00e9",
		"springfield illinois": "Springfield, Illinois", "portland or": "Portland, Oregon", "Lewes, East Sussex, England": "Lewes, England", "bangalore": "Bengaluru, Karnataka",
		"\u6771\u4eac": "Tokyo, Tokyo", "\u041c\u043e\u0441\u043a\u0432\u0430": "Moscow, Moscow", "lucerne": "Luzern, Lucerne", "brugge": "Brugge, Flanders", "Kobenhavn": "Copenhagen, Capital Region",
		"m": "", "s": "", "san": "",
	} {
		start := time.Now()
		found := l.Search(typed, 8)
		slowest = max(slowest, time.Since(start))
		if len(found) == 0 {
			t.Errorf("%q finds nothing", typed)
			continue
		}
		if town := l.Town(found[0].Town); want != "" && town.Name+", "+town.Region != want {
			t.Errorf("%q finds %s, %s, want %s", typed, town.Name, town.Region, want)
		}
	}
	t.Logf("slowest search %v", slowest)
}

func BenchmarkTowns_Search(b *testing.B) {
	l := theTowns(b)
	for b.Loop() {
		l.Search("san", 8)
	}
}

func BenchmarkTowns_Similar(b *testing.B) {
	l := theTowns(b)
	for b.Loop() {
		l.Similar("Manchestre", 8)
	}
}
