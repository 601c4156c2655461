package scenario

import (
	"math"
	"strconv"
	"strings"
)

// MaxLink is the longest fragment that Decode reads, in bytes.
const MaxLink = 4000

// Encode writes a scenario as a URL fragment, without the "#": the version and
// the fields that somebody confirmed, each as key=value. Fields that are only
// assumed are left out and take the version's defaults again.
func Encode(s *Scenario) string {
	var b strings.Builder
	b.WriteString("v=" + strconv.Itoa(LatestVersion))
	for i := range fields {
		if f := &fields[i]; s.Known.Has(f.ID) {
			b.WriteString("&" + f.Key + "=" + f.write(s))
		}
	}
	return b.String()
}

// Written is a field as a link writes it.
func (s *Scenario) Written(id FieldID) string { return FieldOf(id).write(s) }

func (f *Field) write(s *Scenario) string {
	switch {
	case f.escaped():
		return escape(*s.textOf(f.ID))
	case f.Kind == Text:
		return *s.textOf(f.ID)
	case f.Kind == Months:
		return f.writeMonths(s.MonthsOf(f.ID))
	case f.Kind == Hours:
		return writeHours(hoursOf(s, f.ID))
	case f.Kind == Choice:
		return f.Choices[int(f.Get(s))]
	}
	if f.Empty(f.Get(s)) {
		return noneText
	}
	if f.Fine() {
		return strconv.FormatFloat(math.Round(f.Get(s)/f.Step*parts)/parts, 'f', -1, 64)
	}
	return strconv.Itoa(f.steps(f.Get(s)))
}

// Decode reads a fragment, with or without its "#". It never fails: what can be
// read is, what cannot is reported and takes its default, and the scenario is
// valid. An empty fragment is the default scenario.
func Decode(fragment string) (Scenario, []Problem) {
	fragment = strings.TrimPrefix(fragment, "#")
	s := Defaults(versionOf(fragment))
	if fragment == "" {
		return s, nil
	}
	if len(fragment) > MaxLink {
		return s, []Problem{{Field: NoField, Code: LinkTooLong, Got: shorten(fragment), Max: MaxLink}}
	}
	var problems []Problem
	refuse := func(f FieldID, c Code, got string, lo, hi float64) {
		problems = append(problems, Problem{f, c, shorten(got), lo, hi})
	}
	version := false
	var seen FieldSet
	for _, part := range strings.Split(fragment, "&") {
		key, value, ok := strings.Cut(part, "=")
		if !ok {
			refuse(NoField, NotAPair, part, 0, 0)
			continue
		}
		if key == "v" {
			n, err := strconv.Atoi(value)
			switch {
			case err != nil || n < 1:
				refuse(NoField, NoVersion, value, 1, LatestVersion)
			case n > LatestVersion:
				refuse(NoField, NewerVersion, value, 1, LatestVersion)
			}
			version = true
			continue
		}
		f := fieldByKey(key)
		if f == nil {
			refuse(NoField, UnknownKey, key, 0, 0)
			continue
		}
		if seen.Has(f.ID) {
			refuse(f.ID, KeyTwice, value, 0, 0)
			continue
		}
		seen = seen.With(f.ID)
		next := s
		if p := f.read(&next, value); p != nil {
			p.Got = shorten(value)
			problems = append(problems, *p)
			continue
		}
		s = next
		s.Known = s.Known.With(f.ID)
	}
	if versionOf(fragment) == 1 {
		if s.InsulationM == 0 { // version 1 wrote so what was not measured
			s.InsulationM = Unknown
		}
		s.settleFirst()
		s.renew()
	} else {
		s.Settle()
	}
	if !version {
		refuse(NoField, NoVersion, "", 1, LatestVersion)
	}
	return s, problems
}

// versionOf is the version whose defaults complete a link: its own where it is known, else
// the latest.
func versionOf(fragment string) int {
	for _, part := range strings.Split(fragment, "&") {
		if value, ok := strings.CutPrefix(part, "v="); ok {
			if n, err := strconv.Atoi(value); err == nil && n >= 1 && n < LatestVersion {
				return n
			}
			break
		}
	}
	return LatestVersion
}

func fieldByKey(key string) *Field {
	for i := range fields {
		if fields[i].Key == key {
			return &fields[i]
		}
	}
	return nil
}

// read sets a field from its link form; nil if it could.
func (f *Field) read(s *Scenario, value string) *Problem {
	switch {
	case f.escaped():
		text, ok := unescape(value)
		if !ok {
			return &Problem{Field: f.ID, Code: map[bool]Code{true: WrongCurrency, false: WrongName}[f.ID == Currency], Min: 1, Max: 4}
		}
		*s.textOf(f.ID) = text
	case f.Kind == Text:
		*s.textOf(f.ID) = value
	case f.Kind == Months:
		m, p := f.readMonths(value)
		if p != nil {
			return p
		}
		*s.MonthsOf(f.ID) = m
	case f.Kind == Hours:
		b, ok := readHours(value)
		if !ok || f.ID == SecondHours && (b.AllDay || b.FollowsSun()) {
			return &Problem{Field: f.ID, Code: WrongHours}
		}
		if f.ID == SecondHours {
			s.Backup.Second = Span{b.Start, b.End}
		} else {
			b.Second = s.Backup.Second
			s.Backup = b
		}
	case f.Kind == Choice:
		for i, name := range f.Choices {
			if name == value {
				f.Set(s, float64(i))
				return nil
			}
		}
		return &Problem{Field: f.ID, Code: UnknownChoice}
	case f.Optional && value == noneText:
		f.Set(s, Unknown)
	default:
		v, ok := f.readSteps(value)
		if !ok {
			return &Problem{Field: f.ID, Code: NotANumber, Min: f.Min, Max: f.Max}
		}
		if p := f.Check(v); p != nil {
			return p
		}
		f.Set(s, v)
	}
	return s.problem(f)
}

// readSteps reads a number of steps: whole, of a fine field with a decimal.
func (f *Field) readSteps(text string) (v float64, ok bool) {
	whole, decimals, _ := strings.Cut(text, ".")
	switch {
	case decimals == "":
		text += "0"
	case f.Fine() && len(decimals) == 1:
		text = whole + decimals
	}
	n, err := strconv.ParseInt(text, 10, 44)
	return f.ofParts(n), err == nil
}
