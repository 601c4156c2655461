package pv

// Peak finds where a function that rises to one peak and falls is highest between lo
// and hi, to within that much, by the golden section.
func Peak(lo, hi, within float64, f func(float64) float64) (at float64) {
	const golden = 0.6180339887498949
	a, b := hi-golden*(hi-lo), lo+golden*(hi-lo)
	fa, fb := f(a), f(b)
	for hi-lo > within {
		if fa < fb {
			lo, a, fa = a, b, fb
			b = lo + golden*(hi-lo)
			fb = f(b)
		} else {
			hi, b, fb = b, a, fa
			a = hi - golden*(hi-lo)
			fa = f(a)
		}
	}
	return (lo + hi) / 2
}
