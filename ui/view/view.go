// Package view turns the state into what is on the page: texts, attributes of
// the dial and data of the strip. Everything a gesture can change is one list of
// attributes, used by the page's templates and by the painter of a gesture alike.
package view

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"suncask/engine/draw"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/ui/curve"
	"suncask/ui/dial"
	"suncask/ui/format"
	"suncask/ui/state"
	"suncask/ui/words"
)

// View builds frames; it keeps its work space between them.
type View struct {
	Words     *words.Catalogue
	in        dial.Input
	list      []dial.Attr
	strip     curve.Data
	top       [curve.StripAxes]float64 // its axes reach up to these
	chart     curve.Data               // of whichever chart was asked for last
	InShowers bool                     // the strip counts showers of the household, not litres
	FlowDay   bool                     // the energy flow is that of the day shown, not of the year
	Hidden    bool                     // results are not to be seen: a class is about to guess
	Open      state.Occasions          // whose times are listed with steppers
}

// New returns a view in the language that the page shows.
func New() *View { return &View{Words: words.Shown()} }

// Frame returns all attributes that a gesture can change, in the same order for
// the same house. The list is valid until the next call.
func (v *View) Frame(s *state.Store) []dial.Attr {
	s = v.seen(s)
	v.list = v.list[:0]
	v.sentence(s)
	v.figures(s)
	v.hub(s)
	v.steppers(s)
	v.band(s)
	v.fill(s)
	v.list = v.in.Figure(v.list)
	v.gripWords(s)
	v.hide()
	return v.list
}

func (v *View) set(id, name, value string) {
	v.list = append(v.list, dial.Attr{ID: id, Name: name, Value: value})
}

// output is a result: its text, and its unrounded value for scripts.
func (v *View) output(id, text string, value float64) {
	v.set(id, "", text)
	v.set(id, "data-value", format.Exact(value))
}

func (v *View) sentence(s *state.Store) {
	w, y := v.Words, &s.Results.Year.Total
	class, days := "verdict good", w.Text(words.VerdictAll)
	if y.CoolDays > 0 {
		class, days = "verdict bad", w.Text(words.VerdictCool, v.days(y.CoolDays))
	}
	v.set("verdict", "class", class)
	v.set("say-days", "", days)
	cost := w.Text(words.SayNothing)
	if y.Cost != 0 {
		cost = w.Text(words.SentenceCost, format.Money(y.Cost, s.Scenario.Currency))
	}
	v.set("say-cost", "", cost)
	hours, backup := v.AllHours(s), w.Text(words.SayBackup)
	if hours == "" {
		hours, backup = w.Text(words.NoBackup), ""
	}
	v.set("say-backup", "", backup)
	v.set("say-hours", "", hours)
	other, than := s.Bare.Cost, w.Text(words.SentenceThanBare)
	if s.Before != nil {
		other, than = s.Before.Total.Cost, w.Text(words.SentenceThanBefore)
	}
	v.set("say-than", "", than)
	v.set("say-less", "", format.Money(other, s.Scenario.Currency))
}

// Sentence is the live sentence as one text, for screen readers.
func (v *View) Sentence(s *state.Store) string {
	if v.Hidden {
		return ""
	}
	v.list = v.list[:0]
	v.sentence(s)
	part := map[string]string{}
	for _, a := range v.list {
		if a.Name == "" {
			part[a.ID] = a.Value
		}
	}
	return strings.ReplaceAll(fmt.Sprintf("%s. %s, %s %s. %s %s.", part["say-days"], part["say-cost"], part["say-backup"], part["say-hours"], part["say-than"], part["say-less"]), "  ", " ")
}

// AllHours writes all backup hours; nothing where there are none.
func (v *View) AllHours(s *state.Store) string {
	text := ""
	for i, w := range s.Windows() {
		follows := i == 0 && s.Scenario.Backup.FollowsSun()
		switch {
		case w.Length() == 0 && !follows:
			continue
		case text != "":
			text += " " + v.Words.Text(words.And) + " "
		}
		if follows {
			text += v.SunHours(&s.Scenario.Backup)
		} else {
			text += v.Hours(w)
		}
	}
	return text
}

