// Package skyline is the geometry of the picture of the horizon: azimuth across,
// elevation up, the sun's paths and what stands before them.
package skyline

import (
	"math"
	"strconv"
	"strings"

	"suncask/engine/scenario"
)

// The picture's frame in its own units: a degree of azimuth is one, a degree of
// elevation MoreUp.
const (
	Left, Top     = 28.0, 6.0
	Width, Height = 396, 150
	MoreUp        = 1.4
	bottom        = Top + 90*MoreUp
)

// Columns is how many azimuths a drawn horizon has, from north clockwise.
const Columns = 36

const columnDeg = 360 / Columns

// Drawn is the elevation of each column, whole degrees.
type Drawn [Columns]int

// Of returns the columns of a horizon in the form of scenario.Scenario.Skyline.
func Of(text string) (d Drawn) {
	const rad = math.Pi / 180
	h := scenario.SkylineOf(text)
	for i := range d {
		d[i] = int(math.Round(h.Elevation(float64(i*columnDeg)*rad) / rad))
	}
	return d
}

// Text returns the columns as a horizon, those left out that lie on the line between
// the ones kept beside them.
func (d *Drawn) Text() string {
	if *d == (Drawn{}) {
		return ""
	}
	var list []scenario.HorizonPoint
	for i, e := range d {
		before, after := d[(i+Columns-1)%Columns], d[(i+1)%Columns]
		if e-before != after-e {
			list = append(list, scenario.HorizonPoint{AzimuthDeg: i * columnDeg, ElevationDeg: e})
		}
	}
	if len(list) == 0 { // the same height all round
		list = append(list, scenario.HorizonPoint{ElevationDeg: d[0]})
	}
	return scenario.WriteHorizon(list)
}

// Raise draws from one point of the picture to another: every column passed gets the
// elevation there.
func (d *Drawn) Raise(south bool, x0, y0, x1, y1 float64) {
	c0, c1 := column(x0), column(x1)
	step := 1
	if c1 < c0 {
		step = -1
	}
	for c := c0; ; c += step {
		y := y1
		if c1 != c0 {
			y = y0 + (y1-y0)*float64(c-c0)/float64(c1-c0)
		}
		e := math.Round((bottom - y) / MoreUp)
		d[at(c, south)] = int(math.Max(0, math.Min(scenario.MostElevation, e)))
		if c == c1 {
			return
		}
	}
}

// column is the picture's column at x, counted from its left.
func column(x float64) int {
	c := int(math.Round((x - Left) / columnDeg))
	return max(0, min(Columns, c))
}

// at is the azimuth's index of the picture's column. The middle of the picture is
// where the sun stands at noon: south, or north if south of the equator.
func at(c int, south bool) int {
	if south {
		c += Columns / 2
	}
	return c % Columns
}

// X is where an azimuth lies, degrees.
func X(azimuthDeg float64, south bool) float64 {
	if south {
		azimuthDeg += 180
	}
	return Left + math.Mod(azimuthDeg+360, 360)
}

// Y is where an elevation lies, degrees.
func Y(elevationDeg float64) float64 { return bottom - elevationDeg*MoreUp }

// Land is the path of what hides the sun.
func (d *Drawn) Land(south bool) string {
	var b strings.Builder
	point(&b, 'M', Left, bottom)
	for c := 0; c <= Columns; c++ {
		point(&b, 'L', Left+float64(c*columnDeg), Y(float64(d[at(c, south)])))
	}
	point(&b, 'L', Left+360, bottom)
	b.WriteByte('Z')
	return b.String()
}

// SunPath is the sun's way over a day of that declination, rad.
func SunPath(latitude, declination float64, south bool) string {
	var b strings.Builder
	sinL, cosL := math.Sincos(latitude)
	sinD, cosD := math.Sincos(declination)
	cmd, last := byte('M'), 0.0
	for w := -180.0; w <= 180; w += 3 {
		sinW, cosW := math.Sincos(w * math.Pi / 180)
		up := sinL*sinD + cosL*cosD*cosW
		if up < 0 {
			cmd = 'M'
			continue
		}
		azimuth := math.Atan2(-cosD*sinW, cosL*sinD-sinL*cosD*cosW) * 180 / math.Pi
		x := X(azimuth, south)
		if cmd == 'L' && math.Abs(x-last) > 180 { // round the picture's edge
			cmd = 'M'
		}
		point(&b, cmd, x, Y(math.Asin(math.Min(1, up))*180/math.Pi))
		cmd, last = 'L', x
	}
	return b.String()
}

func point(b *strings.Builder, cmd byte, x, y float64) {
	b.WriteByte(cmd)
	b.WriteString(strconv.FormatFloat(x, 'f', 1, 64))
	b.WriteByte(' ')
	b.WriteString(strconv.FormatFloat(y, 'f', 1, 64))
}
