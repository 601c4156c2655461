package state

import (
	"testing"

	"suncask/engine/plan"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/engine/visit"
)

// Every job's parts, taken by a store, give what the engine gives; another house refuses
// them.
func TestJobs_Taken(t *testing.T) {
	const link = "v=1&place=lisbon&modules=3&backup=1500-1730&month=jun"
	for j := range JobCount {
		s := Open(link)
		s.ReadMeter(MeterRead{visit.Period{From: 0, Days: 90}, 50})
		on := s.BeginJob(j)
		n := 0
		for part := range Work(j, plan.Whole, on, nil) {
			if !s.TakePart(j, part) {
				t.Fatalf("job %d: part %d refused", j, n)
			}
			if n++; n == 700 {
				break
			}
		}
		if steps, running := s.Running(j); j != CurvesJob && j != AheadJob && (!running || steps == 0) {
			t.Errorf("job %d: %d steps, running %v", j, steps, running)
		}
		s.EndJob(j)
		switch j {
		case YearsJob:
			if spread, ok := s.Spread(); !ok || len(spread.Cost) != plan.YearCount {
				t.Errorf("%d years", len(spread.Cost))
			}
		case LandscapeJob:
			m, ok := s.Landscape()
			cost, cool, known := m.At(plan.Window{Start: 0, Steps: 16})
			want := Open("v=1&place=lisbon&modules=3&backup=0000-0400").Results.Year.Total
			if !ok || !known || cost != want.Cost || cool != float64(want.CoolUses) {
				t.Errorf("midnight to four: %g and %g, want %g and %d", cost, cool, want.Cost, want.CoolUses)
			}
		case FixesJob:
			s.EndJob(j)
			list, ok := s.Fixes()
			if want := plan.Fixes(s.Prepared, nil, new(simulate.Workspace)); !ok || len(list) != len(want) || len(want) == 0 {
				t.Fatalf("%d fixes, want %d", len(list), len(want))
			} else {
				for i := range want {
					if list[i].To != want[i].To || list[i].Saves != want[i].Saves || list[i].Year.CoolUses != want[i].Year.CoolUses || len(list[i].Brings) != len(want[i].Brings) {
						t.Errorf("fix %d: %+v, want %+v", i, list[i], want[i])
					}
				}
			}
		case CurvesJob: // see TestCurves_Taken
		case AheadJob: // see TestLookAhead_IsTheYearThere
		case WiringsJob: // see TestWirings_Taken
		case StepsJob:
			both := s.Prepared.BoughtJ(s.Scenario.Backup) / simulate.JPerKWh
			down := s.Prepared.OnlyDown().BoughtJ(s.Scenario.Backup) / simulate.JPerKWh
			if got, ok := s.Bought(); !ok || got != (Bought{both, down}) || down < both {
				t.Errorf("%v, %v: want %g and %g kWh", got, ok, both, down)
			}
		case HoursJob:
			better, ok := s.Better()
			s.StartFind()
			for s.FindStep() {
			}
			if _, found := s.EndFind(); !ok || !found || better.Backup != s.Scenario.Backup || better.Cost != s.Results.Year.Total.Cost {
				t.Errorf("the job came to %+v, the search to %+v at %g", better, s.Scenario.Backup, s.Results.Year.Total.Cost)
			}
		case MeterJob: // its own test
		case LengthsJob:
			if l := s.Lengths(); len(l) != 49 || l[5].Cost != s.Results.Year.Total.Cost {
				t.Errorf("%d lengths, the house's own %v", len(l), l)
			}
		default:
			offers := s.Offers(j)
			if len(offers) == 0 {
				t.Fatalf("job %d: no offer", j)
			}
			o := offers[len(offers)-1]
			if j == WaysJob {
				o = offers[0]
			}
			s.TakeOffer(&o)
			if got := s.Results.Year.Total; got.Cost != o.Year.Cost || got.CoolUses != o.Year.CoolUses || s.Scenario.Month != 5 {
				t.Errorf("job %d: taken, %g and %d cool uses, offered %g and %d", j, got.Cost, got.CoolUses, o.Year.Cost, o.Year.CoolUses)
			}
			if len(s.Offers(j)) != len(offers) {
				t.Errorf("job %d: the list is gone when one of it is taken", j)
			}
			s.Undo()
		}
		s.Type(scenario.People, "4")
		if s.TakePart(j, Part{Steps: 1}) {
			t.Errorf("job %d: another house takes parts", j)
		}
	}
}

// The hours of each month travel as numbers.
func TestOfferPart_Months(t *testing.T) {
	o := &plan.Offer{Way: plan.EachMonth, To: scenario.Defaults(scenario.LatestVersion), Months: new([12]scenario.Backup), Year: simulate.Flows{Cost: 3.5, CoolUses: 2}}
	o.Months[2] = scenario.Backup{AllDay: true}
	o.Months[3] = scenario.Backup{Start: 1410, End: 60}
	back, ok := readOffer(offerPart(o), 2)
	if !ok || *back.Months != *o.Months || back.Year != o.Year || !back.Kept {
		t.Errorf("%+v", back)
	}
	if _, ok := readOffer(Part{Numbers: []float64{1, 2, 3}}, 0); ok {
		t.Error("three numbers are no offer")
	}
}