// SunHours writes hours that follow the sun: from 1 h after solar noon to 18:00.
func (v *View) SunHours(b *scenario.Backup) string {
	edge := func(from scenario.Anchor, minutes int) string {
		if from == scenario.Clock {
			return format.Clock(minutes)
		}
		mark := v.Words.Text([...]words.Key{words.ByClock, words.BySolarNoon, words.BySunset}[from])
		switch {
		case minutes > 0:
			return v.Words.Text(words.AfterMark, format.Duration(minutes), mark)
		case minutes < 0:
			return v.Words.Text(words.BeforeMark, format.Duration(-minutes), mark)
		}
		return mark
	}
	return v.Words.Text(words.SentenceSun, edge(b.StartFrom, b.Start), edge(b.EndFrom, b.End))
}

// Hours writes backup hours: 14:45-18:15, all day or none.
func (v *View) Hours(w dial.Window) string {
	switch {
	case w.AllDay:
		return v.Words.Text(words.AllDay)
	case w.Length() == 0:
		return v.Words.Text(words.NoBackup)
	}
	return v.Words.Text(words.SentenceBackup, format.Clock(w.Start), format.Clock(w.End))
}

func (v *View) figures(s *state.Store) {
	y := &s.Results.Year.Total
	currency := s.Scenario.Currency
	v.output("out-cost-year", format.Money(y.Cost, currency), y.Cost)
	v.output("out-bought-year", kWh(y.BoughtJ, 0), y.BoughtJ/simulate.JPerKWh)
	v.output("out-solar-fraction", format.Number(100*y.SolarFraction(), 0)+format.Space+"%", y.SolarFraction())
	v.output("out-cold-days", v.days(y.CoolDays), float64(y.CoolDays))
	b := s.Reference()
	if b == nil {
		for _, id := range changeIDs {
			v.set(id, "class", "change")
			v.set(id, "", "")
		}
		return
	}
	v.change("change-cost", format.Less(y.Cost, b.Cost, currency), -1)
	v.change("change-bought", math.Round(y.BoughtJ/simulate.JPerKWh)-math.Round(b.BoughtJ/simulate.JPerKWh), -1)
	v.change("change-sun", math.Round(100*y.SolarFraction())-math.Round(100*b.SolarFraction()), 1)
	v.change("change-cool", float64(y.CoolDays-b.CoolDays), -1)
}

// changeIDs are the elements that say how the figures changed.
var changeIDs = [...]string{"change-cost", "change-bought", "change-sun", "change-cool"}

// CoolDays says on how many days a use ran cool.
func (v *View) CoolDays(n int32) string { return v.Words.Text(words.CoolDays, v.days(n)) }

func (v *View) days(n int32) string {
	if n == 1 {
		return v.Words.Text(words.OneDay)
	}
	return format.Number(float64(n), 0) + format.Space + v.Words.Text(words.ManyDays)
}

func kWh(joules float64, decimals int) string {
	return format.KWh(joules, decimals) + format.Space + "kWh"
}

// change says by how much a shown figure moved since the gesture or the last edit, in its
// unit; better is 1 where more is better, -1 where less is.
func (v *View) change(id string, by, better float64) {
	decimals := 0
	if by != math.Round(by) {
		decimals = 2
	}
	amount, class := format.Number(math.Abs(by), decimals), "change good"
	text := v.Words.Text(words.ChangeLess, amount)
	switch {
	case strings.Trim(amount, "0.,") == "":
		text, class = v.Words.Text(words.ChangeNone), "change same"
	case by > 0:
		text = v.Words.Text(words.ChangeMore, amount)
	}
	if class == "change good" && by*better < 0 {
		class = "change bad"
	}
	v.set(id, "class", class)
	v.set(id, "", text)
}

// hub is the middle of the dial: bought today, or the grip that is held.
func (v *View) hub(s *state.Store) {
	d := &s.Results.Day.Flows
	top, middle, bottom := "", "", ""
	switch {
	case s.Before == nil:
	case s.Moving != 0:
		first, later := s.MovedTo()
		top, middle = v.Words.Text(words.UsesFrom), format.Clock(first)
		switch {
		case later > 0:
			bottom = v.Words.Text(words.MovedLater, format.Duration(later))
		case later < 0:
			bottom = v.Words.Text(words.MovedEarlier, format.Duration(-later))
		}
	default:
		w := s.Window(s.On)
		top = v.Words.Text([...]words.Key{words.BackupStarts, words.BackupEnds, words.BackupMoves}[s.Held])
		middle = format.Clock([...]int{w.Start, w.End, w.Start}[s.Held])
		bottom = format.Duration(w.Length())
		if w.AllDay || w.Length() == 0 {
			bottom = v.Hours(w)
		}
		if s.Ghost >= 0 {
			bottom = v.Words.Text(words.TapAgain)
		}
	}
	v.set("hub-top", "", top)
	v.set("hub-middle", "", middle)
	v.set("hub-bottom", "", bottom)
	class := "hub"
	if s.Before != nil {
		class = "hub busy"
	}
	v.set("hub", "class", class)
	v.output("out-bought-day", format.Number(d.BoughtJ/simulate.JPerKWh, 1), d.BoughtJ/simulate.JPerKWh)
	v.output("out-cost-day", format.Money(d.Cost, s.Scenario.Currency), d.Cost)
}

