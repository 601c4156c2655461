// Package draw says when a household uses hot water, how much and how warm.
package draw

import "sort"

// Kind of a use: people notice cool water on the body first.
type Kind uint8

const (
	Body    Kind = iota // shower, bath, washing hands: use temperature up to 45 degC
	Kitchen             // washing up and the like
)

// bodyMaxC is the warmest use temperature that counts as a body use.
const bodyMaxC = 45.0

// Use is one draw-off at a tap.
type Use struct {
	Minute float64 // start, minutes after local midnight, 0 to 1440
	Litres float64 // mixed water at the tap
	TempC  float64 // wanted at the tap
	Flow   float64 // L/min
	Kind   Kind
}

// Minutes is how long the use takes.
func (u Use) Minutes() float64 { return u.Litres / u.Flow }

// Profile names a standard day.
type Profile uint8

const (
	Habits Profile = iota // built from the household's own habits
	S                     // 2.100 kWh a day
	M                     // 5.845 kWh a day
	L                     // 11.655 kWh a day
)

// profileInletC and profileHeat are the standard's cold water and J/(L K).
const (
	profileInletC = 10.0
	profileHeat   = 4180.0
)

// Standard returns the uses of a standard day. The use temperature is the peak
// where the table prints one, else T_m; litres are those at the standard's 10
// degC inlet, Q/(4.18 (T - 10)).
func Standard(p Profile) []Use {
	table := map[Profile][]row{S: profileS, M: profileM, L: profileL}[p]
	uses := make([]Use, len(table))
	for i, r := range table {
		temp := r.countC
		if r.peakC > 0 {
			temp = r.peakC
		}
		uses[i] = Use{
			Minute: float64(r.minute), TempC: temp, Flow: r.flow,
			Litres: r.kWh * 3.6e6 / (profileHeat * (temp - profileInletC)),
		}
		if temp > bodyMaxC {
			uses[i].Kind = Kitchen
		}
	}
	return uses
}

// When the household showers.
type When uint8

const (
	Mornings When = iota
	Evenings
	Both // every other person in the evening
)

// Household is a day built from habits. The hours and the small uses are
// assumptions of ours.
type Household struct {
	People        int     // 1 to 12
	ShowerMinutes float64 // each person, once a day
	ShowerFlow    float64 // L/min
	ShowerC       float64 // use temperature
	When          When
}

const (
	firstMorning, firstEvening = 6*60 + 30, 19 * 60 // of the first shower
	pause                      = 5                  // minutes between two showers
)

// Day returns the household's uses in order of time: a shower each, hands
// and face (2 L at 38 degC) for each morning and evening, and washing up (8 L at
// 50 degC and 3 L for each person) after the midday and evening meal.
func (h Household) Day() []Use {
	var uses []Use
	at := [2]float64{firstMorning, firstEvening}
	for person := range h.People {
		part := 0
		if h.When == Evenings || h.When == Both && person%2 == 1 {
			part = 1
		}
		u := Use{Minute: at[part], Litres: h.ShowerMinutes * h.ShowerFlow, TempC: h.ShowerC, Flow: h.ShowerFlow}
		uses = append(uses, u)
		at[part] += u.Minutes() + pause
	}
	n := float64(h.People)
	uses = append(uses,
		Use{Minute: 7*60 + 40, Litres: 2 * n, TempC: 38, Flow: 4},
		Use{Minute: 13*60 + 15, Litres: 8, TempC: 50, Flow: 5, Kind: Kitchen},
		Use{Minute: 20*60 + 15, Litres: 8 + 3*n, TempC: 50, Flow: 5, Kind: Kitchen},
		Use{Minute: 22*60 + 15, Litres: 2 * n, TempC: 38, Flow: 4},
	)
	sort.SliceStable(uses, func(i, j int) bool { return uses[i].Minute < uses[j].Minute })
	return uses
}
