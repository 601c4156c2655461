package care

import (
	"math"
	"slices"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// Limits of a tank's pressure, over that of the air (all common practice, no source).
const (
	reliefVessel = 0.9 // of the relief valve's: up to there a vessel takes the water
	reliefCold   = 0.8 // of it: above, cold pressure alone may make the valve drip
	supplyHigh   = 5.0 // bar, above which many local rules ask for a reducer
	supplyLow    = 1.0 // bar, below which flows are small
	airBar       = 1.0 // taken for the air's own
)

const (
	sourceDensity = "Kell 1975, J. Chem. Eng. Data 20, p. 97: density of water at 1 atm (from memory)"
	sourceBoyle   = "Boyle's law; charge at the cold pressure, 0.9 of the relief valve's: common practice, no source"
	sourceSupply  = "common practice, no source; local rules decide"
)

// density of water at 1 atm, kg/m3, from 0 to 150 degC (Kell 1975, J. Chem. Eng. Data 20,
// p. 97, from memory).
func density(tempC float64) float64 {
	t := tempC
	return (999.83952 + t*(16.945176+t*(-7.9870401e-3+t*(-46.170461e-6+t*(105.56302e-9-t*280.54253e-12))))) / (1 + 16.879850e-3*t)
}

// Expansion is the share of a tank that heating pushes out, counted as hot water: rho_c/rho_h - 1,
// never below 0. That colder water than 4 degC shrinks at first, by 0.01 % at most, is left out.
func Expansion(coldC, hotC float64) float64 {
	return math.Max(0, density(coldC)/density(hotC)-1)
}

// VesselLitres is the least volume of an expansion vessel, charged to the cold pressure, that
// takes expandedL before its pressure passes 0.9 of the relief valve's, bar over the air's.
// Boyle's law, V (p_0 + 1) = (V - e)(p_e + 1):
//
//	V = e (p_e + 1)/(p_e - p_0),  p_e = 0.9 relief,  p_0 = supply
//
// ok is false where the cold pressure leaves no room: no vessel is enough.
func VesselLitres(expandedL, supplyBar, reliefBar float64) (litres float64, ok bool) {
	most := reliefVessel * reliefBar
	if most-supplyBar < 1e-9 {
		return 0, false
	}
	return expandedL * (most + airBar) / (most - supplyBar), true
}

// pressure are findings about what a heat-up pushes out, and the relief valve.
func (l *findings) pressure(p *simulate.Prepared) {
	s := &p.Scenario
	cold, hot := slices.Min(p.Weather.ColdC[:]), HottestC(s)
	expanded := Expansion(cold, hot) * p.Litres()
	l.find([...]Code{Expands, ExpandsVessel, ExpandsValve, ExpandsVent, ExpandsBack}[s.ExpandBy], Note, scenario.ExpandBy, sourceDensity, expanded, hot, cold)
	switch {
	case s.ReliefBar == scenario.Unknown && s.ExpandBy != scenario.ExpandVent: // an open vent needs none
		l.find(ReliefUnknown, Caution, scenario.ReliefBar, sourceSupply)
	case s.ExpandBy == scenario.ExpandUnknown:
		l.find(ReliefUnknown, Caution, scenario.ExpandBy, sourceSupply)
	}
	if s.ExpandBy == scenario.ExpandVessel {
		l.vessel(s, expanded)
	}
	if s.SupplyBar == scenario.Unknown {
		return
	}
	if s.ReliefBar != scenario.Unknown && s.SupplyBar > reliefCold*s.ReliefBar+1e-9 {
		l.find(SupplyNearRelief, Caution, scenario.SupplyBar, sourceSupply, s.SupplyBar, s.ReliefBar)
	}
	switch {
	case s.SupplyBar > supplyHigh:
		l.find(SupplyHigh, Note, scenario.SupplyBar, sourceSupply, s.SupplyBar, supplyHigh)
	case s.SupplyBar < supplyLow:
		l.find(SupplyLow, Note, scenario.SupplyBar, sourceSupply, s.SupplyBar, supplyLow)
	}
}

// vessel finds an expansion vessel that is too small. Where cold pressure leaves no room for one
// of any size, SupplyNearRelief says so.
func (l *findings) vessel(s *scenario.Scenario, expanded float64) {
	if s.ReliefBar == scenario.Unknown || s.SupplyBar == scenario.Unknown {
		l.find(VesselOpen, Note, scenario.VesselL, sourceBoyle)
		return
	}
	needs, ok := VesselLitres(expanded, s.SupplyBar, s.ReliefBar)
	switch {
	case !ok:
	case s.VesselL == scenario.Unknown:
		l.find(VesselNeeds, Note, scenario.VesselL, sourceBoyle, needs, s.SupplyBar, s.ReliefBar)
	case s.VesselL < needs:
		l.find(VesselSmall, Caution, scenario.VesselL, sourceBoyle, s.VesselL, needs, expanded)
	}
}
