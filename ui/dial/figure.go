package dial

import (
	"fmt"
	"math"
	"strconv"
)

// Input is what the figure shows, in plain numbers. Minutes are of the local day.
type Input struct {
	Windows     []Window    // backup hours: one or two
	Rise, Set   float64     // where day staves meet night staves
	SunW        [24]float64 // mean power that could reach the element
	FullSunW    float64     // the power of the tallest petal
	Prices      []Band      // of the whole day, in order
	Uses        []Mark
	Pool        []Sample // usable litres over the day
	Before      []Sample // the same when the gesture began; empty otherwise
	FullL       float64  // tank full
	ShowerL     float64  // litres of one shower, for the rings
	BeforeEdges []int    // the grips' minutes when the gesture began; empty otherwise
	HeldGrip    int      // 0 start, 1 end, 2 and 3 of the second window, -1 none
	Ghost       int      // minute of an edge that a second tap would set, -1 none
	Ahead       []Place  // of the held grip, evenly over the day; empty until known
	Best        int      // index of the best of them, -1 none
}

// Place is what one place of the held grip would give: its cost between the
// cheapest (0) and the dearest (1), and whether it brings more cool days.
type Place struct {
	Cost   float64
	Breaks bool
}

// Band is a span of one price, relative to the highest: 0 to 1.
type Band struct{ From, To, Height float64 }

// Mark is a use.
type Mark struct {
	Minute, Litres float64
	Cool           bool
}

// Sample is a point of a curve over the day.
type Sample struct{ Minute, Litres float64 }

// Attr is one attribute of one element of the figure. An empty name is its text.
type Attr struct{ ID, Name, Value string }

// Drop is one mark of the track of uses: uses within an hour of each other.
type Drop struct {
	First, Last float64 // minutes
	Litres      float64
	Count       int
	Cool        int // how many ran cool
}

// groupMinutes joins uses that follow each other within this.
const groupMinutes = 60

// Drops groups uses, which come in order of time.
func Drops(uses []Mark) []Drop {
	var list []Drop
	for _, u := range uses {
		n := len(list)
		if n == 0 || u.Minute-list[n-1].Last > groupMinutes {
			list = append(list, Drop{First: u.Minute})
			n++
		}
		d := &list[n-1]
		d.Last = u.Minute
		d.Litres += u.Litres
		d.Count++
		if u.Cool {
			d.Cool++
		}
	}
	return list
}

// scaleL is the litres at poolR: nothing is clipped.
func (in *Input) scaleL() float64 {
	most := math.Max(in.FullL, 1)
	for _, list := range [2][]Sample{in.Pool, in.Before} {
		for _, s := range list {
			most = math.Max(most, s.Litres)
		}
	}
	return most
}

// Figure appends the attributes of everything that can change, in a fixed order
// of elements.
func (in *Input) Figure(list []Attr) []Attr {
	set := func(id, name, value string) { list = append(list, Attr{id, name, value}) }
	set("staves-night", "d", in.staves(false))
	set("staves-day", "d", in.staves(true))
	for i := range 2 {
		d := ""
		if i < len(in.Windows) {
			d = windowStaves(in.Windows[i])
		}
		set("window-staves-"+strconv.Itoa(i), "d", d)
	}
	set("petals", "d", in.petals())
	set("price-ring", "d", in.prices())
	scale := in.scaleL()
	set("pool-full", "d", ring(poolRadius(in.FullL, scale)))
	rings := Rings(in.ShowerL, in.FullL)
	var showers path
	for _, n := range rings {
		showers.circle(poolRadius(float64(n)*in.ShowerL, scale))
	}
	set("pool-rings", "d", string(showers))
	for i := range 3 {
		id := "pool-ring-" + strconv.Itoa(i)
		text, y := "", cy
		if i < len(rings) {
			text = strconv.Itoa(rings[i])
			y = cy - poolRadius(float64(rings[i])*in.ShowerL, scale) + 4
		}
		set(id, "y", string(appendTenths(nil, y)))
		set(id, "", text)
	}
	set("pool", "d", polar(in.Pool, scale, true))
	set("pool-before", "d", polar(in.Before, scale, false))
	places, bars, best := in.ahead()
	set("ahead", "d", places)
	set("ahead-bars", "d", bars)
	set("ahead-best", "d", best)
	list = in.drops(list)
	return in.grips(list)
}

