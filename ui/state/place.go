package state

import (
	"math"
	"strings"

	"suncask/engine/climate"
	"suncask/engine/scenario"
	"suncask/ui/towns"
)

// PlaceOffer is something that the place's box offers.
type PlaceOffer struct {
	Name, Region, Country string // in the language of the list of towns
	Also                  string // the name by which it was found, where that is another
	NextTo                string // of a point: the nearest town
	Near                  bool   // it is only spelled nearly so
	LatDeg, LonDeg        float64

	place, town, country string // of the scenario
	zone                 string
}

// How far and how much higher a town may be for a built-in place of its name to stand for it.
const (
	sameKm = 5
	sameM  = 100
)

// clockReachKm is how far the town whose clock a point takes may be (an assumption).
const clockReachKm = 500

// PlaceOffers lists at most so many places that a text may mean, the best first: a point, towns,
// and built-in places that are no towns. Where there are none, names that are spelled nearly so.
func (s *Store) PlaceOffers(text string, most int) []PlaceOffer {
	if o, ok := s.pointOffer(text); ok {
		return []PlaceOffer{o}
	}
	var list []PlaceOffer
	if s.Towns != nil {
		for _, m := range s.Towns.Search(text, most) {
			list = append(list, s.townOffer(m))
		}
	}
	list = append(list, builtIn(text, list, s.Towns == nil)...)
	if len(list) == 0 && s.Towns != nil {
		for _, m := range s.Towns.Similar(text, most) {
			list = append(list, s.townOffer(m))
		}
	}
	return list[:min(most, len(list))]
}

// pointOffer reads latitude and longitude.
func (s *Store) pointOffer(text string) (o PlaceOffer, ok bool) {
	p, ok := towns.ReadPoint(text)
	if !ok || climate.PointProblem(p.LatDeg, p.LonDeg, p.HeightM) != "" {
		return o, false
	}
	o.place = climate.PointName(p.LatDeg, p.LonDeg, p.HeightM)
	o.Name, o.LatDeg, o.LonDeg = strings.ReplaceAll(o.place, ",", ", "), p.LatDeg, p.LonDeg
	if s.Towns != nil {
		if zone, km := s.Towns.Zone(p.LatDeg, p.LonDeg); km <= clockReachKm {
			o.zone = zone
			i, km := s.Towns.Nearest(p.LatDeg, p.LonDeg)
			if town := s.Towns.Town(i); km <= clockReachKm && town.Zone == zone {
				o.NextTo, o.country = town.Name, scenario.Name(town.English)
			}
		}
	}
	return o, true
}

func (s *Store) townOffer(m towns.Match) PlaceOffer {
	t := s.Towns.Town(m.Town)
	o := PlaceOffer{Name: t.Name, Region: t.Region, Country: t.Country, Near: m.Fit == towns.Near, LatDeg: t.LatDeg, LonDeg: t.LonDeg,
		town: scenario.Name(t.Name), country: scenario.Name(t.English), zone: t.Zone, place: climate.PointName(t.LatDeg, t.LonDeg, t.HeightM)}
	if m.Name != t.Name {
		o.Also = m.Name
	}
	for _, p := range climate.Places() {
		if stands(&p, &t) {
			o.place, o.town, o.country, o.zone = p.Slug, "", "", ""
			break
		}
	}
	return o
}

// stands tells whether a built-in place is a town: its name, near, at the same height.
func stands(p *climate.Place, t *towns.Town) bool {
	return math.Abs(p.LatDeg-t.LatDeg) < 0.2 && climate.DistanceKm(p.LatDeg, p.LonDeg, t.LatDeg, t.LonDeg) <= sameKm &&
		!(math.Abs(p.ElevationM-t.HeightM) > sameM) && towns.Fold(p.Name) == towns.Fold(t.Name)
}

