package dial

import (
	"math"
	"strconv"
)

// Input is what the figure shows, in plain numbers. Minutes are of the local day.
type Input struct {
	Windows        []Window    // backup hours: one or two
	Rise, Set      float64     // where day staves meet night staves
	SunW           [24]float64 // mean power that could reach the element
	FullSunW       float64     // the power of the tallest petal
	Prices         []Band      // of the whole day, in order
	OutFrom, OutTo int         // hours without grid, minutes; equal: none
	Uses           []Mark
	Drops          int      // see the function Drops
	Pool           []Sample // usable litres over the day
	Before         []Sample // the same when the gesture began; empty otherwise
	FullL          float64  // tank full
	ShowerL        float64  // litres of one shower, for the rings
	BeforeEdges    []int    // the grips' minutes when the gesture began; empty otherwise
	HeldGrip       int      // 0 start, 1 end, 2 and 3 of the second window, -1 none
	Ghost          int      // minute of an edge that a second tap would set, -1 none
	Ahead          []Place  // of the held grip, evenly over the day; empty until known
	Best           int      // index of the best of them, -1 none
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
	Drop           int // see Drops
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

// Drops groups uses, which come in order of time: by their own Drop, of which there are
// fixed, or if that is 0 whatever follows within an hour.
func Drops(uses []Mark, fixed int) []Drop {
	list := make([]Drop, fixed)
	for _, u := range uses {
		i := u.Drop
		if fixed == 0 {
			i = len(list) - 1
			if i < 0 || u.Minute-list[i].Last > groupMinutes {
				list = append(list, Drop{})
				i++
			}
		}
		d := &list[i]
		if d.Count == 0 || u.Minute < d.First {
			d.First = u.Minute
		}
		d.Last = math.Max(d.Last, u.Minute)
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

// outage is an arc outside the staves over the hours without grid.
func (in *Input) outage() string {
	if in.OutFrom == in.OutTo {
		return ""
	}
	var p path
	from := float64(in.OutFrom)
	p.sector(from, from+float64(Length(in.OutFrom, in.OutTo, false)), outageR, outageR+4)
	return string(p)
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
	set("outage", "d", in.outage())
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

// drops are the marks of the uses: filled when all ran warm, barred when any ran
// cool, with a count.
func (in *Input) drops(list []Attr) []Attr {
	for i, d := range Drops(in.Uses, in.Drops) {
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
			Attr{id + "-hit", "cx", string(appendTenths(nil, x))}, Attr{id + "-hit", "cy", string(appendTenths(nil, y))},
			Attr{id + "-count", "x", string(appendTenths(nil, x))},
			Attr{id + "-count", "y", string(appendTenths(nil, y+4.5))},
			Attr{id + "-count", "", count}, Attr{id + "-count", "class", class + " count"})
	}
	return list
}

// HourAt is where an hour's numeral stands.
func HourAt(hour int) (x, y string) {
	px, py := at(float64(hour)*60, (staveR+rimR)/2)
	return string(appendTenths(nil, px)), string(appendTenths(nil, py+4.5))
}
