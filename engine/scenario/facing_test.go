package scenario

import "testing"

// What is assumed of the roof follows the hemisphere and the latitude, but in links of
// version 1, whose modules all face south at 35 degrees.
func TestSettle_FacesTheEquator(t *testing.T) {
	for link, want := range map[string][2]float64{ // facing, tilt
		"v=2&place=lisbon": {180, 40}, "v=2&place=oslo": {180, 45}, "v=2&place=quito": {0, 10}, "v=2&place=santiago": {0, 35},
		"v=2&place=-33.92,18.42,25": {0, 35}, "v=2&place=cape-town&face=90&tilt=20": {90, 20}, "v=2&place=1.35,103.8": {180, 10},
		"v=1&place=santiago": {180, 35}, "v=1&place=oslo": {180, 35}, "v=1&place=santiago&face=0": {0, 35},
	} {
		s, problems := Decode(link)
		if got := [2]float64{s.AzimuthDeg, s.TiltDeg}; got != want || len(problems) > 0 {
			t.Errorf("%s: %v, want %v; %v", link, got, want, problems)
		}
		if again, _ := Decode(Encode(&s)); again != s {
			t.Errorf("%s, written anew, is another house", link)
		}
	}
}