// builtIn lists the built-in places with a word that begins as a text does, or of that slug,
// but for those near a town that is offered. Without the list of towns, one that only begins so
// is no more than near.
func builtIn(text string, offered []PlaceOffer, alone bool) (list []PlaceOffer) {
	name, country, _ := strings.Cut(text, ",")
	want, where := towns.Fold(name), " "+towns.Fold(country)
	if want == "" {
		return nil
	}
	var later []PlaceOffer
next:
	for _, p := range climate.Places() {
		folded := " " + towns.Fold(p.Name)
		if p.Slug != text && !(strings.Contains(folded, " "+want) && strings.HasPrefix(" "+towns.Fold(p.Country), where)) {
			continue
		}
		for _, o := range offered {
			if climate.DistanceKm(p.LatDeg, p.LonDeg, o.LatDeg, o.LonDeg) < 6*sameKm {
				continue next
			}
		}
		o := PlaceOffer{Name: p.Name, Country: p.Country, place: p.Slug, LatDeg: p.LatDeg, LonDeg: p.LonDeg}
		if p.Slug == text || folded == " "+want {
			list = append(list, o)
		} else {
			o.Near = alone
			later = append(later, o)
		}
	}
	return append(list, later...)
}

// typePlace takes the best that a text may mean; what is only spelled nearly so is told.
func (s *Store) typePlace(text string) {
	list := s.PlaceOffers(text, 3)
	if len(list) > 0 && !list[0].Near {
		s.TakePlace(list[0])
		if s.early = ""; s.Towns == nil {
			s.early = list[0].place
		}
		return
	}
	s.Near = nil
	for _, o := range list {
		s.Near = append(s.Near, o.Name+", "+o.Country)
	}
	s.Refused[scenario.Place] = Refused{Typed: text, Problem: scenario.Problem{Field: scenario.Place, Code: scenario.UnknownPlace, Got: text}}
}

// TakePlace moves the house to a place that was offered, with the clock of its zone.
func (s *Store) TakePlace(o PlaceOffer) {
	s.Cancel()
	next := s.Scenario
	moveTo(&next, o.place)
	if next.Town, next.Country = o.town, o.country; o.country != "" {
		next.Known = next.Known.With(scenario.Country)
	}
	if o.town != "" {
		next.Known = next.Known.With(scenario.Town)
	}
	if o.zone != "" && s.Clock != nil {
		if c, ok := s.Clock(o.zone); ok {
			next.ZoneH, next.Summer = c.OffsetH, scenario.WriteDates(c)
			next.Known = next.Known.With(scenario.Zone, scenario.SummerTime)
		}
	}
	s.change(scenario.Place, next, o.Name)
}

// TakeTowns takes the list once it is there: a place that was refused without it is looked for
// again, and a point that was typed without it gets its clock.
func (s *Store) TakeTowns(list *towns.List) {
	s.Towns = list
	if _, _, point := strings.Cut(s.early, ","); point && s.early == s.Scenario.Place && !s.Scenario.Known.Has(scenario.Zone) {
		s.typePlace(s.early)
	}
	if r, ok := s.Refused[scenario.Place]; ok && r.Problem.Code == scenario.UnknownPlace {
		s.typePlace(r.Typed)
	}
}

// moveTo takes a scenario to another place: months that somebody overtyped, a weather file,
// a town's name and a clock were of the old one. Sums of money stay what they are.
func moveTo(next *scenario.Scenario, place string) {
	if next.Place == place {
		return
	}
	if next.MoneyKnown() { // sums that somebody gave stay in the currency in which they were given
		next.Known = next.Known.With(scenario.Currency)
	}
	next.Place, next.Town, next.Country = place, "", ""
	next.GHI, next.TempC, next.ColdC = climate.Monthly{}, climate.Monthly{}, climate.Monthly{}
	next.Weather, next.ShiftMin = "", 0
	for _, id := range []scenario.FieldID{scenario.MonthGHI, scenario.MonthTempC, scenario.MonthColdC, scenario.WeatherFile, scenario.ShiftMin,
		scenario.Zone, scenario.SummerTime, scenario.Town, scenario.Country, scenario.ColdestC} {
		next.Known = next.Known.Without(id)
	}
	next.Settle()
}

// placeText is the place as its box shows it.
func (s *Store) placeText() string {
	p, _ := s.Scenario.At()
	switch {
	case s.Scenario.Town != "" && p.Between:
		return strings.TrimSuffix(p.Name+", "+p.Country, ", ")
	case p.Between:
		return strings.ReplaceAll(p.Slug, ",", ", ")
	}
	return p.Name + ", " + p.Country
}
