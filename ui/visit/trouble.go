package visit

import (
	"math"
	"strings"

	"suncask/engine/care"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/engine/visit"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/words"
)

// Trouble goes from a complaint to its cause, question by question.
type Trouble struct {
	Page *page.Page

	now     *visit.Commission // worked out once a render
	problem string
}

// Compute works out what meters should show.
func (c *Trouble) Compute() { c.now, c.problem = commission(c.Page) }

// asked are a question's texts: what it asks, where to look, its answers and what those mean that
// end the way.
type asked struct {
	ask, where words.Key
	answers    []says
}

type says struct{ answer, means words.Key }

// none stands for the meaning of an answer that leads on.
const none words.Key = -1

var questions = [visit.Nodes]asked{
	visit.IsTrouble:      {words.N1Ask, words.N1Where, []says{{words.N1A, words.N1AMeans}, {words.N1B, none}, {words.N1C, words.N1CMeans}}},
	visit.ClockRight:     {words.N2Ask, words.N2Where, []says{{words.N2A, words.N2AMeans}, {words.N2B, none}, {words.N2C, none}, {words.N2D, none}}},
	visit.RoofVolts:      {words.N3Ask, words.N3Where, []says{{words.N3A, none}, {words.N3B, words.N3BMeans}, {words.N3E, none}, {words.N3F, none}, {words.N3C, words.N3CMeans}, {words.N3D, none}}},
	visit.InWindow:       {words.N4Ask, words.N4Where, []says{{words.N4A, none}, {words.N4B, none}, {words.N4C, words.N4CMeans}, {words.N4D, words.N4DMeans}, {words.N4E, words.N4EMeans}}},
	visit.Polarity:       {words.N5Ask, words.N5Where, []says{{words.N5A, none}, {words.N5B, words.N5BMeans}}},
	visit.EarthFault:     {words.N6Ask, words.N6Where, []says{{words.N6A, none}, {words.N6B, words.N6BMeans}, {words.N6C, words.N6CMeans}, {words.N6D, words.N6DMeans}}},
	visit.ConverterWorks: {words.N7Ask, words.N7Where, []says{{words.N7A, none}, {words.N7B, words.N7BMeans}, {words.N7C, none}}},
	visit.ContactorWorks: {words.N8Ask, words.N8Where, []says{{words.N8A, none}, {words.N8B, words.N8BMeans}, {words.N8C, none}, {words.N8D, words.N8DMeans}}},
	visit.StatOpen:       {words.N9Ask, words.N9Where, []says{{words.N9A, none}, {words.N9B, words.N9BMeans}, {words.N9C, words.N9CMeans}, {words.N9D, words.N9DMeans}}},
	visit.ElementWhole:   {words.N10Ask, words.N10Where, []says{{words.N10A, none}, {words.N10B, words.N10BMeans}, {words.N10C, none}, {words.N10E, words.N10EMeans}, {words.N10D, none}}},
	visit.ElementShort:   {words.N11Ask, words.N11Where, []says{{words.N11A, words.N11AMeans}, {words.N11B, none}}},
	visit.LoopMissing:    {words.N12Ask, words.N12Where, []says{{words.N12A, words.N12AMeans}, {words.N12B, words.N12BMeans}, {words.N12C, none}}},
	visit.ElementLeaks:   {words.N13Ask, words.N13Where, []says{{words.N13A, none}, {words.N13B, words.N13BMeans}, {words.N13C, words.N13CMeans}}},
	visit.LooseJoint:     {words.N14Ask, words.N14Where, []says{{words.N14A, none}, {words.N14B, words.N14BMeans}}},
	visit.StringMissing:  {words.N15Ask, words.N15Where, []says{{words.N15A, words.N15AMeans}, {words.N15B, words.N15BMeans}, {words.N15C, none}}},
	visit.TooLittle:      {words.N16Ask, words.N16Where, []says{{words.N16A, words.N16AMeans}, {words.N16B, words.N16BMeans}, {words.N16C, words.N16CMeans}, {words.N16D, words.N16DMeans}, {words.N16E, words.N16EMeans}, {words.N16F, words.N16FMeans}}},
	visit.TooHot:         {words.N17Ask, words.N17Where, []says{{words.N17A, words.N17AMeans}, {words.N17B, words.N17BMeans}, {words.N17C, none}}},
	visit.ReliefRuns:     {words.N18Ask, words.N18Where, []says{{words.N18A, words.N18AMeans}, {words.N18B, words.N18BMeans}, {words.N18C, words.N18CMeans}}},
	visit.WhatTrips:      {words.N19Ask, words.N19Where, []says{{words.N19A, none}, {words.N19B, none}, {words.N19C, words.N19CMeans}, {words.N19D, words.N19DMeans}, {words.N19E, none}, {words.N19F, none}, {words.N19G, none}}},
}