// staves are 24 pieces of the rim, by day or by night; a piece is day when its
// middle is.
func (in *Input) staves(day bool) string {
	var p path
	for h := range 24 {
		middle := float64(h)*60 + 30
		light := math.Mod(middle-in.Rise+2*DayMinutes, DayMinutes) < in.Set-in.Rise
		if light == day {
			p.sector(float64(h)*60+1.2, float64(h+1)*60-1.2, staveR, rimR)
		}
	}
	return string(p)
}

// windowStaves are the backup hours' staves, cut at full hours.
func windowStaves(w Window) string {
	var p path
	start := float64(w.Start)
	length := float64(w.Length())
	for from := start; from < start+length; {
		to := math.Min(math.Floor(from/60+1)*60, start+length)
		a, b := from, to
		if a != start || length == DayMinutes {
			a += 1.2
		}
		if b != start+length || length == DayMinutes {
			b -= 1.2
		}
		p.sector(a, b, windowR, rimR)
		from = to
	}
	return string(p)
}

// Length of a window in minutes.
func Length(start, end int, allDay bool) int {
	if allDay {
		return DayMinutes
	}
	return (end - start + DayMinutes) % DayMinutes
}

// ahead is the look-ahead rim: along the outer edge of the staves the thickness
// is the yearly cost with the held grip there, bars stand where a use more would
// run cool, and a notch is cut at the best place.
func (in *Input) ahead() (places, bars, best string) {
	if len(in.Ahead) == 0 {
		return "", "", ""
	}
	var p, b, n path
	step := float64(DayMinutes) / float64(len(in.Ahead))
	for i, place := range in.Ahead {
		minute := float64(i) * step
		depth := 1.5 + 7*place.Cost
		p.sector(minute-step/2+0.7, minute+step/2-0.7, rimR-depth, rimR)
		if place.Breaks {
			x, y := at(minute-step/2, rimR-11)
			b.cmd('M', x, y)
			x, y = at(minute+step/2, rimR-1)
			b.cmd('L', x, y)
		}
	}
	if in.Best >= 0 {
		minute := float64(in.Best) * step
		x, y := at(minute, rimR-12)
		n.cmd('M', x, y)
		x, y = at(minute-9, rimR+5)
		n.cmd('L', x, y)
		x, y = at(minute+9, rimR+5)
		n.cmd('L', x, y)
		n.cmd('Z')
	}
	return string(p), string(b), string(n)
}

// petals are rounded leaves outside the rim, one for each hour with sun power.
func (in *Input) petals() string {
	var p path
	for h, w := range in.SunW {
		if w <= 0 || in.FullSunW <= 0 {
			continue
		}
		height := 2 + (petalR-2)*math.Min(1, w/in.FullSunW)
		base, top := rimR+1.5, rimR+1.5+height
		from, to := float64(h)*60+8, float64(h)*60+52
		x, y := at(from, base)
		p.cmd('M', x, y)
		x1, y1 := at(from-4, top)
		x2, y2 := at(from+10, top)
		x, y = at(float64(h)*60+30, top)
		p.cmd('C', x1, y1, x2, y2, x, y)
		x1, y1 = at(to-10, top)
		x2, y2 = at(to+4, top)
		x, y = at(to, base)
		p.cmd('C', x1, y1, x2, y2, x, y)
		x, y = at(from, base)
		p.cmd('A', base, base, 0, 0, 0, x, y)
		p.cmd('Z')
	}
	return string(p)
}

// prices is a ring whose thickness is the price: 1.5 to 5 pixels.
func (in *Input) prices() string {
	var p path
	for _, b := range in.Prices {
		p.sector(b.From, b.To, priceR, priceR+1.5+3.5*b.Height)
	}
	return string(p)
}

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

// drops are the marks of the uses: filled when all ran warm, barred when any ran
// cool, with a count.
func (in *Input) drops(list []Attr) []Attr {
	for i, d := range Drops(in.Uses) {
		id := "drop-" + strconv.Itoa(i)
		x, y := at((d.First+d.Last)/2, drawR)
		size := 6 + math.Min(6, math.Sqrt(d.Litres)*0.5)
		var p path
		p.cmd('M', x, y-1.5*size)
		p.cmd('C', x+0.4*size, y-0.8*size, x+size, y-0.3*size, x+size, y+0.2*size)
		p.cmd('A', size, size, 0, 0, 1, x-size, y+0.2*size)
		p.cmd('C', x-size, y-0.3*size, x-0.4*size, y-0.8*size, x, y-1.5*size)
		p.cmd('Z')
		class, bar := "drop", path(nil)
		if d.Cool > 0 {
			class = "drop cool"
			bar.cmd('M', x-size-1, y+size)
			bar.cmd('L', x+size+1, y-size)
		}
		count := ""
		if d.Count > 1 {
			count = strconv.Itoa(d.Count)
		}
		list = append(list,
			Attr{id, "d", string(p)}, Attr{id, "class", class},
			Attr{id + "-bar", "d", string(bar)},
			Attr{id + "-count", "x", string(appendTenths(nil, x))},
			Attr{id + "-count", "y", string(appendTenths(nil, y+4.5))},
			Attr{id + "-count", "", count}, Attr{id + "-count", "class", class + " count"})
	}
	return list
}

