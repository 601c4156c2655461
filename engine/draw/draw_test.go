package draw

import (
	"encoding/json"
	"fmt"
	"math"
	"math/rand/v2"
	"os"
	"testing"
)

type published struct {
	Daily map[string]float64 `json:"daily_kWh"`
	Rows  map[string][]struct {
		T       string
		Litres  float64 `json:"L_at_T10"`
		Seconds float64 `json:"duration_s"`
		Flow    float64 `json:"f_Lmin"`
	}
}

func TestStandard_EU812(t *testing.T) {
	raw, err := os.ReadFile("../../testdata/water.json")
	if err != nil {
		t.Fatal(err)
	}
	var all struct{ Profiles published }
	if err := json.Unmarshal(raw, &all); err != nil {
		t.Fatal(err)
	}
	for name, p := range map[string]Profile{"S": S, "M": M, "L": L} {
		uses, rows := Standard(p), all.Profiles.Rows[name]
		if len(uses) != len(rows) || len(uses) == 0 {
			t.Fatalf("profile %s: %d uses, table has %d", name, len(uses), len(rows))
		}
		heat := 0.0
		for i, u := range uses {
			heat += u.Litres * profileHeat * (u.TempC - profileInletC) / 3.6e6
			at := fmt.Sprintf("%02d:%02d", int(u.Minute)/60, int(u.Minute)%60)
			if at != rows[i].T || u.Flow != rows[i].Flow {
				t.Errorf("profile %s use %d: %s at %g L/min, table %s at %g", name, i, at, u.Flow, rows[i].T, rows[i].Flow)
			}
			if math.Abs(u.Litres-rows[i].Litres) > 1e-3 || math.Abs(u.Minutes()*60-rows[i].Seconds) > 1 {
				t.Errorf("profile %s use %d: %.4f L in %.1f s, table %.4f L in %.1f s", name, i, u.Litres, u.Minutes()*60, rows[i].Litres, rows[i].Seconds)
			}
			if (u.Kind == Kitchen) != (u.TempC > 45) {
				t.Errorf("profile %s use %d: kind %d at %g degC", name, i, u.Kind, u.TempC)
			}
		}
		if want := all.Profiles.Daily[name]; math.Abs(heat-want) > 1e-9 {
			t.Errorf("profile %s: %.12f kWh a day, published %.3f", name, heat, want)
		}
	}
}

// usual times of a household's day.
var usual = [Occasions]int{390, 1140, 460, 795, 1215, 1335}

// Whatever the times, a day has the same uses, in order, each at its occasion's time or, of
// showers, after it; what runs past midnight comes in the morning.
func TestDay_AnyTimes(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	for range 2000 {
		h := Household{People: 1 + r.IntN(12), ShowerMinutes: 6, ShowerFlow: 8, ShowerC: 40, When: When(r.IntN(3)), At: usual}
		want := map[Occasion]float64{}
		for _, u := range h.Day() {
			want[u.On] += u.Litres
		}
		for i := range h.At {
			h.At[i] = r.IntN(1440)
		}
		last, least := -1.0, map[Occasion]float64{}
		for _, u := range h.Day() {
			if u.Minute < last || u.Minute >= 1440 {
				t.Fatalf("%+v: use %+v after minute %g", h, u, last)
			}
			last = u.Minute
			want[u.On] -= u.Litres
			after := math.Mod(u.Minute-float64(h.At[u.On])+1440, 1440)
			if n, seen := least[u.On]; !seen || after < n {
				least[u.On] = after
			}
		}
		for on, after := range least {
			if after != 0 || math.Abs(want[on]) > 1e-9 {
				t.Errorf("%+v: occasion %d begins %g min late and misses %g L", h, on, after, want[on])
			}
		}
	}
}

func TestDay_Property(t *testing.T) {
	for people := 1; people <= 12; people++ {
		for _, when := range []When{Mornings, Evenings, Both} {
			h := Household{People: people, ShowerMinutes: 6, ShowerFlow: 8, ShowerC: 40, When: when, At: usual}
			last, showers, evening := -1.0, 0, 0
			for _, u := range h.Day() {
				if u.Minute < last || u.Minute < 0 || u.Minute >= 1440 || u.Litres <= 0 {
					t.Errorf("%+v: use %+v after minute %g", h, u, last)
				}
				last = u.Minute
				if u.Litres == 48 {
					showers++
					if u.Minute > 720 {
						evening++
					}
				}
			}
			want := map[When]int{Mornings: 0, Evenings: people, Both: people / 2}[when]
			if showers != people || evening != want {
				t.Errorf("%+v: %d showers, %d in the evening", h, showers, evening)
			}
		}
	}
}
