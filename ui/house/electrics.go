package house

import (
	"suncask/engine/pv"
	"suncask/engine/simulate"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/parts"
	"suncask/ui/words"
)

// Electrics shows the strings' curve and what becomes of their potential.
type Electrics struct{ Page *page.Page }

// sheet is what becomes of the potential: kWh a year, share.
func (c *Electrics) sheet() *parts.Sheet {
	s, t := c.Page.Store, c.Page.T
	q, f := &s.Prepared.Potential, &s.Results.Year.Total
	sh := &parts.Sheet{ID: "potential", Caption: t(words.PotentialName), Head: []string{t(words.WorthFigure), t(words.PotentialKWh), "%"}}
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
		sh.Rows = append(sh.Rows, parts.SheetRow{Cells: []any{t(part.name), parts.Number(part.joules/simulate.JPerKWh, 0), parts.Number(share, 0)}})
	}
	sh.AddUp(1, 1) // the first row is their sum
	sh.AddUp(2, 1)
	return sh
}

// title says what of the strings' power in full sun reaches the element.
func (c *Electrics) title() string {
	s := c.Page.Store
	p, _ := s.Prepared.Working(pv.StandardWm2, pv.StandardC)
	if p.MaximumW == 0 {
		return c.Page.T(words.IVName)
	}
	return c.Page.View.Words.Text(words.IVFull, format.Number(p.ElementW, 0), format.Number(p.MaximumW, 0))
}
