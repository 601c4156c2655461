// Package pv turns light and heat on photovoltaic modules into power in a
// resistive heating element.
package pv

// StandardWm2 and StandardC are the standard test conditions of module ratings
// (IEC 60904-3).
const (
	StandardWm2 = 1000.0
	StandardC   = 25.0
)

// Losses are the parts of the light that come to something, each 0 to 1.
type Losses struct {
	Soiling, Shade, Mismatch, Connections float64
	FirstLight                            float64 // what light-induced degradation leaves
	Plate                                 float64 // of modules under their plate
	Running                               float64 // of the time
	Age                                   float64
}

// Factor is the product of the parts.
func (l Losses) Factor() float64 {
	return l.Soiling * l.Shade * l.Mismatch * l.Connections * l.FirstLight * l.Plate * l.Running * l.Age
}

// Ohms returns an element's resistance from its rating plate: R = U2/P.
func Ohms(ratedW, ratedV float64) float64 { return ratedV * ratedV / ratedW }

// OhmsRange is what an element's resistance may be within its plate's tolerance.
func OhmsRange(ratedW, ratedV float64) (least, most float64) {
	ohms := Ohms(ratedW, ratedV)
	return ohms / (1 + PlateUp), ohms / (1 - PlateDown)
}

// Tolerance of an element's rated power: 5 % up (or 20 W, if that is more), 10 % down
// (IEC 60335-1 clause 10, heating appliances above 200 W; from memory).
const (
	PlateUp   = 0.05
	PlateDown = 0.10
)