var doors = [visit.Doors]words.Key{words.DoorNone, words.DoorLittle, words.DoorHot, words.DoorTrips}

func (c *Trouble) caution() string { return cautionText(c.Page, words.TroubleCaution) }

// order is how strings are isolated before anything is opened.
func (c *Trouble) order() []string { return strings.Split(c.Page.T(words.TroubleSteps), "; ") }

// stops are the findings that stop the house.
func (c *Trouble) stops() (list []care.Finding) {
	for _, f := range c.Page.Findings {
		if f.Severity == care.Stop {
			list = append(list, f)
		}
	}
	return list
}

func (c *Trouble) open(i int) {
	v := &c.Page.Visit
	v.Door, v.Copied = visit.Door(i), false
	v.Path = []page.VisitStep{{At: v.Door.First(&c.Page.Store.Scenario), Answer: -1}}
}

func (c *Trouble) started() bool { return len(c.Page.Visit.Path) > 0 }

// last is the question that is open, or the one that ended the way.
func (c *Trouble) last() page.VisitStep { return c.Page.Visit.Path[len(c.Page.Visit.Path)-1] }

func (c *Trouble) question() *visit.Question { return visit.QuestionOf(c.last().At) }

func (c *Trouble) texts() *asked { return &questions[c.last().At] }

// who names who asks this, or at the end who deals with it.
func (c *Trouble) who() string {
	q := c.question()
	if a := c.last().Answer; a >= 0 {
		return c.Page.View.Words.Text(words.WhoLine, q.Answers[a].Who.Letters())
	}
	return c.Page.View.Words.Text(words.WhoLine, q.Who.Letters())
}

func (c *Trouble) ended() bool { return c.last().Answer >= 0 }

func (c *Trouble) stopped() bool { return c.ended() && c.question().Answers[c.last().Answer].Stop }

// meaning is what the answer means that ended the way.
func (c *Trouble) meaning() string { return c.Page.T(c.texts().answers[c.last().Answer].means) }

// answer takes one and goes on.
func (c *Trouble) answer(i int) {
	v := &c.Page.Visit
	v.Path[len(v.Path)-1].Answer = i
	v.Copied = false
	if next := c.question().Answers[i].Next; next != visit.NoNode {
		v.Path = append(v.Path, page.VisitStep{At: next.At(&c.Page.Store.Scenario), Answer: -1})
	}
	c.reveal()
}

// back takes the last answer back.
func (c *Trouble) back() {
	v := &c.Page.Visit
	v.Copied = false
	if !c.ended() {
		v.Path = v.Path[:len(v.Path)-1]
	}
	if len(v.Path) > 0 {
		v.Path[len(v.Path)-1].Answer = -1
		c.reveal()
	}
}

func (c *Trouble) again() { c.Page.Visit.Path, c.Page.Visit.Copied = nil, false }

func (c *Trouble) reveal() {
	if c.Page.Host != nil {
		c.Page.Host.Reveal("trouble-question")
	}
}

