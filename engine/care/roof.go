package care

import (
	"math"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// A plane that stands steeper than flatDeg and is turned by more than turnedDeg from the
// sun's side, beyond east and west by 30 degrees, is asked about. Nearer the equator than
// flatDeg there is no such side.
const (
	flatDeg   = 10.0
	turnedDeg = 120.0
)

// soiledPct is the share of the light above which dirt hides what modules can give (common
// practice, no source).
const soiledPct = 10.0

func (l *findings) roof(p *simulate.Prepared) {
	if s := &p.Scenario; s.SoilPct > soiledPct && s.AllModules() > 0 {
		l.find(Soiled, Note, scenario.SoilPct, "common practice, no source", s.SoilPct, soiledPct)
	}
	lat := p.Weather.Place.LatDeg
	if math.Abs(lat) < flatDeg {
		return
	}
	side := scenario.Equatorward(lat)
	for i, plane := range p.Scenario.Planes() {
		turned := math.Abs(math.Remainder(plane.AzimuthDeg-side, 360))
		if plane.Modules > 0 && plane.TiltDeg > flatDeg && turned > turnedDeg {
			field := scenario.AzimuthDeg
			if i > 0 {
				field = scenario.Face2 + scenario.FieldID(3*(i-1))
			}
			l.find(FacesPole, Caution, field, "position of the sun", float64(i+1), plane.AzimuthDeg, side)
		}
	}
}
