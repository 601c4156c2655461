package lesson

// coldSpring is cold water of 15 degC in every month.
const coldSpring = "&cold=150.150.150.150.150.150.150.150.150.150.150.150"

var experiments = [...]Experiment{
	{Name: "power", House: "v=1&modules=0&backup=1500-1800", Asks: BoughtDay, Scale: Scale{0, 24, 0.5}, Rounds: []Round{
		{Fields: "element=300&backup=1600-1800", Traps: []Trap{{8, 24}, {0, 4.5}}},
		{Fields: "element=100&backup=1200-1800", Traps: []Trap{{0, 3.5}}},
		{Fields: "element=300&backup=all1500", Traps: []Trap{{20, 24}}},
	}},
	{Name: "tap", House: "v=1&pipe=0&set=60&suncap=60&modules=0&lower=0&backup=all1500" + coldSpring, Asks: ShowerHotL, Scale: Scale{0, 48, 0.5}, Rounds: []Round{
		{Traps: []Trap{{31, 33}, {23, 25}, {45, 48}}},
		{Fields: "cold=50.50.50.50.50.50.50.50.50.50.50.50", Traps: []Trap{{0, 26.5}}},
		{Fields: "set=75&suncap=75", Traps: []Trap{{27, 48}}},
	}},
	{Name: "layers", House: "v=1", Asks: ReadyL, At: 9 * 60, Scale: Scale{0, 400, 10}, Rounds: []Round{
		{Traps: []Trap{{0, 30}, {180, 400}}},
		{At: 12 * 60, Traps: []Trap{{0, 100}}},
		{Fields: "stands=lying", Traps: []Trap{{60, 400}}},
	}},
	{Name: "leak", House: "v=1&people=1&modules=0&backup=all1500", Asks: LostYear, Scale: Scale{0, 4000, 50}, Rounds: []Round{
		{Fields: "people=6", Traps: []Trap{{1500, 4000}}},
		{Fields: "people=3&jacket=jacket", Traps: []Trap{{600, 4000}}},
	}},
	{Name: "wash", House: "v=1&backup=0330-0630", Asks: BoughtYear, Scale: Scale{0, 2000, 50}, Rounds: []Round{
		{Fields: "backup=0600-0900", Traps: []Trap{{550, 680}, {0, 549}}},
		{Fields: "backup=0400-0700", Traps: []Trap{{550, 680}}},
		{Fields: "backup=1600-1900", Traps: []Trap{{1000, 2000}}},
	}},
	{Name: "afternoon", House: "v=1", Asks: StartCost, Scale: Scale{0, 400, 10}, Tracks: every(0, 3, 8), Rounds: []Round{
		{Shapes: []Shape{flat(40), lowestAt(3, 4), lowestAt(0, 1, 7)}},
		{Fields: "wash=evening", Shapes: []Shape{lowestAt(3, 4)}},
	}},
	{Name: "cooling", House: "v=1&modules=0&backup=all1500&away=aug&awaydays=60", Asks: CoolingC, Scale: Scale{0, 60, 1}, Tracks: given(every(1, 2, 6)), Rounds: []Round{
		{Shapes: []Shape{below(20), even(1)}},
		{Fields: "jacket=jacket", Shapes: []Shape{below(20), even(1)}},
	}},
	{Name: "roof", House: "v=1", Asks: MonthSun, Scale: Scale{0, 320, 10}, Tracks: every(0, 2, 6), Rounds: []Round{
		{Fields: "tilt=90", Shapes: []Shape{higherAt(2, 0)}},
		{Fields: "tilt=0", Shapes: []Shape{higherAt(0, 3)}},
	}},
	{Name: "worth", House: "v=1", Asks: WorthMoney, Scale: Scale{0, 20000, 250}, Rounds: []Round{
		{Traps: []Trap{{12000, 20000}, {0, 2000}}},
		{Fields: "discount=0"},
		{Fields: "discount=80"},
	}},
	{Name: "straight", House: "v=1&element=900&couple=direct", Asks: ElementPower, At: 1000, Scale: Scale{0, 1200, 10}, Rounds: []Round{
		{At: 500, Traps: []Trap{{480, 580}}},
		{At: 250, Traps: []Trap{{100, 300}}},
		{Fields: "element=200", At: 500, Traps: []Trap{{0, 300}}},
	}},
	{Name: "cable", House: "v=1&cable=50&mm2=10", Asks: CablePower, Scale: Scale{0, 600, 5}, Rounds: []Round{
		{Fields: "mm2=1.5", Traps: []Trap{{115, 130}, {30, 60}, {500, 600}}},
		{Fields: "mm2=1.5&cable=25", Traps: []Trap{{200, 300}}},
	}},
}

// every are so many tracks from one on, each a step further.
func every(from, step float64, n int) (list []Track) {
	for i := range n {
		list = append(list, Track{X: from + step*float64(i)})
	}
	return list
}

// given are tracks of which the first is shown.
func given(list []Track) []Track {
	list[0].Given = true
	return list
}
