package tank

// The smaller and the larger of two numbers that are no NaN. The built-in min and max look for
// those, and in WebAssembly are calls.

func lesser(a, b float64) float64 {
	if b < a {
		return b
	}
	return a
}

func larger(a, b float64) float64 {
	if b > a {
		return b
	}
	return a
}
