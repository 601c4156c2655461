package plan

import (
	"iter"

	"suncask/engine/simulate"
)

// Length is what a year comes to under a window so long.
type Length struct {
	Hours, Cost float64
	CoolUses    float64
}

// LengthCount is how many there are.
const LengthCount = Places/2 + 1

// Lengths simulates windows about the middle of the present one, none to all day, half an
// hour apart.
func Lengths(p *simulate.Prepared) iter.Seq[Length] {
	return func(yield func(Length) bool) {
		b := p.Scenario.Backup
		from, to, _ := p.Hours(b, equinox)
		middle := int((from+to)/2/StepMinutes) % Places
		g := NewGrid(p, b.Second)
		for steps := 0; steps <= Places; steps += 2 {
			o, _ := g.At(Window{middle - steps/2, steps})
			if !yield(Length{float64(steps*StepMinutes) / 60, o.Cost, float64(o.CoolUses)}) {
				return
			}
		}
	}
}
