package band

import (
	"testing"

	"suncask/engine/simulate"
)

// A day by hand: nothing to 9:00, sun to 12:00, the grid to 13:00, hot enough to 15:00, nothing.
func TestOf_Worked(t *testing.T) {
	trace := []simulate.Point{{Minute: 0}, {Minute: 540}, {Minute: 720, SunJ: 5e6}, {Minute: 720, SunJ: 5e6}, {Minute: 780, SunJ: 5e6, BoughtJ: 3e6},
		{Minute: 840, SunJ: 5e6, BoughtJ: 3e6}, {Minute: 900, SunJ: 5e6, BoughtJ: 3e6}, {Minute: 1440, SunJ: 5e6, BoughtJ: 3e6}}
	list := Of(trace, func(m float64) bool { return m > 720 && m < 900 })
	want := []Stretch{{0, 540, Nobody}, {540, 720, Sun}, {720, 780, Grid}, {780, 900, HotEnough}, {900, 1440, Nobody}}
	if len(list) != len(want) {
		t.Fatalf("%v", list)
	}
	for i := range want {
		if list[i] != want[i] {
			t.Errorf("%v, want %v", list[i], want[i])
		}
	}
	if got := Path(list, Grid); got != "M720 0H780V12H720z" {
		t.Errorf("the grid's path is %s", got)
	}
	if m, ok := Word(list, Sun); m != 630 || !ok {
		t.Errorf("the sun's word stands at %g, %v", m, ok)
	}
	if _, ok := Word(list, Grid); ok {
		t.Error("a word in an hour")
	}
}
