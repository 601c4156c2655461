package state

import (
	"iter"
	"slices"
	"sort"
	"strings"

	"suncask/engine/care"
	"suncask/engine/climate"
	"suncask/engine/plan"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/engine/visit"
	"suncask/ui/landscape"
)

// Job is a long calculation that a worker does for the page.
type Job int8

const (
	YearsJob     Job = iota // many drawn years
	LandscapeJob            // all hours
	SizesJob                // plan.Sizes
	ElementsJob             // plan.Elements
	WaysJob                 // plan.Ways
	LengthsJob              // plan.Lengths
	HoursJob                // plan.Best
	CurvesJob               // plan.Curve, of the fields that stand behind the link
	FixesJob                // plan.Fixes
	AheadJob                // the places of the held grip, which stands behind the link
	StepsJob                // the years with both kinds of converter, see simulate.Prepared.OnlyDown
	WiringsJob              // visit.Wirings
	MeterJob                // visit.ReadMeter, of the reading that stands behind the link
	JobCount
)

var searches = map[Job]plan.Search{SizesJob: plan.Sizes, ElementsJob: plan.Elements, WaysJob: plan.Ways}

// Part is what a job found since the part before.
type Part struct {
	Steps   int // simulated years, or houses of a landscape
	Link    string
	Numbers []float64
}

// Shares is how many workers a job can be shared by.
func (j Job) Shares() int {
	if j == LandscapeJob || j == SizesJob {
		return 2
	}
	return 1
}

// Work does a share of a job for a link's house, step by step; file is the weather record that
// the link names, or nil. A house that cannot be gives nothing.
func Work(j Job, share plan.Share, link string, file *climate.Record) iter.Seq[Part] {
	return func(yield func(Part) bool) {
		link, fields, _ := strings.Cut(link, curvesMark)
		link, grip, _ := strings.Cut(link, aheadMark)
		link, reading, _ := strings.Cut(link, meterMark)
		s, _ := scenario.Decode(link)
		p, err := simulate.Prepare(&s, file, nil)
		if err != nil {
			return
		}
		switch j {
		case YearsJob:
			workYears(p, yield)
		case LandscapeJob:
			workLandscape(p, share, yield)
		case CurvesJob:
			workCurves(p, file, fields, yield)
		case FixesJob:
			for _, f := range plan.Fixes(p, file, new(simulate.Workspace)) {
				if !yield(fixPart(&f)) {
					return
				}
			}
			yield(Part{Steps: 1})
		case HoursJob:
			workHours(p, yield)
		case AheadJob:
			workAhead(p, grip, yield)
		case StepsJob:
			if down := p.OnlyDown(); down != nil {
				both := p.BoughtJ(s.Backup) / simulate.JPerKWh
				yield(Part{Steps: 2, Numbers: []float64{both, down.BoughtJ(s.Backup) / simulate.JPerKWh}})
			}
		case WiringsJob:
			for w := range visit.Wirings(p, file) {
				if !yield(wiringPart(w)) {
					return
				}
			}
		case MeterJob:
			workMeter(p, file, reading, yield)
		case LengthsJob:
			for l := range plan.Lengths(p) {
				if !yield(Part{Steps: 1, Numbers: []float64{l.Hours, l.Cost, l.CoolUses}}) {
					return
				}
			}
		default:
			for o := range searches[j].Run(p, file, share) {
				if !yield(offerPart(o)) {
					return
				}
			}
		}
	}
}

func workYears(p *simulate.Prepared, yield func(Part) bool) {
	y, err := plan.NewYears(p, p.Scenario.Backup)
	for err == nil && y.Step() {
		i := len(y.Cost) - 1
		if !yield(Part{Steps: 1, Numbers: []float64{y.BoughtKWh[i], y.Cost[i], y.CoolDays[i]}}) {
			return
		}
	}
}

// workHours looks for the best hours; only the last part has numbers.
func workHours(p *simulate.Prepared, yield func(Part) bool) {
	best := plan.NewBest(plan.NewGrid(p, p.Scenario.Backup.Second), p.Scenario.AcceptUses)
	defer best.Stop()
	for best.Step() {
		if !yield(Part{Steps: 1}) {
			return
		}
	}
	w, o, _ := best.Result()
	yield(Part{Steps: 1, Numbers: []float64{float64(w.Start), float64(w.Steps), o.Cost, float64(o.CoolUses)}})
}

func workLandscape(p *simulate.Prepared, share plan.Share, yield func(Part) bool) {
	l := plan.NewLandscape(p, p.Scenario.Backup.Second, share)
	for {
		w, o, ok := l.Step()
		if !ok || !yield(Part{Steps: 1, Numbers: []float64{float64(w.Start), float64(w.Steps), o.Cost, float64(o.CoolUses)}}) {
			return
		}
	}
}

