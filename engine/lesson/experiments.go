package lesson

// coldSpring is cold water of 15 degC in every month.
const coldSpring = "&cold=150.150.150.150.150.150.150.150.150.150.150.150"

var experiments = [...]Experiment{
	{"power", "v=1&modules=0&backup=1500-1800", BoughtDay, 0, Scale{0, 24, 0.5}, []Round{
		{"element=300&backup=1600-1800", 0, []Trap{{8, 24}, {0, 4.5}}},
		{"element=100&backup=1200-1800", 0, []Trap{{0, 3.5}}},
		{"element=300&backup=all1500", 0, []Trap{{20, 24}}},
	}},
	{"tap", "v=1&pipe=0&set=60&suncap=60&modules=0&lower=0&backup=all1500" + coldSpring, ShowerHotL, 0, Scale{0, 48, 0.5}, []Round{
		{"", 0, []Trap{{31, 33}, {23, 25}, {45, 48}}},
		{"cold=50.50.50.50.50.50.50.50.50.50.50.50", 0, []Trap{{0, 26.5}}},
		{"set=75&suncap=75", 0, []Trap{{27, 48}}},
	}},
	{"layers", "v=1", ReadyL, 9 * 60, Scale{0, 400, 10}, []Round{
		{"", 0, []Trap{{0, 30}, {180, 400}}},
		{"", 12 * 60, []Trap{{0, 100}}},
		{"stands=lying", 0, []Trap{{60, 400}}},
	}},
	{"leak", "v=1&people=1&modules=0&backup=all1500", LostYear, 0, Scale{0, 4000, 50}, []Round{
		{"people=6", 0, []Trap{{1500, 4000}}},
		{"people=3&jacket=jacket", 0, []Trap{{600, 4000}}},
	}},
	{"wash", "v=1&backup=0330-0630", BoughtYear, 0, Scale{0, 2000, 50}, []Round{
		{"backup=0600-0900", 0, []Trap{{550, 680}, {0, 549}}},
		{"backup=0400-0700", 0, []Trap{{550, 680}}},
		{"backup=1600-1900", 0, []Trap{{1000, 2000}}},
	}},
	{"worth", "v=1", WorthMoney, 0, Scale{0, 20000, 250}, []Round{
		{"", 0, []Trap{{12000, 20000}, {0, 2000}}},
		{"discount=0", 0, nil},
		{"discount=80", 0, nil},
	}},
	{"straight", "v=1&element=900&couple=direct", ElementPower, 1000, Scale{0, 1200, 10}, []Round{
		{"", 500, []Trap{{480, 580}}},
		{"", 250, []Trap{{100, 300}}},
		{"element=200", 500, []Trap{{0, 300}}},
	}},
	{"cable", "v=1&cable=50&mm2=10", CablePower, 0, Scale{0, 600, 5}, []Round{
		{"mm2=1.5", 0, []Trap{{115, 130}, {30, 60}, {500, 600}}},
		{"mm2=1.5&cable=25", 0, []Trap{{200, 300}}},
	}},
}