// given are the questions that were answered, with their answers.
func (c *Trouble) given() (list []string) {
	for _, step := range c.Page.Visit.Path {
		if step.Answer >= 0 {
			of := &questions[step.At]
			list = append(list, c.Page.T(of.ask)+" "+c.Page.T(of.answers[step.Answer].answer)+".")
		}
	}
	return list
}

// path is the way taken, as lines of text.
func (c *Trouble) path() string {
	last := c.Page.T(c.texts().ask)
	if c.ended() {
		last = c.meaning()
	}
	return strings.Join(append(c.given(), last), "\n") + "\n"
}

func (c *Trouble) copyPath() {
	if c.Page.Host != nil {
		c.Page.Host.Copy(c.path(), func() { c.Page.Visit.Copied = true })
	}
}

// look is a value that the question's meters should show.
type look struct{ name, value, band string }

var lookNames = [visit.LookKinds]words.Key{
	visit.LookOpen: words.LookOpen, visit.LookShort: words.LookShort, visit.LookRunV: words.LookRunV, visit.LookRunA: words.LookRunA, visit.LookWindow: words.LookWindow, visit.LookBears: words.LookBears,
	visit.LookOhms: words.LookOhms, visit.LookHalf: words.LookHalf, visit.LookLoop3: words.LookLoop3, visit.LookLoop2: words.LookLoop2, visit.LookSheath: words.LookSheath,
	visit.LookCable: words.LookCable, visit.LookDrop: words.LookDrop, visit.LookContact: words.LookContact, visit.LookAcross: words.LookAcross, visit.LookAcrossGrid: words.LookAcrossGrid, visit.LookWaits: words.LookWaits,
	visit.LookLimit: words.LookLimit, visit.LookRise: words.LookRise, visit.LookPushed: words.LookPushed, visit.LookGridA: words.LookGridA,
	visit.LookModule: words.LookModule, visit.LookThird: words.LookThird,
}

// lookOf is how a kind's numbers are written: their unit and decimals.
var lookOf = [visit.LookKinds]struct {
	unit     string
	decimals int
}{
	visit.LookOpen: {"V", 0}, visit.LookShort: {"A", 1}, visit.LookRunV: {"V", 0}, visit.LookRunA: {"A", 1}, visit.LookWindow: {"V", 0}, visit.LookBears: {"V", 0},
	visit.LookOhms: {"Ω", 1}, visit.LookHalf: {"Ω", 1}, visit.LookLoop3: {"Ω", 1}, visit.LookLoop2: {"Ω", 1}, visit.LookSheath: {"MΩ", 0},
	visit.LookCable: {"Ω", 2}, visit.LookDrop: {"V", 1}, visit.LookContact: {"V", 1}, visit.LookAcross: {"V", 0}, visit.LookAcrossGrid: {"V", 0}, visit.LookWaits: {"kWh", 0},
	visit.LookGridA: {"A", 1}, visit.LookModule: {"V", 0}, visit.LookThird: {"V", 0},
}

// looks are the values of the question that is open.
func (c *Trouble) looks() (list []look) {
	w := c.Page.View.Words
	at := c.last().At
	if at == visit.IsTrouble || at == visit.ClockRight {
		return c.hours(at)
	}
	for _, l := range c.now.Looks(at, c.Page.Store.Results.Year.Total.DisplacedJ) {
		of := lookOf[l.Kind]
		write := func(v float64) string { return format.Number(v, of.decimals) }
		unit := of.unit
		switch l.Kind {
		case visit.LookLimit:
			write, unit = format.Degrees, w.Units[scenario.Celsius]
		case visit.LookRise:
			write, unit = func(v float64) string { return format.In(scenario.Kelvin, v, 0) }, w.Units[scenario.Kelvin]+"/h"
		case visit.LookPushed:
			write, unit = func(v float64) string { return format.In(scenario.Litre, v, 1) }, w.Units[scenario.Litre]
		}
		band := ""
		if !math.IsNaN(l.Least) {
			band = w.Text(words.TestBand, write(l.Least), write(l.Most))
		}
		if math.IsNaN(l.Value) {
			list = append(list, look{c.Page.T(lookNames[l.Kind]), band + format.Space + unit, ""})
			continue
		}
		list = append(list, look{c.Page.T(lookNames[l.Kind]), write(l.Value) + format.Space + unit, band})
	}
	return list
}

