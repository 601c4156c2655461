package ui

import (
	"suncask/engine/care"
	"suncask/engine/simulate"
	"suncask/ui/format"
	"suncask/ui/words"
)

// Electrics shows the strings' curve and what becomes of their potential.
type Electrics struct{ Page *Page }

// parts are the rows of the potential: name, kWh a year, share.
func (c *Electrics) parts() (rows [][3]string) {
	s := c.Page.Store
	q, f := &s.Prepared.Potential, &s.Results.Year.Total
	for _, part := range []struct {
		name   words.Key
		joules float64
	}{
		{words.PotentialAll, q.MaximumJ}, {words.PotentialCoupling, q.CouplingJ}, {words.PotentialCable, q.CableJ},
		{words.PotentialConverter, q.ConverterJ}, {words.PotentialOver, q.OverJ}, {words.PotentialDisplaced, f.DisplacedJ},
		{words.PotentialFull, f.UnusedSunJ - f.DisplacedJ}, {words.PotentialWater, f.SunJ},
	} {
		share := 0.0
		if q.MaximumJ > 0 {
			share = 100 * part.joules / q.MaximumJ
		}
		rows = append(rows, [3]string{c.Page.T(part.name), format.Number(part.joules/simulate.JPerKWh, 0) + format.Space + "kWh",
			format.Number(share, 0) + format.Space + "%"})
	}
	return rows
}

// severity is the class of a finding.
func severity(f care.Finding) string {
	switch f.Severity {
	case care.Stop:
		return "finding stop"
	case care.Note:
		return "finding remark"
	}
	return "finding"
}
