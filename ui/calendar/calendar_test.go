package calendar

import (
	"strings"
	"testing"

	"suncask/engine/simulate"
)

// Each day has its place, and a tap in its middle finds it.
func TestDayAt_Property(t *testing.T) {
	for day := range 365 {
		x, y := corner(day)
		if got, ok := DayAt(float64(x)+4, float64(y)+7); !ok || got != day {
			t.Fatalf("day %d: found %d, %v", day, got, ok)
		}
	}
	for _, p := range [][2]float64{{0, 40}, {Left + 30*CellWide + 4, Top + CellHigh + 7}, {100, 2}, {100, Height + 5}} {
		if day, ok := DayAt(p[0], p[1]); ok {
			t.Errorf("%v is day %d", p, day)
		}
	}
}

func TestBoughtAndCool_Count(t *testing.T) {
	y := new(simulate.Year)
	for day, bought := range map[int]float64{3: 8, 4: 2, 5: 2.1, 200: 6, 201: 0.01} {
		y.Day[day].BoughtJ = bought
	}
	y.Day[200].CoolUses, y.Day[300].CoolUses = 2, 1
	paths, cool := Bought(y), Cool(y)
	for level, want := range []int{360, 2, 1, 1, 1} {
		if got := strings.Count(paths[level], "M"); got != want {
			t.Errorf("level %d: %d days, want %d", level, got, want)
		}
	}
	if strings.Count(cool, "M") != 2 {
		t.Errorf("strokes %s", cool)
	}
	none := new(simulate.Year)
	if paths, cool := Bought(none), Cool(none); strings.Count(paths[0], "M") != 365 || cool != "" {
		t.Error("a year of nothing")
	}
}
