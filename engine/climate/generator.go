package climate

import (
	"math"
	"math/rand/v2"
)

// Generator is a way to draw the daily clearness of a month from its mean.
type Generator uint8

const (
	Autoregressive Generator = iota // Bendt's distribution, drawn together, through an AR(1) normal variate (Graham, Hollands & Unny 1988)
	Markov                          // transition matrices (Aguiar, Collares-Pereira & Conde 1988)
)

// phi is the correlation of a day's normal variate with the day before, for all months and
// places: that which gives days the mean correlation about their month's mean of nine
// hourly files, 0.26 (testdata/clearness.json). Over all years it is 0.29 (Graham, Hollands
// & Unny 1988, from memory), which a month's own mean brings down to 0.20.
const phi = 0.36

// walk draws one day after the other. The same seed gives the same draws on every
// machine: only integers decide.
type walk struct {
	draws *rand.PCG
	how   Generator
	z     float64 // normal variate of the day before
	k     float64 // clearness of the day before
}

func newWalk(how Generator, seed uint64) *walk {
	w := &walk{draws: rand.NewPCG(seed, 0x5ca1ab1e), how: how}
	w.z = w.normal()
	w.k = 0.5
	return w
}

// uniform draws from the open interval 0 to 1, in steps of 2^-53.
func (w *walk) uniform() float64 { return (float64(w.draws.Uint64()>>11) + 0.5) / (1 << 53) }

// normal draws a standard normal variate by inversion.
func (w *walk) normal() float64 { return math.Sqrt2 * math.Erfinv(2*w.uniform()-1) }

// next draws a day's clearness in a month of that distribution. It takes the same
// number of draws whatever the month, so that a month never depends on another's
// light.
func (w *walk) next(c *Clearness, mean float64) float64 {
	if w.how == Markov {
		return w.step(mean)
	}
	return c.at(w.variate())
}

// variate moves the normal variate by a day.
func (w *walk) variate() float64 {
	w.z = phi*w.z + math.Sqrt(1-phi*phi)*w.normal()
	return w.z
}

// at is the clearness of a standard normal variate.
func (c *Clearness) at(z float64) float64 { return c.Quantile(math.Erfc(-z/math.Sqrt2) / 2) }

// step moves the chain of the month's class by a day and draws evenly within the
// new state.
func (w *walk) step(mean float64) float64 {
	u, within := w.uniform(), w.uniform()
	c := &chains[min(max(int(math.Ceil((mean-0.30)/0.05-1e-9)), 0), len(chains)-1)]
	width := (c.Max - c.Min) / float64(len(c.Chance))
	row := &c.Chance[min(max(int((w.k-c.Min)/width), 0), len(c.Chance)-1)]
	sum := 0.0
	for _, p := range row {
		sum += p
	}
	state, rest := 0, u*sum
	for state < len(row)-1 && rest >= row[state] {
		rest -= row[state]
		state++
	}
	w.k = c.Min + (float64(state)+within)*width
	return w.k
}
