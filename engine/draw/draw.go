// Package draw says when a household uses hot water, how much and how warm.
package draw

import (
	"math"
	"sort"
)

const minutesADay = 1440

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
	On     Occasion // of a household's day; of a standard day always the first
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

// Occasion is one of the times of day at which a household uses hot water.
type Occasion uint8

const (
	MorningShowers Occasion = iota
	EveningShowers
	MorningHands  // and face
	MiddayDishes  // washing up
	EveningDishes // washing up
	NightHands    // and face
	Occasions
)

// Household is a day built from habits. The small uses are assumptions of ours.
type Household struct {
	People        int     // 1 to 12
	ShowerMinutes float64 // each person, once a day
	ShowerFlow    float64 // L/min
	ShowerC       float64 // use temperature
	When          When
	At            [Occasions]int // minutes after midnight, 0 to 1439; of showers the first
}

// pause is the time between two showers, minutes.
const pause = 5

// Day returns the household's uses in order of time: a shower each, hands
// and face (2 L at 38 degC) for each morning and evening, and washing up (8 L at
// 50 degC and 3 L for each person) after the midday and evening meal. What runs past
// midnight is of the morning after, which is the same.
func (h Household) Day() []Use {
	var uses []Use
	after := [2]float64{} // the first shower of the morning, of the evening
	for person := range h.People {
		on := MorningShowers
		if h.When == Evenings || h.When == Both && person%2 == 1 {
			on = EveningShowers
		}
		u := Use{Minute: math.Mod(float64(h.At[on])+after[on], minutesADay), Litres: h.ShowerMinutes * h.ShowerFlow, TempC: h.ShowerC, Flow: h.ShowerFlow, On: on}
		uses = append(uses, u)
		after[on] += u.Minutes() + pause
	}
	n := float64(h.People)
	for _, u := range [...]Use{
		{On: MorningHands, Litres: 2 * n, TempC: 38, Flow: 4},
		{On: MiddayDishes, Litres: 8, TempC: 50, Flow: 5, Kind: Kitchen},
		{On: EveningDishes, Litres: 8 + 3*n, TempC: 50, Flow: 5, Kind: Kitchen},
		{On: NightHands, Litres: 2 * n, TempC: 38, Flow: 4},
	} {
		u.Minute = float64(h.At[u.On])
		uses = append(uses, u)
	}
	sort.SliceStable(uses, func(i, j int) bool { return uses[i].Minute < uses[j].Minute })
	return uses
}
