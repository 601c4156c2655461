package curve

import (
	"math"
	"strconv"
	"strings"
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

// A chart's data can become another chart's, in any order: no axis is missing, and none keeps its
// ends.
func TestClear_AnyOrder(t *testing.T) {
	var d Data
	for _, c := range [][2]int{{1, 3}, {2, 3}, {1, 2}, {2, 7}, {0, 1}, {2, 3}} {
		d.Clear(c[0], c[1])
		if len(d.Axes) != c[0] || len(d.Series) != c[1] || d.Across != (Axis{}) {
			t.Fatalf("%v: %d axes, %d series, across %v", c, len(d.Axes), len(d.Series), d.Across)
		}
		d.Across = Axis{0, 30}
	}
}

// A round number is written as one.
func TestNice_Short(t *testing.T) {
	for v := 1e-4; v < 1e6; v *= 1.03 {
		if text := strconv.FormatFloat(Nice(v), 'g', -1, 64); len(strings.Trim(text, "0.e+-")) > 6 {
			t.Errorf("Nice(%g) is written %s", v, text)
		}
	}
}

func TestNice_Property(t *testing.T) {
	for v := 1e-4; v < 1e6; v *= 1.07 {
		if n := Nice(v); n < v*(1-1e-9) || n > 2.01*v {
			t.Errorf("Nice(%g) = %g", v, n)
		}
	}
}

// Ticks hold their values between them, in even steps, and are not many.
func TestTicks_Property(t *testing.T) {
	for _, span := range [][2]float64{{0, 0}, {3, 3}, {-4, -2}, {-75, 300}, {0, 12345.6}, {163, 212}, {0, 1e-3}, {1e6, 1e6 + 2}} {
		list := Ticks(span[0], span[1], 4)
		if n := len(list); n < 2 || n > 8 || list[0] > span[0] || list[n-1] < span[1]-1e-9 {
			t.Errorf("%v: %v", span, list)
		}
		for i := 2; i < len(list); i++ {
			if a, b := list[i]-list[i-1], list[1]-list[0]; math.Abs(a-b) > 1e-9*math.Abs(b) {
				t.Errorf("%v: %v", span, list)
			}
		}
	}
}

func TestAppend_Layout(t *testing.T) {
	var d Data
	d.Clear(StripAxes, StripSeries)
	d.Axes[WaterAxis].Max, d.Axes[MoneyAxis].Max = 300, 2
	d.Series[Water] = []Point{{0, 1}, {24, 2}}
	got := d.Append(nil)
	if len(got) != 3+2*StripAxes+StripSeries+4 || got[0] != StripAxes || got[2] != 300 || got[4] != 2 || got[7] != 2 || got[10] != 24 || got[11] != 2 {
		t.Errorf("%v", got)
	}
	d.Clear(StripAxes, StripSeries)
	if len(d.Append(nil)) != 3+2*StripAxes+StripSeries {
		t.Error("Clear keeps points")
	}
}
