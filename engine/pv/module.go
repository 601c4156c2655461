package pv

import "math"

// Constants of the translation: Boltzmann's over the elementary charge, V/K (CODATA
// 2018, exact), the band gap of silicon at 25 degC, eV, and its relative change, 1/K
// (De Soto, Klein & Beckman 2006).
const (
	boltzmannV    = 1.380649e-23 / 1.602176634e-19
	bandGapEV     = 1.121
	bandGapPerK   = -0.0002677
	standardK     = StandardC + 273.15
	celsiusOffset = 273.15
)

// Module is a module's single-diode model at standard test conditions.
type Module struct {
	Diode
	LightPerK float64 // change of the light's current with cell temperature, A/K
}

// At returns the model under an irradiance that reaches the cells (W/m2) and a cell
// temperature (degC). De Soto, Klein & Beckman 2006.
func (m *Module) At(irradiance, cellC float64) Diode {
	t := cellC + celsiusOffset
	share := irradiance / StandardWm2
	gap := bandGapEV * (1 + bandGapPerK*(cellC-StandardC))
	ratio := t / standardK
	return Diode{
		LightA:      math.Max(0, share*(m.LightA+m.LightPerK*(cellC-StandardC))),
		SaturationA: m.SaturationA * ratio * ratio * ratio * math.Exp((bandGapEV/standardK-gap/t)/boltzmannV),
		SeriesOhm:   m.SeriesOhm,
		ShuntOhm:    m.ShuntOhm / share,
		ThermalV:    m.ThermalV * ratio,
	}
}
