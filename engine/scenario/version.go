package scenario

// renew turns a scenario that a link of version 1 stood for into one of the latest
// version with the same inputs: what that version assumes otherwise is confirmed.
func (s *Scenario) renew() {
	for {
		now := s.assumed()
		var other FieldSet
		for i := range fields {
			if f := &fields[i]; !s.Known.Has(f.ID) && f.write(s) != f.write(&now) {
				other = other.With(f.ID)
			}
		}
		if other == (FieldSet{}) {
			return
		}
		for i := range other {
			s.Known[i] |= other[i]
		}
	}
}

// assumed is the scenario as the latest version completes its confirmed fields.
func (s *Scenario) assumed() Scenario {
	now := *s
	d := Defaults(LatestVersion)
	for i := range fields {
		if f := &fields[i]; !s.Known.Has(f.ID) {
			f.copy(&now, &d)
		}
	}
	now.Settle()
	return now
}

// copy gives a scenario a field of another.
func (f *Field) copy(to, from *Scenario) {
	switch f.Kind {
	case Text:
		*to.textOf(f.ID) = *from.textOf(f.ID)
	case Months:
		*to.MonthsOf(f.ID) = *from.MonthsOf(f.ID)
	case Hours:
		if f.ID == SecondHours {
			to.Backup.Second = from.Backup.Second
			return
		}
		second := to.Backup.Second
		to.Backup = from.Backup
		to.Backup.Second = second
	default:
		f.Set(to, f.Get(from))
	}
}
