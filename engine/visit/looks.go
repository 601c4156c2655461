package visit

import (
	"math"

	"suncask/engine/care"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/engine/tank"
)

// Look is something that a question's meters show where all is as it should be, or as one of its
// answers says; Least and Most are NaN where only its value says something.
type Look struct {
	Kind               LookKind
	Value, Least, Most float64
}

// LookKind is what a Look is of.
type LookKind int8

// Kinds of looks.
const (
	LookOpen       LookKind = iota // V, strings open
	LookShort                      // A, strings shorted
	LookRunV                       // V at most power
	LookRunA                       // A at most power
	LookWindow                     // V, the converter's
	LookBears                      // V, that it bears
	LookOhms                       // ohm, the element
	LookHalf                       // ohm, less than which it is shorted
	LookLoop3                      // ohm, one of three loops open
	LookLoop2                      // ohm, one of two open
	LookSheath                     // megohm
	LookCable                      // ohm, there and back
	LookDrop                       // V that it takes
	LookContact                    // V across a closed contact
	LookAcross                     // V across an open one
	LookAcrossGrid                 // V, the same on the grid
	LookWaits                      // kWh a year of sun that waits for the grid
	LookLimit                      // degC
	LookRise                       // K an hour
	LookPushed                     // L
	LookGridA                      // A
	LookModule                     // V, open strings with one module less
	LookThird                      // V, with a third of one less
	LookKinds
)

const (
	closedV = 0.2 // across a closed contact at most (common practice, no source)
)

// Looks are what a question's meters should show at a house whose strings are in the given light;
// those that hang on it are left out where it is not known. waitsJ is how much sun waited for the
// grid in a year.
func (c *Commission) Looks(n Node, waitsJ float64) (list []Look) {
	p, s, none := c.House, &c.House.Scenario, math.NaN()
	ohms := p.ElementOhms()
	one := func(k LookKind, v float64) { list = append(list, Look{k, v, none, none}) }
	lit := c.Lit && c.strings > 0
	of := func(k LookKind, q Quantity) {
		if lit {
			least, most := Limits(q, c.Expected.Of(q), c.Bands[q])
			list = append(list, Look{k, c.Expected.Of(q), least, most})
		}
	}
	switch n {
	case RoofVolts, Polarity, EarthFault:
		of(LookOpen, OpenVolts)
	case InWindow:
		of(LookOpen, OpenVolts)
		of(LookRunV, MostVolts)
		list = append(list, Look{LookWindow, none, s.ConverterLowV, s.ConverterHighV})
		one(LookBears, s.ConverterMaxV)
	case ConverterWorks:
		of(LookRunV, MostVolts)
		of(LookRunA, MostAmps)
	case ContactorWorks:
		one(LookContact, closedV)
		of(LookAcross, OpenVolts)
	case StatOpen:
		one(LookContact, closedV)
		of(LookAcross, OpenVolts)
		one(LookAcrossGrid, s.SupplyV)
	case ElementWhole:
		least, most := ColdOhms(s.ElementW, s.ElementV)
		list = append(list, Look{LookOhms, ohms, least, most})
	case ElementShort:
		one(LookHalf, ohms/2)
		of(LookShort, ShortAmps)
	case LoopMissing:
		if n := s.ElementLoops; n != 2 {
			one(LookLoop3, LoopOpenOhms(ohms, 3))
		}
		if n := s.ElementLoops; n != 3 {
			one(LookLoop2, LoopOpenOhms(ohms, 2))
		}
	case ElementLeaks:
		one(LookSheath, sheathMegohm)
	case LooseJoint:
		one(LookCable, p.CableOhms())
		if lit {
			amps := c.Expected.ElementA
			if s.Coupling == scenario.Converter { // the cable lies before it
				amps = c.Expected.MostA
			}
			one(LookDrop, p.CableOhms()*amps)
		}
	case StringMissing:
		if lit {
			v, in := c.Expected.OpenV, float64(p.Wiring().InString)
			one(LookModule, v*(1-1/in))
			one(LookThird, v*(1-1/(3*in)))
		}
	case TooLittle:
		one(LookWaits, waitsJ/simulate.JPerKWh)
	case TooHot:
		one(LookLimit, care.HottestC(s)+dialK)
		w := p.Wiring()
		one(LookRise, math.Max(p.BackupW(), w.FullW)*3600/(s.TankLitres*tank.HeatCapacity))
	case ReliefRuns:
		litres, _, _ := Pushed(p)
		one(LookPushed, litres)
	case WhatTrips:
		one(LookGridA, care.GridA(s))
	}
	return list
}

// LoopOpenOhms is an element's resistance, ohm, with one of its equal loops side by side open; of one
// loop alone it is infinite.
func LoopOpenOhms(ohms float64, loops int) float64 {
	return ohms * float64(loops) / float64(loops-1)
}
