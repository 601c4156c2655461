package scenario

import (
	"strconv"
	"strings"

	"suncask/engine/climate"
)

// MonthsOf returns the monthly values of a field of kind Months.
func (s *Scenario) MonthsOf(id FieldID) *climate.Monthly {
	switch id {
	case MonthGHI:
		return &s.GHI
	case MonthTempC:
		return &s.TempC
	}
	return &s.ColdC
}

// writeMonths writes twelve values in steps between points, nothing for a month that
// nobody overtyped.
func (f *Field) writeMonths(m *climate.Monthly) string {
	var parts [12]string
	for i, known := range m.Known {
		if known {
			parts[i] = strconv.Itoa(f.steps(m.Value[i]))
		}
	}
	return strings.Join(parts[:], ".")
}

func (f *Field) readMonths(text string) (m climate.Monthly, p *Problem) {
	parts := strings.Split(text, ".")
	if len(parts) != 12 {
		return m, &Problem{Field: f.ID, Code: WrongMonths}
	}
	for i, part := range parts {
		if part == "" {
			continue
		}
		n, err := strconv.ParseInt(part, 10, 40)
		if err != nil {
			return m, &Problem{Field: f.ID, Code: NotANumber, Min: f.Min, Max: f.Max}
		}
		if p := f.Check(f.ofSteps(n)); p != nil {
			return m, p
		}
		m.Known[i], m.Value[i] = true, f.ofSteps(n)
	}
	return m, nil
}

// problemOfMonths returns the first thing wrong with monthly values.
func (f *Field) problemOfMonths(m *climate.Monthly) *Problem {
	for i, known := range m.Known {
		if !known && m.Value[i] != 0 {
			return &Problem{Field: f.ID, Code: WrongMonths}
		}
		if known {
			if p := f.Check(m.Value[i]); p != nil {
				return p
			}
		}
	}
	return nil
}
