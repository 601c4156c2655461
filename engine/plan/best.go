package plan

import (
	"iter"
	"math"
	"slices"
	"sort"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// costSlack is the yearly cost below which two choices count as equal.
const costSlack = 1e-9

// Best looks for the hours that cost least in a year with no more than the accepted
// number of cool uses, one simulated year at a time. Where one price holds and the grid
// has the element throughout its window, a longer window costs no less and keeps the
// promise no worse: then the shortest windows that keep it are walked along, three
// quarters of an hour apart. Otherwise windows an hour and a half apart are tried. Both end
// with small moves of the edges from the cheapest found.
type Best struct {
	grid   *Grid
	accept int32
	at     Window
	out    Outcome
	some   bool
	next   func() (struct{}, bool)
	stop   func()
	over   bool
}

// NewBest begins the search on a grid.
func NewBest(g *Grid, acceptUses int) *Best {
	b := &Best{grid: g, accept: int32(acceptUses)}
	b.next, b.stop = iter.Pull(iter.Seq[struct{}](b.search))
	return b
}

// Step simulates a year; it returns false when the search is over.
func (b *Best) Step() bool {
	if !b.over {
		_, more := b.next()
		b.over = !more
	}
	return !b.over
}

// Runs is how many years were simulated so far.
func (b *Best) Runs() int { return b.grid.Runs() }

// Stop ends a search that is not over.
func (b *Best) Stop() {
	b.stop()
	b.over = true
}

// Result is the best window so far; kept tells whether it keeps the promise: where no
// window does it is the one with fewest cool uses.
func (b *Best) Result() (w Window, o Outcome, kept bool) {
	return b.at, b.out, b.some && b.out.CoolUses <= b.accept
}

// Beats tells whether the best so far is better than an outcome under hours of so many
// minutes.
func (b *Best) Beats(o Outcome, minutes int) bool {
	return b.some && b.better(b.out, b.at, o, Window{0, minutes / StepMinutes})
}

// FlatShare is how much dearer, as a share, a start may be that counts as well as the best.
const FlatShare = 0.02

// Flat returns the first and last start about the best one, in minutes of the day, from
// which a window of its length keeps the promise and costs at most FlatShare more. They
// are simulated now, 2 hours each way at most.
func (b *Best) Flat() (from, to int) {
	reach := func(by int) int {
		at := b.at.Start
		for range 120 / StepMinutes {
			w := Window{at + by, b.at.Steps}.normal()
			if o, _ := b.grid.At(w); o.CoolUses > max(b.accept, b.out.CoolUses) || o.Cost > (1+FlatShare)*b.out.Cost {
				break
			}
			at = w.Start
		}
		return at * StepMinutes
	}
	return reach(-1), reach(1)
}

// better orders outcomes: the promise first, then cost, then the shorter window.
func (b *Best) better(o Outcome, w Window, than Outcome, thanW Window) bool {
	over, thanOver := max(0, o.CoolUses-b.accept), max(0, than.CoolUses-b.accept)
	switch {
	case over != thanOver:
		return over < thanOver
	case o.Cost < than.Cost-costSlack:
		return true
	}
	return o.Cost <= than.Cost+costSlack && w.Steps < thanW.Steps
}

// search tries windows; it yields after each simulated year.
func (b *Best) search(yield func(struct{}) bool) {
	try := func(w Window) (o Outcome, on bool) {
		o, fresh := b.take(w)
		return o, !fresh || yield(struct{}{})
	}
	s := &b.grid.p.Scenario
	var from []Window
	var on bool
	if b.grid.p.OnePrice() && s.Rule == scenario.WholeWindow && s.RescueL == 0 {
		from, on = b.walk(try, yield)
	} else {
		from, on = b.coarse(yield)
	}
	for _, w := range from {
		if on {
			on = b.descend(w, try, yield)
		}
	}
	if on && s.Rule == scenario.SunFirst {
		b.flood(try)
	}
}

// take makes a window the best so far where it is; fresh tells whether it was simulated now.
func (b *Best) take(w Window) (o Outcome, fresh bool) {
	w = w.normal()
	o, fresh = b.grid.At(w)
	if !b.some || b.better(o, w, b.out, b.at) {
		b.at, b.out, b.some = w, o, true
	}
	return o, fresh
}

// starts is from how many windows the small moves begin.
const starts = 3

// cheapest are the best windows of a list, and those that cost least and miss the promise
// by little: the best often lies beside them, at the edge of what is accepted.
func (b *Best) cheapest(list []Window) []Window {
	near := append([]Window(nil), list...)
	sort.SliceStable(near, func(i, j int) bool { return b.missed(near[i]) < b.missed(near[j]) })
	near = near[:min(starts, len(near))]
	sort.SliceStable(list, func(i, j int) bool {
		o, _ := b.grid.At(list[i])
		p, _ := b.grid.At(list[j])
		return b.better(o, list[i], p, list[j])
	})
	list = list[:min(starts, len(list))]
	for _, w := range near {
		if !slices.Contains(list, w) {
			list = append(list, w)
		}
	}
	return list
}

// missed is a window's cost, dearer by what it misses the promise by.
func (b *Best) missed(w Window) float64 {
	o, _ := b.grid.At(w)
	return o.Cost * (1 + float64(max(0, o.CoolUses-b.accept))/float64(b.accept+missSlack))
}

// missSlack is how many cool uses more than accepted double the cost, at none accepted.
const missSlack = 20

// walk goes along the shortest windows that keep the promise: the later the start, the
// later the end. Where not even all day keeps it, the promise is to miss it by no more.
func (b *Best) walk(try func(Window) (Outcome, bool), yield func(struct{}) bool) (kept []Window, on bool) {
	o, on := try(Window{0, 0})
	if !on || o.CoolUses <= b.accept { // nothing is cheaper than no backup
		return nil, on
	}
	if o, on = try(Window{0, Places}); !on {
		return nil, false
	}
	most := max(b.accept, o.CoolUses)
	for start, end := 0, 0; start < Places; {
		w := Window{start, end - start}
		_, keeps := b.grid.Within(w, simulate.Limits{CoolUses: most, Cost: math.Inf(1)})
		if keeps {
			b.take(w)
		}
		if !yield(struct{}{}) {
			return nil, false
		}
		switch {
		case keeps:
			kept = append(kept, w.normal())
			start += walkSteps
			end = max(end, start)
		case end-start+walkSteps >= Places:
			start += walkSteps
		default:
			end += walkSteps
		}
	}
	return b.cheapest(kept), true
}

// walkSteps is how far apart starts and ends are on that walk; small moves find what is between.
const walkSteps = 3

// flood tries the windows beside all that cost little more than the best and do not miss
// the promise by far, over and over: where the sun goes first, cool uses change by leaps,
// and the best may stand alone.
func (b *Best) flood(try func(Window) (Outcome, bool)) {
	for more := true; more; {
		more = false
		for start := range Places {
			for steps := 1; steps < Places; steps++ {
				o := b.grid.known[start][steps]
				if !o.known || o.Cost > floodCost*b.out.Cost || o.CoolUses > 2*b.accept+missSlack {
					continue
				}
				for _, w := range [...]Window{{start + 1, steps}, {start - 1, steps}, {start, steps + 1}, {start, steps - 1}, {start + 1, steps - 1}, {start - 1, steps + 1}} {
					runs := b.grid.runs
					if _, on := try(w); !on {
						return
					}
					more = more || b.grid.runs > runs
				}
			}
		}
	}
}

// floodCost is how much dearer than the best a window may be whose neighbours are tried.
const floodCost = 1.03

// coarseCost is how many times dearer than the best so far a window may be that is tried
// to its year's end.
const coarseCost = 2

// coarseSteps is how far apart windows are tried at first.
const coarseSteps = 6

func (b *Best) coarse(yield func(struct{}) bool) (list []Window, on bool) {
	b.take(Window{0, Places}) // limits hold once one keeps the promise
	for steps := 0; steps <= Places; steps += coarseSteps {
		for start := 0; start < Places; start += coarseSteps {
			w := Window{start, steps}.normal()
			if w.Start != start {
				break // none, and all day, have one start
			}
			// Far beyond the promise or the cost nothing is worth a closer look.
			most := simulate.NoLimits
			if b.some && b.out.CoolUses <= b.accept {
				most = simulate.Limits{CoolUses: 2*b.accept + missSlack, Cost: coarseCost * b.out.Cost}
			}
			if _, ok := b.grid.Within(w, most); ok {
				b.take(w)
				list = append(list, w)
			}
			if !yield(struct{}{}) {
				return nil, false
			}
			if steps == 0 || steps == Places {
				break
			}
		}
	}
	return b.cheapest(list), true
}

// descend moves the edges of a window, singly and together, as long as it gets better,
// in ever smaller steps.
func (b *Best) descend(at Window, try func(Window) (Outcome, bool), yield func(struct{}) bool) (on bool) {
	out, on := try(at)
	if !on {
		return false
	}
	for step := coarseSteps / 2; step >= 1; {
		improved := false
		for _, m := range [...]Window{{step, -step}, {0, -step}, {step, 0}, {-step, 0}, {0, step}, {-step, step}, {step, -2 * step}, {-step, 2 * step}} {
			w := Window{at.Start + m.Start, at.Steps + m.Steps}
			if w.Steps < 0 || w.Steps > Places {
				continue
			}
			if out.CoolUses <= b.accept { // what misses the promise or costs more is no better
				if _, ok := b.grid.Within(w, simulate.Limits{CoolUses: b.accept, Cost: out.Cost + costSlack}); !ok {
					if !yield(struct{}{}) {
						return false
					}
					continue
				}
			}
			o, on := try(w)
			if !on {
				return false
			}
			if w = w.normal(); b.better(o, w, out, at) {
				at, out, improved = w, o, true
				break
			}
		}
		if !improved {
			step--
		}
	}
	return true
}
