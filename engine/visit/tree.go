package visit

import "suncask/engine/scenario"

// Node is a question on the way from a complaint to its cause.
type Node int8

// The questions.
const (
	NoNode     Node = iota
	IsTrouble       // is it trouble at all
	ClockRight      // clock and hours
	RoofVolts       // does voltage come from the roof
	InWindow        // within the converter's window
	Polarity        //
	EarthFault      // does a conductor touch earth
	ConverterWorks
	ContactorWorks
	StatOpen      // thermostat or cut-out
	ElementWhole  //
	ElementShort  //
	LoopMissing   // of the element
	ElementLeaks  // to its sheath
	LooseJoint    //
	StringMissing // or a module
	TooLittle     // though all readings are right
	TooHot        //
	ReliefRuns    //
	WhatTrips     //
	Nodes
)

// Who may do what a question asks: a suggestion; local law settles it.
type Who int8

// Who.
const (
	Household   Who = 1 << iota
	Trained         // for the direct current of modules
	Electrician     // licensed
	Plumber         // licensed
)

// Letters names them.
func (w Who) Letters() string {
	text := ""
	for i, letter := range "HCEP" {
		if w&(1<<i) != 0 {
			if text != "" {
				text += ", "
			}
			text += string(letter)
		}
	}
	return text
}

// Answer is one of the answers to a question: it leads to another one, or says what it means.
type Answer struct {
	Next Node
	Who  Who // of those who deal with what it means, where it ends the way
	Stop bool
}

// Question is a node of the tree.
type Question struct {
	Who     Who
	Answers []Answer
	Lit     bool // what is expected hangs on the light
}

func to(n Node) Answer { return Answer{Next: n} }

func end(w Who) Answer { return Answer{Who: w} }

func stop(w Who) Answer { return Answer{Who: w, Stop: true} }

var tree = [Nodes]Question{
	IsTrouble:      {Who: Household, Answers: []Answer{end(Household), to(ClockRight), end(Plumber)}},
	ClockRight:     {Who: Household, Answers: []Answer{end(Household), to(RoofVolts), to(StatOpen), to(StringMissing)}},
	RoofVolts:      {Who: Trained, Lit: true, Answers: []Answer{to(InWindow), end(Trained), to(ElementWhole), to(StringMissing), end(Trained | Electrician), to(Polarity)}},
	InWindow:       {Who: Trained, Lit: true, Answers: []Answer{to(ConverterWorks), to(StringMissing), end(Trained), stop(Trained), end(Trained)}},
	Polarity:       {Who: Trained, Lit: true, Answers: []Answer{to(InWindow), stop(Trained)}},
	EarthFault:     {Who: Trained, Lit: true, Answers: []Answer{to(ElementLeaks), stop(Trained), stop(Trained), stop(Trained)}},
	ConverterWorks: {Who: Trained | Electrician, Lit: true, Answers: []Answer{to(ContactorWorks), end(Trained | Electrician), to(ElementWhole)}},
	ContactorWorks: {Who: Electrician, Lit: true, Answers: []Answer{to(StatOpen), end(Electrician), to(StatOpen), stop(Electrician)}},
	StatOpen:       {Who: Electrician, Lit: true, Answers: []Answer{to(ElementWhole), end(Electrician), end(Electrician), end(Electrician)}},
	ElementWhole:   {Who: Electrician, Answers: []Answer{to(ElementLeaks), end(Electrician | Plumber), to(ElementShort), stop(Electrician | Plumber), to(LoopMissing)}},
	ElementShort:   {Who: Electrician, Lit: true, Answers: []Answer{stop(Electrician | Plumber), to(ElementLeaks)}},
	LoopMissing:    {Who: Electrician, Answers: []Answer{end(Electrician), end(Electrician), to(LooseJoint)}},
	ElementLeaks:   {Who: Electrician, Answers: []Answer{to(LooseJoint), end(Electrician), stop(Electrician | Plumber)}},
	LooseJoint:     {Who: Trained | Electrician, Lit: true, Answers: []Answer{to(TooLittle), stop(Trained | Electrician)}},
	StringMissing:  {Who: Trained, Lit: true, Answers: []Answer{end(Trained), end(Trained), to(LoopMissing)}},
	TooLittle:      {Who: Household | Plumber, Answers: []Answer{end(Household), end(Plumber), end(Household), end(Plumber), end(Household), stop(Electrician)}},
	TooHot:         {Who: Electrician | Plumber, Answers: []Answer{end(Household), stop(Electrician | Plumber), to(ReliefRuns)}},
	ReliefRuns:     {Who: Plumber, Answers: []Answer{end(Plumber), end(Plumber), stop(Electrician | Plumber)}},
	WhatTrips:      {Who: Electrician, Answers: []Answer{to(ElementLeaks), to(EarthFault), stop(Electrician), end(Electrician), to(EarthFault), to(ElementWhole), to(TooHot)}},
}

// QuestionOf is a node's.
func QuestionOf(n Node) *Question { return &tree[n] }

// Door is a complaint.
type Door int8

// Complaints.
const (
	NoHeat Door = iota
	LittleHeat
	MuchHeat
	Trips
	Doors
)

// First is the question with which a complaint begins, at a house.
func (d Door) First(s *scenario.Scenario) Node {
	return [Doors]Node{IsTrouble, ClockRight, TooHot, WhatTrips}[d].At(s)
}

// At is the node itself, or the one after it where a house has not what it asks about: without
// modules nothing comes from the roof; only converters have windows, and only elements of several
// loops can miss one.
func (n Node) At(s *scenario.Scenario) Node {
	modules := s.AllModules() > 0
	for {
		switch {
		case !modules && RoofVolts <= n && n <= ContactorWorks:
			n = StatOpen
		case !modules && n == LooseJoint:
			n = TooLittle
		case !modules && n == StringMissing:
			n = LoopMissing
		case n == LoopMissing && s.ElementLoops == 1 && s.Known.Has(scenario.ElementLoops):
			n = LooseJoint
		case n == InWindow && s.Coupling != scenario.Converter:
			n = ConverterWorks
		case n == ConverterWorks && s.Coupling != scenario.Converter:
			n = ContactorWorks
		case n == ContactorWorks && s.BreaksBy != scenario.BreaksContactor:
			n = StatOpen
		default:
			return n
		}
	}
}
