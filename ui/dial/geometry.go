// Package dial is the geometry of the 24-hour dial and of the turns that move
// its grips. It draws nothing: it computes the attributes of the figure.
package dial

import (
	"math"
	"strconv"
)

// The figure's frame, in its own units: one is a CSS pixel at a width of 360.
const (
	Width, Height = 360, 348
	cx, cy        = 180.0, 174.0

	hubR    = 44.0  // rim of the centre: no usable water
	poolR   = 93.0  // the most that the day or the tank shows
	drawR   = 106.0 // track of the uses
	priceR  = 121.0 // inner edge of the price ring
	windowR = 128.0 // inner edge of staves in the backup hours
	staveR  = 133.0 // inner edge of the others
	rimR    = 156.0 // outer edge of all
	outageR = 159.0 // arc of the hours without grid
	petalR  = 16.0  // height of the tallest petal
)

// DayMinutes is a full turn.
const DayMinutes = 1440

// angle of a minute of the day: midnight at the top, clockwise, rad.
func angle(minute float64) float64 { return minute / DayMinutes * 2 * math.Pi }

// at is the point of a minute at a radius.
func at(minute, r float64) (x, y float64) {
	sin, cos := math.Sincos(angle(minute))
	return cx + r*sin, cy - r*cos
}

// MinuteAt is the inverse of at: the minute in whose direction a point of the
// figure lies, 0 to 1440, and its distance from the centre.
func MinuteAt(x, y float64) (minute, r float64) {
	dx, dy := x-cx, cy-y
	minute = math.Atan2(dx, dy) / (2 * math.Pi) * DayMinutes
	if minute < 0 {
		minute += DayMinutes
	}
	return minute, math.Hypot(dx, dy)
}

// OnRim tells whether a distance from the centre is that of the staves.
func OnRim(r float64) bool { return r >= windowR && r <= rimR+petalR }

// InHub tells whether it is that of the middle.
func InHub(r float64) bool { return r < hubR }

// InPool tells whether it is that of the pool.
func InPool(r float64) bool { return r >= hubR && r <= poolR }

// path builds the d attribute of an SVG path with a tenth of a pixel.
type path []byte

func (p *path) cmd(c byte, v ...float64) {
	*p = append(*p, c)
	for i, x := range v {
		if i > 0 {
			*p = append(*p, ' ')
		}
		*p = appendTenths(*p, x)
	}
}

func appendTenths(b []byte, x float64) []byte {
	n := int64(math.Round(x * 10))
	if n < 0 {
		b = append(b, '-')
		n = -n
	}
	b = strconv.AppendInt(b, n/10, 10)
	if n%10 != 0 {
		b = append(b, '.', byte('0'+n%10))
	}
	return b
}

// sector adds a closed piece of a ring from one minute to a later one.
func (p *path) sector(from, to, inner, outer float64) {
	if to-from >= DayMinutes {
		p.sector(from, from+DayMinutes/2, inner, outer)
		p.sector(from+DayMinutes/2, from+DayMinutes, inner, outer)
		return
	}
	large := 0.0
	if to-from > DayMinutes/2 {
		large = 1
	}
	x, y := at(from, inner)
	p.cmd('M', x, y)
	x, y = at(from, outer)
	p.cmd('L', x, y)
	x, y = at(to, outer)
	p.cmd('A', outer, outer, 0, large, 1, x, y)
	x, y = at(to, inner)
	p.cmd('L', x, y)
	x, y = at(from, inner)
	p.cmd('A', inner, inner, 0, large, 0, x, y)
	p.cmd('Z')
}

// circle adds a full circle.
func (p *path) circle(r float64) {
	p.cmd('M', cx, cy-r)
	p.cmd('A', r, r, 0, 1, 1, cx, cy+r)
	p.cmd('A', r, r, 0, 1, 1, cx, cy-r)
	p.cmd('Z')
}