// UseTimeID is the id of the box with an occasion's time.
func UseTimeID(o draw.Occasion) string { return fmt.Sprintf("use-time-%d", o) }

func (v *View) steppers(s *state.Store) {
	for i, w := range s.Windows() {
		v.set(fmt.Sprintf("time-%d", 2*i), "value", format.Clock(w.Start))
		v.set(fmt.Sprintf("time-%d", 2*i+1), "value", format.Clock(w.End))
	}
	for _, o := range v.Open.List() {
		v.set(UseTimeID(o), "value", s.Text(scenario.TimeOf(o)))
	}
}

// gripWords is what screen readers hear of the grips.
func (v *View) gripWords(s *state.Store) {
	for g := range 2 * len(s.Windows()) {
		w := s.Window(g / 2)
		text := v.GripName(g) + " " + format.Clock(w.Edge(dial.Part(g%2)))
		if w.AllDay || w.Length() == 0 {
			text += ", " + v.Hours(w)
		}
		v.set(fmt.Sprintf("grip-%d", g), "aria-valuetext", text)
	}
}

// GripName is a grip's accessible name: "backup starts", and " 2" after it for a
// second window.
func (v *View) GripName(g int) string {
	name := v.Words.Text([2]words.Key{words.BackupStarts, words.BackupEnds}[g%2])
	if g > 1 {
		name += " 2"
	}
	return name
}

// fill makes the dial's input from the state.
func (v *View) fill(s *state.Store) {
	in := &v.in
	sc, d := &s.Scenario, &s.Results.Day
	in.Windows = s.Windows()
	sun := s.SunDay()
	half := sun.Sunset * 720 / math.Pi
	in.Rise, in.Set = sun.Noon*60-half, sun.Noon*60+half
	in.SunW = d.SunW
	in.FullSunW = math.Max(1, math.Min(sc.ElementW, float64(sc.Modules)*sc.ModuleW))
	in.Prices = bands(s, in.Prices[:0])
	in.OutFrom, in.OutTo = sc.OutFrom, sc.OutTo
	in.Uses, in.Drops = s.Marks(in.Uses), s.DropCount()
	in.Pool = state.Points(d.Trace.Points, in.Pool)
	in.FullL = d.FullL
	in.ShowerL = sc.ShowerMinutes * sc.ShowerFlow
	in.Before, in.BeforeEdges, in.HeldGrip, in.Ghost = in.Before[:0], in.BeforeEdges[:0], -1, s.Ghost
	in.Ahead, in.Best = in.Ahead[:0], -1
	if b := s.Before; b != nil {
		v.ahead(s)
		in.Before = state.Points(b.Trace, in.Before)
		for _, w := range b.Windows {
			in.BeforeEdges = append(in.BeforeEdges, w.Start, w.End)
		}
		if s.Held != dial.Body {
			in.HeldGrip = 2*s.On + int(s.Held)
		}
	}
}

// ahead puts the places of the held grip on the rim once all are known.
func (v *View) ahead(s *state.Store) {
	a, in := &s.Ahead, &v.in
	if a.Done < state.AheadPlaces {
		return
	}
	least, most := slices.Min(a.Cost[:]), slices.Max(a.Cost[:])
	limit := s.Before.Total.CoolDays
	for i, cost := range a.Cost {
		p := dial.Place{Breaks: a.CoolDays[i] > limit}
		if most > least {
			p.Cost = (cost - least) / (most - least)
		}
		in.Ahead = append(in.Ahead, p)
	}
	if best, ok := a.Best(limit); ok {
		in.Best = best
	}
}

// bands are a weekday's prices relative to the highest.
func bands(s *state.Store, list []dial.Band) []dial.Band {
	most := 0.0
	s.Prepared.Prices(s.ShownMonth(), func(from, to int, perKWh float64) {
		most = math.Max(most, perKWh)
		list = append(list, dial.Band{From: float64(from), To: float64(to), Height: perKWh})
	})
	for i := range list {
		switch {
		case len(list) == 1:
			list[i].Height = 0.4
		case most > 0:
			list[i].Height /= most
		}
	}
	return list
}
