package tank

import "math"

type house struct {
	name            string
	litres, ua      float64
	zone            float64
	low, high       float64
	sensor          float64
	backupW, setC   float64
	from, to        int // backup hours
	sunW, sunLimitC float64
	draws           []brew
	upper           float64 // height of an element of its own for the backup; 0: the same
	both            bool    // the two work at once
	ahead           float64 // litres of a tank ahead, which the sun heats
}

type brew struct{ minute, litres, tempC, flow float64 }

var morning = []brew{{420, 40, 40, 8}, {432, 40, 40, 8}, {450, 6, 40, 6}, {470, 5, 55, 4}, {730, 6, 40, 6}, {1120, 10, 55, 4}, {1260, 6, 40, 6}, {1350, 40, 40, 8}}
var evening = []brew{{410, 5, 40, 5}, {750, 10, 55, 4}, {1080, 50, 40, 8}, {1100, 50, 40, 8}, {1130, 50, 40, 8}, {1160, 8, 55, 4}, {1300, 6, 40, 6}, {1390, 4, 40, 4}}

func houses() []house {
	return []house{
		{"afternoon window, morning wash", 200, 1.6, 0, 0.08, 0.08, 0.08, 2000, 60, 15, 18, 1800, 75, morning, 0, false, 0},
		{"night window, evening wash", 150, 1.3, 0, 0.10, 0.10, 0.10, 3000, 55, 23, 4, 1200, 70, evening, 0, false, 0},
		{"all day, small sun", 120, 1.2, 0, 0.06, 0.06, 0.06, 1500, 60, 0, 24, 600, 75, evening, 0, false, 0},
		{"inlet zone", 200, 1.6, 30, 0.08, 0.08, 0.08, 2000, 60, 16, 18, 1800, 75, morning, 0, false, 0},
		{"long element", 200, 1.6, 0, 0.05, 0.45, 0.25, 2000, 60, 15, 17, 1800, 75, morning, 0, false, 0},
		{"short of heat", 150, 2.4, 0, 0.30, 0.30, 0.30, 1000, 60, 12, 13, 700, 75, evening, 0, false, 0},
		{"upper element for the backup", 250, 1.8, 0, 0.08, 0.08, 0.08, 2000, 60, 16, 20, 1800, 75, morning, 0.6, false, 0},
		{"upper and lower at once", 250, 1.8, 0, 0.08, 0.08, 0.08, 2000, 60, 9, 17, 1800, 75, morning, 0.6, true, 0},
		{"upper and lower at once, mixing inlet", 200, 1.8, 15, 0.08, 0.08, 0.08, 1500, 55, 0, 24, 1200, 70, evening, 0.5, true, 0},
		{"long lower, upper at once", 250, 1.8, 0, 0.08, 0.40, 0.08, 2000, 60, 9, 17, 1800, 75, morning, 0.6, true, 0},
		{"sun tank ahead", 150, 1.4, 0, 0.08, 0.08, 0.08, 2000, 60, 15, 20, 1800, 75, evening, 0, false, 150},
		{"sun tank ahead, mixing inlets", 120, 1.4, 6, 0.08, 0.08, 0.08, 2000, 55, 5, 8, 1800, 80, morning, 0, false, 150},
		{"lying, mixing inlet", 200, 1.7, 55, 0.29, 0.29, 0.29, 2000, 60, 15, 18, 1800, 75, evening, 0, false, 0},
		{"lying, mixing over the element", 200, 1.7, 100, 0.29, 0.29, 0.29, 2000, 60, 15, 18, 1800, 75, evening, 0, false, 0},
	}
}

func (h house) inWindow(hour int) bool {
	if h.from <= h.to {
		return hour >= h.from && hour < h.to
	}
	return hour >= h.from || hour < h.to
}

// sun is an invented day: a half sine from 7 to 17 h times a daily factor.
func (h house) sun(day, hour int, rng []float64) float64 {
	return h.sunW * rng[day] * math.Max(0, math.Sin(math.Pi*(float64(hour)+0.5-7)/10))
}

const testDays, coldIn, roomAt = 30, 12.0, 19.0
