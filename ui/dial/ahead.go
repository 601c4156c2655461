package dial

// ahead is the look-ahead rim: along the outer edge of the staves the thickness
// is the yearly cost with the held grip there, bars stand where a use more would
// run cool, and a notch is cut at the best place.
func (in *Input) ahead() (places, bars, best string) {
	if len(in.Ahead) == 0 {
		return "", "", ""
	}
	var p, b, n path
	step := float64(DayMinutes) / float64(len(in.Ahead))
	for i, place := range in.Ahead {
		minute := float64(i) * step
		depth := 1.5 + 7*place.Cost
		p.sector(minute-step/2+0.7, minute+step/2-0.7, rimR-depth, rimR)
		if place.Breaks {
			x, y := at(minute-step/2, rimR-11)
			b.cmd('M', x, y)
			x, y = at(minute+step/2, rimR-1)
			b.cmd('L', x, y)
		}
	}
	if in.Best >= 0 {
		minute := float64(in.Best) * step
		x, y := at(minute, rimR-12)
		n.cmd('M', x, y)
		x, y = at(minute-9, rimR+5)
		n.cmd('L', x, y)
		x, y = at(minute+9, rimR+5)
		n.cmd('L', x, y)
		n.cmd('Z')
	}
	return string(p), string(b), string(n)
}
