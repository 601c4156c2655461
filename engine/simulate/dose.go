package simulate

import (
	"math"

	"suncask/engine/tank"
)

// DecimalMinutes is how long water must stand at a temperature until one in ten
// legionella is left: D = 2 min at 60 degC, ten times less for 5.29 K (read in an
// online book on legionella), never below half a minute. Below 50 degC it is no
// measure: infinite.
func DecimalMinutes(tempC float64) float64 {
	if tempC < 50 {
		return math.Inf(1)
	}
	return math.Max(0.5, 2*math.Pow(10, (60-tempC)/5.29))
}

// mostDose is the largest power of ten that a dose counts.
const mostDose = 15.0

// dose follows the share of bacteria that have survived, from the cold inlet on, in cells
// that move up the tanks as water is drawn: plug flow, as the tank's. Water of one layer
// is mixed. Bacteria that grow are not in it.
type dose struct {
	cellL float64
	alive [][]float64 // shares by tank and cell, the sun's tank first, bottom to top
	carry float64     // litres drawn and not yet moved
	drawn float64     // litres since midnight at the last look
	worst float64     // largest share that was drawn
}

// doseCells are the cells of the tank at the tap.
const doseCells = 100

func newDose(p *Prepared) *dose {
	d := &dose{cellL: p.tankParams.Litres / doseCells}
	if p.twoTanks {
		d.alive = append(d.alive, make([]float64, max(1, int(math.Round(p.sunTankParams.Litres/d.cellL)))))
	}
	d.alive = append(d.alive, make([]float64, doseCells))
	for _, cells := range d.alive {
		for i := range cells {
			cells[i] = 1
		}
	}
	return d
}

// stand moves the water by what was drawn up to a point of the day and lets it stand for
// minutes.
func (d *dose) stand(tr *Trace, point int, minutes float64) {
	hotL := tr.Points[point].hotL
	if hotL < d.drawn {
		d.drawn = 0 // another day
	}
	d.carry += hotL - d.drawn
	d.drawn = hotL
	for ; d.carry >= d.cellL; d.carry -= d.cellL {
		d.worst = math.Max(d.worst, d.push())
	}
	last := len(d.alive) - 1
	kill(d.alive[last], tr.Layers(point), minutes)
	if last > 0 {
		kill(d.alive[0], tr.Ahead(point), minutes)
	}
}

// push lets a cell of cold water in and returns the share in the cell that leaves.
func (d *dose) push() (share float64) {
	share = 1
	for _, cells := range d.alive {
		leaves := cells[len(cells)-1]
		copy(cells[1:], cells)
		cells[0] = share
		share = leaves
	}
	return share
}

// kill mixes the cells of each layer and thins what lives in it out by a power of ten
// in every [DecimalMinutes].
func kill(cells []float64, layers []tank.Layer, minutes float64) {
	total := 0.0
	for _, l := range layers {
		total += l.Litres
	}
	from, height := 0, 0.0
	for _, l := range layers {
		height += l.Litres
		to := int(math.Round(height / total * float64(len(cells))))
		if to <= from {
			continue
		}
		mean := 0.0
		for _, s := range cells[from:to] {
			mean += s / float64(to-from)
		}
		mean *= Lethality(l.TempC, minutes)
		for i := from; i < to; i++ {
			cells[i] = mean
		}
		from = to
	}
}

// Lethality is the share that survives minutes at a temperature.
func Lethality(tempC, minutes float64) float64 {
	return math.Max(math.Pow(10, -mostDose), math.Pow(10, -minutes/DecimalMinutes(tempC)))
}

// least is the dose of the water drawn after the least of it.
func (d *dose) least() float64 {
	return math.Max(0, math.Min(mostDose, -math.Log10(math.Max(d.worst, 1e-300))))
}
