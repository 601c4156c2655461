package curve

import "math"

// Data is what changes of a chart: the ends of its vertical axes and its curves.
type Data struct {
	Axes   []Axis
	Across Axis // ends of the horizontal axes; 0 to 0: as described
	Series [][]Point
}

// Axis is what a vertical axis reaches.
type Axis struct{ Min, Max float64 }

// Append writes the data as numbers for the page's script: how many axes, their
// ends, those of the horizontal ones, then for each series its length and its points.
func (d *Data) Append(out []float64) []float64 {
	out = append(out, float64(len(d.Axes)))
	for _, a := range d.Axes {
		out = append(out, a.Min, a.Max)
	}
	out = append(out, d.Across.Min, d.Across.Max)
	for _, list := range d.Series {
		out = append(out, float64(len(list)))
		for _, p := range list {
			out = append(out, p.X, p.Y)
		}
	}
	return out
}

// Clear empties the series and keeps their room; there are n of them, and axes
// for the given number of grids.
func (d *Data) Clear(axes, n int) {
	if len(d.Series) != n || len(d.Axes) != axes {
		d.Axes, d.Series = make([]Axis, axes), make([][]Point, n)
	}
	for i := range d.Series {
		d.Series[i] = d.Series[i][:0]
	}
	d.Across = Axis{}
}

// Nice returns the next round number at or above v: 1, 1.2, 1.5, 2, 2.5, 3, 3.5, 4, 5, 6, 7,
// 8 times a power of ten.
func Nice(v float64) float64 {
	if v <= 0 {
		return 1
	}
	power := int(math.Floor(math.Log10(v)))
	for _, k := range [...]float64{1, 1.2, 1.5, 2, 2.5, 3, 3.5, 4, 5, 6, 7, 8, 10} {
		// Three tenths are 30/100: 3 times 0.1 would be a hair more, and written so.
		round := 10 * k * math.Pow10(power-1)
		if power < 1 {
			round = 10 * k / math.Pow10(1-power)
		}
		if round >= v*(1-1e-12) {
			return round
		}
	}
	return v
}

// Ticks are round numbers in even steps, some so many and never fewer than two, from at or below
// the least value to at or above the most.
func Ticks(least, most float64, steps int) (list []float64) {
	step := Nice(math.Max(most-least, 1) / float64(steps))
	from, to := step*math.Floor(least/step), step*math.Ceil(most/step)
	if to <= from {
		to = from + step
	}
	for i := 0; from+float64(i)*step <= to+step/2; i++ {
		list = append(list, from+float64(i)*step)
	}
	return list
}
