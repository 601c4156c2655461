// Package curve is the data of the charts,
// as plain numbers. Package chart describes how they look.
package curve

import "math"

// Point is one point of a curve.
type Point struct{ X, Y float64 }

// MaxPoints is how many points of a curve are drawn.
const MaxPoints = 60

// Thin drops the points that change a curve least until most are left: those
// whose triangle with their neighbours is smallest, in a frame of spanX by spanY.
// It works in place; ends and steps that matter stay.
func Thin(p []Point, most int, spanX, spanY float64) []Point {
	area := func(a, b, c Point) float64 {
		return math.Abs((b.X-a.X)*(c.Y-a.Y)-(c.X-a.X)*(b.Y-a.Y)) / (spanX * spanY)
	}
	for len(p) > most {
		best, least := 1, math.Inf(1)
		for i := 1; i < len(p)-1; i++ {
			if a := area(p[i-1], p[i], p[i+1]); a < least {
				best, least = i, a
			}
		}
		p = append(p[:best], p[best+1:]...)
	}
	return p
}
