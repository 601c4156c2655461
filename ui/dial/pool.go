package dial

import "math"

func ring(r float64) string {
	var p path
	p.circle(r)
	return string(p)
}

// poolRadius is linear in litres from the rim of the centre.
func poolRadius(litres, scale float64) float64 {
	return hubR + (poolR-hubR)*math.Max(0, litres)/scale
}

// Rings are the numbers of showers that get a ring: two or three that fit the
// tank, evenly spaced.
func Rings(showerL, fullL float64) []int {
	if showerL <= 0 {
		return nil
	}
	n := int(fullL / showerL)
	if n < 1 {
		return nil
	}
	step := (n + 2) / 3
	var list []int
	for k := step; k <= n && len(list) < 3; k += step {
		list = append(list, k)
	}
	return list
}

// polar is a curve over the day as a closed or open line about the centre.
func polar(samples []Sample, scale float64, closed bool) string {
	var p path
	last := -1.0
	for i, s := range samples {
		x, y := at(s.Minute, poolRadius(s.Litres, scale))
		if i == 0 {
			p.cmd('M', x, y)
		} else {
			// Long gaps would cut the corner: follow the circle in steps.
			for m := last + 30; m < s.Minute-15; m += 30 {
				share := (m - last) / (s.Minute - last)
				mx, my := at(m, poolRadius(samples[i-1].Litres+share*(s.Litres-samples[i-1].Litres), scale))
				p.cmd('L', mx, my)
			}
			p.cmd('L', x, y)
		}
		last = s.Minute
	}
	if closed && len(samples) > 0 {
		p.cmd('Z')
	}
	return string(p)
}