// Numbers of an offer, then its cautions, and with plan.EachMonth the hours of each month.
const offerNumbers = 8

// offerPart writes an offer; nil is a step.
func offerPart(o *plan.Offer) Part {
	if o == nil {
		return Part{Steps: 1}
	}
	y := &o.Year
	n := []float64{float64(o.Way), y.Cost, y.BoughtJ, y.SunJ, float64(y.CoolUses), float64(y.CoolDays), o.Worth, float64(len(o.Mind))}
	for _, code := range o.Mind {
		n = append(n, float64(code))
	}
	if o.Months != nil {
		for _, b := range o.Months {
			length := b.Length()
			n = append(n, float64(b.Start), float64(length))
		}
	}
	return Part{Link: scenario.Encode(&o.To), Numbers: n}
}

// readOffer is the reverse of offerPart.
func readOffer(p Part, accept int) (o plan.Offer, ok bool) {
	n := p.Numbers
	if len(n) < offerNumbers || len(n) < offerNumbers+int(n[7]) {
		return o, false
	}
	o.To, _ = scenario.Decode(p.Link)
	o.Way = plan.Way(n[0])
	o.Year = simulate.Flows{Cost: n[1], BoughtJ: n[2], SunJ: n[3], CoolUses: int32(n[4]), CoolDays: int32(n[5])}
	o.Worth, o.Kept = n[6], int(n[4]) <= accept
	minds := int(n[7])
	for _, code := range n[offerNumbers:][:minds] {
		o.Mind = append(o.Mind, care.Code(code))
	}
	if n = n[offerNumbers+minds:]; len(n) == 24 {
		o.Months = new([12]scenario.Backup)
		for m := range 12 {
			start, length := int(n[2*m]), int(n[2*m+1])
			o.Months[m] = scenario.Backup{Start: start, End: (start + length) % scenario.DayMinutes, AllDay: length == scenario.DayMinutes}
		}
	}
	return o, true
}

// task is what the store knows of a job.
type task struct {
	of      scenario.Scenario // what it was begun for, see about
	accept  int
	running bool
	done    bool // it came to its end
	steps   int
	offers  []plan.Offer
	spread  Spread
	land    *landscape.Map
	lengths []plan.Length
	best    *Better
	fixes   []plan.Fix
	bought  Bought
	wirings []visit.Wiring
	meter   *visit.Meter
	causes  []visit.Cause
}

// Better is what a search for the best hours came to.
type Better struct {
	Backup   scenario.Backup
	Cost     float64
	CoolUses int32
}

// Bought is what a year buys with a converter that raises and lowers the voltage, and with one
// that only lowers it, kWh.
type Bought struct{ Both, Down float64 }

// Spread is what many drawn years came to, year by year.
type Spread struct{ BoughtKWh, Cost, CoolDays []float64 }

// about is the part of a scenario that a job's result depends on: what it tries itself does
// not count.
func about(j Job, s scenario.Scenario) scenario.Scenario {
	s.Month, s.Sky, s.Known = 0, 0, scenario.FieldSet{}
	if j != YearsJob && j != FixesJob && j != StepsJob && j != WiringsJob && j != MeterJob {
		s.Backup = scenario.Backup{Second: s.Backup.Second}
	}
	switch j {
	case AheadJob: // hours move meanwhile
		s.Backup = scenario.Backup{}
	case WaysJob, LengthsJob: // of lengths the middle is that of when they were begun
		s.Backup = scenario.Backup{}
	case ElementsJob:
		s.ElementW = 0
	case WiringsJob:
		s.Coupling, s.InString = 0, 0
	case SizesJob:
		s.Modules, s.TankLitres, s.LossKWh, s.Coupling, s.InString = 0, 0, 0, 0, 0
	}
	return s
}

// BeginJob forgets what a job came to and waits for its parts; it returns the house to work on.
func (s *Store) BeginJob(j Job) (link string) {
	s.tasks[j] = task{of: about(j, s.Scenario), accept: s.Scenario.AcceptUses, running: true, land: landscape.New(s.Scenario.AcceptUses)}
	if j == WiringsJob && s.wireBy != 0 {
		return s.wiringsLink()
	}
	if j == MeterJob {
		return s.Link() + meterMark + s.meterRead.text()
	}
	return s.Link()
}

