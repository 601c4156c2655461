package dial

import (
	"fmt"
	"strconv"
)

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
