package curve

import (
	"encoding/json"
	"math"
	"testing"
)

func TestThin_KeepsShape(t *testing.T) {
	var p []Point
	for i := range 200 {
		y := 100.0
		if i >= 80 {
			y = 40
		}
		p = append(p, Point{float64(i), y + 0.001*math.Sin(float64(i))})
	}
	got := Thin(p, MaxPoints, 200, 100)
	if len(got) != MaxPoints || got[0].X != 0 || got[len(got)-1].X != 199 {
		t.Fatalf("%d points from %v to %v", len(got), got[0], got[len(got)-1])
	}
	found := 0
	for _, q := range got {
		if q.X == 79 || q.X == 80 {
			found++
		}
	}
	if found != 2 {
		t.Errorf("the step at 80 lost %d of its two points", 2-found)
	}
}

func TestNice_Property(t *testing.T) {
	for v := 1e-4; v < 1e6; v *= 1.07 {
		if n := Nice(v); n < v*(1-1e-9) || n > 2.01*v {
			t.Errorf("Nice(%g) = %g", v, n)
		}
	}
}

func TestStripOptions_JSON(t *testing.T) {
	var o struct {
		Animation *bool
		Grid      []any
		Series    []struct{ Type string }
	}
	if err := json.Unmarshal([]byte(StripOptions(Light)), &o); err != nil {
		t.Fatal(err)
	}
	if o.Animation == nil || *o.Animation || len(o.Grid) != 2 || len(o.Series) != int(seriesCount) {
		t.Errorf("%+v", o)
	}
	for i, s := range o.Series {
		if s.Type != "line" {
			t.Errorf("series %d: %+v", i, s)
		}
	}
}

func TestAppend_Layout(t *testing.T) {
	var s Strip
	s.MaxWater, s.MaxFee = 300, 2
	s.Series[Water] = []Point{{0, 1}, {24, 2}}
	got := s.Append(nil)
	if len(got) != 2+int(seriesCount)+4 || got[2] != 2 || got[5] != 24 || got[6] != 2 {
		t.Errorf("%v", got)
	}
}