// TakePart adds a part; false where the house is another by now, or the job was ended.
func (s *Store) TakePart(j Job, p Part) bool {
	t := &s.tasks[j]
	if j == CurvesJob { // each curve knows its house
		t.steps += p.Steps
		s.takeCurves(p.Numbers)
		return t.running
	}
	if !t.running || t.of != about(j, s.Scenario) || j == AheadJob && s.Before == nil {
		t.running = false
		return false
	}
	t.steps += p.Steps
	switch j {
	case YearsJob:
		for n := range slices.Chunk(p.Numbers, 3) {
			t.spread.BoughtKWh = append(t.spread.BoughtKWh, n[0])
			t.spread.Cost = append(t.spread.Cost, n[1])
			t.spread.CoolDays = append(t.spread.CoolDays, n[2])
		}
	case LengthsJob:
		for n := range slices.Chunk(p.Numbers, 3) {
			t.lengths = append(t.lengths, plan.Length{Hours: n[0], Cost: n[1], CoolUses: n[2]})
		}
	case FixesJob:
		if f, ok := readFix(p); ok {
			t.fixes = append(t.fixes, f)
		}
	case HoursJob:
		if n := p.Numbers; len(n) == 4 {
			w := plan.Window{Start: int(n[0]), Steps: int(n[1])}
			t.best = &Better{w.Backup(s.Scenario.Backup.Second), n[2], int32(n[3])}
		}
	case WiringsJob:
		if w, ok := readWiring(p); ok {
			t.wirings = append(t.wirings, w)
			sort.SliceStable(t.wirings, func(i, k int) bool { return visit.Compare(&t.wirings[i], &t.wirings[k]) < 0 })
		}
	case MeterJob:
		t.takeMeter(p.Numbers)
	case AheadJob:
		s.takeAhead(p.Numbers)
	case StepsJob:
		if n := p.Numbers; len(n) == 2 {
			t.bought = Bought{n[0], n[1]}
		}
	case LandscapeJob:
		for n := range slices.Chunk(p.Numbers, 4) {
			t.land.Add(plan.Window{Start: int(n[0]), Steps: int(n[1])}, n[2], n[3])
		}
	default:
		if o, ok := readOffer(p, t.accept); ok {
			t.offers = append(t.offers, o)
		}
	}
	return true
}

// FinishJob marks a job as done: all of it is known.
func (s *Store) FinishJob(j Job) { s.tasks[j].done = true }

// Done tells whether all that a job comes to is known for the present house.
func (s *Store) Done(j Job) bool {
	t, ok := s.known(j)
	return ok && t.done
}

// EndJob marks a job as ended; what is known stays.
func (s *Store) EndJob(j Job) { s.tasks[j].running = false }

// Running tells whether a job is on its way for the present house, and its steps so far.
func (s *Store) Running(j Job) (steps int, running bool) {
	t := &s.tasks[j]
	return t.steps, t.running && t.of == about(j, s.Scenario)
}

// known is a job's task; ok is false where it was not done for the present house.
func (s *Store) known(j Job) (t *task, ok bool) {
	t = &s.tasks[j]
	return t, t.steps > 0 && t.of == about(j, s.Scenario)
}

// Spread returns what many years of the present house came to; ok is false while not all
// are known.
func (s *Store) Spread() (spread Spread, ok bool) {
	t, ok := s.known(YearsJob)
	return t.spread, ok && len(t.spread.Cost) == plan.YearCount
}

// Landscape returns what is known of the present house's; ok is false where nothing is.
func (s *Store) Landscape() (m *landscape.Map, ok bool) {
	t, ok := s.known(LandscapeJob)
	return t.land, ok
}

// Lengths are what windows about the middle of the hours come to, as far as known; none
// while the job was not done for the present house.
func (s *Store) Lengths() []plan.Length {
	t, ok := s.known(LengthsJob)
	if !ok {
		return nil
	}
	return t.lengths
}

// Better is what the best hours for the present house would come to; ok is false while that is
// not known.
func (s *Store) Better() (b Better, ok bool) {
	t, ok := s.known(HoursJob)
	if !ok || t.best == nil {
		return b, false
	}
	return *t.best, true
}

// Bought compares both kinds of converter in the present house; ok is false while that is not
// known.
func (s *Store) Bought() (b Bought, ok bool) {
	t, ok := s.known(StepsJob)
	return t.bought, ok
}

// Offers are those of a search so far.
func (s *Store) Offers(j Job) []plan.Offer {
	t, ok := s.known(j)
	if !ok {
		return nil
	}
	return t.offers
}

// TakeOffer makes the house of an offer the present one, as one change.
func (s *Store) TakeOffer(o *plan.Offer) { s.takeHouse(scenario.BackupHours, o.To) }

// takeHouse makes a house that a search tried the present one, on the day shown.
func (s *Store) takeHouse(field scenario.FieldID, next scenario.Scenario) {
	s.Cancel()
	next.Month, next.Sky = s.Scenario.Month, s.Scenario.Sky
	s.change(field, next, "")
}