// hours are those in which anything may heat.
func (c *Trouble) hours(at visit.Node) (list []look) {
	s, w := &c.Page.Store.Scenario, c.Page.View.Words
	if at == visit.IsTrouble {
		from, to, some := sunHours(c.Page.Store.Prepared, int(s.Month))
		text := c.Page.T(words.LookNothing)
		if some {
			text = format.Clock(60*from) + "\u2013" + format.Clock(60*to%scenario.DayMinutes)
		}
		list = append(list, look{w.Text(words.LookSunHours, w.Months[s.Month]), text, ""})
	}
	return append(list, look{c.Page.T(words.LookBackup), backupText(c.Page), ""})
}

// sunHours are the first hour in which the sun heats on a typical day of a month, and the one after
// the last.
func sunHours(p *simulate.Prepared, month int) (from, to int, some bool) {
	for hour, watts := range p.SkyW(month, scenario.Typical) {
		if watts > 0 {
			if !some {
				from, some = hour, true
			}
			to = hour + 1
		}
	}
	return from, to, some
}

// boxes are those of readings from which the question works something out.
func (c *Trouble) boxes() []meterRow {
	switch t := c.Page.T; c.last().At {
	case visit.EarthFault:
		return []meterRow{{visit.PlusToEarth, t(words.FaultBox)}, {visit.MinusToEarth, t(words.FaultBox2)}}
	case visit.LooseJoint:
		if c.Page.Store.Scenario.Coupling == scenario.Converter { // its output says nothing of the cable before it
			return nil
		}
		return []meterRow{{visit.StringsEndV, t(words.JointBox)}, {visit.SunV, t(words.TestElementV)}, {visit.SunAmps, t(words.TestElementA)}}
	}
	return nil
}

// worked is what the readings in those boxes come to; empty where they say nothing.
func (c *Trouble) worked() string {
	w, r := c.Page.View.Words, c.now.Readings
	switch c.last().At {
	case visit.EarthFault:
		inString := c.now.House.Wiring().InString
		if r[visit.PlusToEarth]-r[visit.MinusToEarth] < c.now.House.Scenario.OpenV*float64(inString)/2 { // both have drifted: that is no fault
			return ""
		}
		if n, ok := visit.FaultModules(inString, r[visit.PlusToEarth], r[visit.MinusToEarth]); ok {
			return w.Text(words.FaultAt, format.Number(n, 1), inString)
		}
	case visit.LooseJoint:
		if c.Page.Store.Scenario.Coupling == scenario.Converter {
			return ""
		}
		ohms, watts, ok := visit.Joint(r[visit.StringsEndV], r[visit.SunV], r[visit.SunAmps], c.now.House.CableOhms())
		if ok && ohms > 0 {
			return w.Text(words.JointAt, format.Number(ohms, 2), format.Number(watts, 0))
		}
	}
	return ""
}

func (c *Trouble) modules() bool { return c.Page.Store.Scenario.AllModules() > 0 }

func (c *Trouble) copyName() string {
	if c.Page.Visit.Copied {
		return c.Page.T(words.TroubleCopied)
	}
	return c.Page.T(words.TroubleCopy)
}

func (c *Trouble) endClass() string {
	if c.stopped() {
		return "finding stop"
	}
	return "finding note"
}

func (c *Trouble) endIcon() string {
	if c.stopped() {
		return "#i-stop"
	}
	return "#i-note"
}

// backupText are the hours in which the grid may heat.
func backupText(c *page.Page) string {
	if text := c.View.AllHours(c.Store); text != "" {
		return text
	}
	return c.T(words.NoBackup)
}
