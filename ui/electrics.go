package ui

import (
	"suncask/engine/simulate"
	"suncask/ui/words"
)

// Electrics shows the strings' curve and what becomes of their potential.
type Electrics struct{ Page *Page }

// sheet is what becomes of the potential: kWh a year, share.
func (c *Electrics) sheet() *sheet {
	s, t := c.Page.Store, c.Page.T
	q, f := &s.Prepared.Potential, &s.Results.Year.Total
	sh := &sheet{id: "potential", caption: t(words.PotentialName), head: []string{t(words.WorthFigure), t(words.PotentialKWh), "%"}}
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
		sh.rows = append(sh.rows, sheetRow{cells: []any{t(part.name), figure{part.joules / simulate.JPerKWh, 0}, figure{share, 0}}})
	}
	sh.addUp(1, 1) // the first row is their sum
	sh.addUp(2, 1)
	return sh
}
