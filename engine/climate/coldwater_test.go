package climate

import (
	"math"
	"testing"

	"suncask/engine/published"
)

func meanOf(year [Days]float64) (mean float64) {
	for _, v := range year {
		mean += v / Days
	}
	return mean
}

// Yearly means of mains against published ones.
func TestColdWater_PublishedMeans(t *testing.T) {
	var b struct {
		Rows []struct {
			Place, Source string
			Mean, Within  float64
		}
		Madrid [12]float64 `json:"madrid_months"`
	}
	published.Block(t, "water.json", "mains", &b)
	if len(b.Rows) != 5 {
		t.Fatalf("%d rows", len(b.Rows))
	}
	for _, r := range b.Rows {
		p, ok := PlaceBySlug(r.Place)
		if !ok {
			t.Fatal(r.Place)
		}
		if got := meanOf(p.coldYear()); math.Abs(got-r.Mean) > r.Within {
			t.Errorf("%s: %.2f degC, %s has %.1f", r.Place, got, r.Source, r.Mean)
		}
	}
	p, _ := PlaceBySlug("madrid")
	year := p.coldYear()
	for m, got := range MonthMeans(&year) {
		if math.Abs(got-b.Madrid[m]) > 0.1 { // the place is 7 m lower
			t.Errorf("Madrid, month %d: %.2f degC, CTE DB-HE %g", m+1, got, b.Madrid[m])
		}
	}
}

// The offset of Burch & Christensen acts where its data are from, and nowhere else: there
// the mean is 6 degF over the air's, elsewhere the air's.
func TestColdWater_OffsetInNorthAmericaOnly(t *testing.T) {
	for slug, over := range map[string]float64{
		"toronto": 6 / 1.8, "denver": 6 / 1.8, "miami": 6 / 1.8,
		"honolulu": 0, "san-juan-pr": 0, "lisbon": 0, "cape-town": 0, "santiago": 0, "delhi": 0,
	} {
		p, ok := PlaceBySlug(slug)
		if !ok {
			t.Errorf("no %s", slug)
			continue
		}
		air := 0.0
		for m, c := range p.TempC {
			air += c * float64(DaysIn[m]) / Days
		}
		if got := meanOf(p.coldYear()) - air; math.Abs(got-over) > 0.1 {
			t.Errorf("%s: mains %.2f K over the air, want %.2f", slug, got, over)
		}
	}
	// A point has the model of the nearest place.
	if a, b := Point(48.4, -123.4, 20), Point(38.8, -9.2, 50); a.Water != NorthAmerica || b.Water != AirMean {
		t.Errorf("models %d and %d", a.Water, b.Water)
	}
}
