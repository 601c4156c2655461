package climate

import "math"

// Clearness is the distribution of a month's daily clearness index: the ratio of
// daily irradiation to that outside the air. Bendt, Collares-Pereira & Rabl 1981:
// between Min and Max its density is proportional to e^(Gamma K).
type Clearness struct{ Min, Max, Gamma float64 }

// ClearnessOf returns the distribution whose mean is exactly mean, 0 < mean < 0.95.
// Max follows Hollands & Huget 1983 (Duffie & Beckman 2.9.6); Gamma is solved for
// instead of fitted.
func ClearnessOf(mean float64) Clearness {
	c := Clearness{Min: math.Min(0.05, mean/2)}
	c.Max = 0.6313 + 0.267*mean - 11.9*math.Pow(mean-0.75, 8)
	c.Max = math.Max(c.Max, mean+0.03)
	c.solve(mean)
	return c
}

// ClearnessOfSpread is ClearnessOf drawn together about its mean: its days differ from the
// mean by spread times as much, until the darkest and brightest days that are drawn.
func ClearnessOfSpread(mean, spread float64) Clearness {
	c := ClearnessOf(mean)
	c.Min = math.Max(mean-spread*(mean-c.Min), math.Min(darkest, mean/2))
	c.Max = math.Min(mean+spread*(c.Max-mean), math.Max(brightest, c.Max))
	c.solve(mean)
	return c
}

// solve finds the Gamma that gives the mean.
func (c *Clearness) solve(mean float64) {
	lo, hi := -4000.0, 4000.0
	for range 80 {
		c.Gamma = (lo + hi) / 2
		if c.mean() < mean {
			lo = c.Gamma
		} else {
			hi = c.Gamma
		}
	}
}

// mean of the distribution: K_max - 1/g + w/(e^(g w) - 1) with the width w.
func (c Clearness) mean() float64 {
	w := c.Max - c.Min
	x := c.Gamma * w
	if math.Abs(x) < 1e-6 {
		return c.Min + w*(0.5+x/12)
	}
	return c.Max - 1/c.Gamma + w/math.Expm1(x)
}

// Quantile returns the clearness index below which the part q of the days lies:
//
//	K_q = ln[(1-q) e^(g K_min) + q e^(g K_max)] / g
func (c Clearness) Quantile(q float64) float64 {
	w := c.Max - c.Min
	x := c.Gamma * w
	if math.Abs(x) < 1e-6 {
		return c.Min + w*q
	}
	if x > 0 {
		// e^(g K_max) taken out, so that nothing overflows.
		return c.Max + math.Log(q+(1-q)*math.Exp(-x))/c.Gamma
	}
	return c.Min + math.Log1p(q*math.Expm1(x))/c.Gamma
}

// CDF is the inverse of Quantile.
func (c Clearness) CDF(k float64) float64 {
	k = math.Min(math.Max(k, c.Min), c.Max)
	x := c.Gamma * (c.Max - c.Min)
	if math.Abs(x) < 1e-6 {
		return (k - c.Min) / (c.Max - c.Min)
	}
	return math.Expm1(c.Gamma*(k-c.Min)) / math.Expm1(x)
}