// leanBelow is the room outside the window under which grips lean inward.
const leanBelow = 90

// grips are bookends. Each leans away from its window; with little room outside
// it, inward.
func (in *Input) grips(list []Attr) []Attr {
	for g := range 2 * len(in.Windows) {
		w := in.Windows[g/2]
		minute, side := w.Edge(Part(g%2)), 1.0
		if g%2 == 0 {
			side = -1
		}
		if length := w.Length(); DayMinutes-length < leanBelow && length > 0 {
			side = -side
		}
		id := "grip-" + strconv.Itoa(g)
		before := ""
		if g < len(in.BeforeEdges) {
			before = line(float64(in.BeforeEdges[g]), hubR, windowR)
		}
		list = append(list,
			Attr{id, "transform", turn(float64(minute))},
			Attr{id + "-body", "d", bookend(side)},
			Attr{id + "-hit", "cx", string(appendTenths(nil, cx+side*13))},
			Attr{id, "aria-valuenow", strconv.Itoa(minute)},
			Attr{id, "class", held("grip", in.HeldGrip == g)},
			Attr{id + "-before", "d", before}, Attr{id + "-line", "d", line(float64(minute), hubR, windowR)})
	}
	ghost := ""
	if in.Ghost >= 0 {
		ghost = line(float64(in.Ghost), windowR, rimR+petalR)
	}
	list = append(list, Attr{"grip-ghost", "d", ghost})
	for i := range 8 {
		list = append(list, Attr{"hour-" + strconv.Itoa(i*3), "class", "hour" + in.covered(i*180)})
	}
	return list
}

func held(class string, yes bool) string {
	if yes {
		return class + " held"
	}
	return class
}

// covered says whether a numeral stands on a window's staves or under a grip.
func (in *Input) covered(minute int) (class string) {
	for _, w := range in.Windows {
		if length := w.Length(); (minute-w.Start+DayMinutes)%DayMinutes < length {
			class = " inside"
		}
	}
	for _, w := range in.Windows {
		for part := StartGrip; part <= EndGrip; part++ {
			off := (minute-w.Edge(part)+DayMinutes+DayMinutes/2)%DayMinutes - DayMinutes/2 // minutes after the edge
			if part == StartGrip {
				off = -off
			}
			if off > -20 && off < 55 {
				return class + " faded"
			}
		}
	}
	return class
}

func turn(minute float64) string {
	return fmt.Sprintf("rotate(%s %s %s)", appendTenths(nil, minute/4), appendTenths(nil, cx), appendTenths(nil, cy))
}

// bookend is a grip's body at midnight: its flat face on the edge, its rounded
// back to one side.
func bookend(side float64) string {
	var p path
	outer, inner := cy-rimR-9, cy-windowR+11
	x := func(v float64) float64 { return cx + side*v }
	sweep := 1.0
	if side < 0 {
		sweep = 0
	}
	p.cmd('M', x(0.5), outer)
	p.cmd('L', x(19), outer+4)
	p.cmd('A', 6, 6, 0, 0, sweep, x(24), outer+11)
	p.cmd('L', x(17), inner-6)
	p.cmd('A', 6, 6, 0, 0, sweep, x(11), inner)
	p.cmd('L', x(0.5), inner)
	p.cmd('Z')
	for _, v := range [2]float64{7, 12} {
		p.cmd('M', x(v), outer+12)
		p.cmd('L', x(v-1.5), inner-9)
	}
	return string(p)
}

func line(minute, from, to float64) string {
	var p path
	x, y := at(minute, from)
	p.cmd('M', x, y)
	x, y = at(minute, to)
	p.cmd('L', x, y)
	return string(p)
}

// HourAt is where an hour's numeral stands.
func HourAt(hour int) (x, y string) {
	px, py := at(float64(hour)*60, (staveR+rimR)/2)
	return string(appendTenths(nil, px)), string(appendTenths(nil, py+4.5))
}
