package state

import (
	"slices"
	"strings"

	"suncask/engine/lesson"
	"suncask/engine/visit"
)

// Entry is one of the three ways into the page.
type Entry int8

const (
	Home Entry = iota
	Visit
	Lesson
	Entries
)

// entries are their names in links.
var entries = [Entries]string{"home", "visit", "lesson"}

const entryKey = "view="

// Name is an entry's name in links and ids.
func (e Entry) Name() string { return entries[e] }

// cutEntry takes the entry out of a link's fragment. One that is not known stays there, where it
// is refused like any other unknown key.
func cutEntry(fragment string) (e Entry, rest string) {
	fragment = strings.TrimPrefix(fragment, "#")
	parts := strings.Split(fragment, "&")
	for i, part := range parts {
		for e := range Entries {
			if part == entryKey+e.Name() {
				return e, strings.Join(append(parts[:i:i], parts[i+1:]...), "&")
			}
		}
	}
	return Home, fragment
}

// expKey stands before the name of an experiment in a link.
const expKey = "exp="

// bigPart asks for letters that are read from the back of a room.
const bigPart = "big=1"

// cutBig takes that out of a lesson's link.
func (s *Store) cutBig(fragment string) (big bool, rest string) {
	parts := strings.Split(fragment, "&")
	if i := slices.Index(parts, bigPart); i >= 0 && s.Entry == Lesson {
		return true, strings.Join(slices.Delete(parts, i, i+1), "&")
	}
	return false, fragment
}

// cutExperiment takes an experiment's name out of a lesson's link, and puts its house before the
// fields that are left, unless they are a whole link. One that is not known stays there, where it is
// refused like any other unknown key.
func (s *Store) cutExperiment(fragment string) (name, rest string) {
	parts := strings.Split(fragment, "&")
	for i, part := range parts {
		name, ok := strings.CutPrefix(part, expKey)
		if !ok || s.Entry != Lesson {
			continue
		}
		if at, known := lesson.ByName(name); known {
			rest = strings.Join(append(parts[:i:i], parts[i+1:]...), "&")
			if !strings.HasPrefix(rest, "v=") {
				rest = lesson.Experiments()[at].With(rest)
			}
			return name, rest
		}
	}
	return "", fragment
}

// readKey stands before readings in a link.
const readKey = "read="

// cutReadings takes what was read at a house out of a link's fragment. Readings that are none stay
// there, where they are refused like any other unknown key.
func cutReadings(fragment string) (r visit.Readings, rest string) {
	parts := strings.Split(fragment, "&")
	for i, part := range parts {
		if text, ok := strings.CutPrefix(part, readKey); ok {
			if r, err := visit.ParseReadings(text); err == nil {
				return r, strings.Join(append(parts[:i:i], parts[i+1:]...), "&")
			}
		}
	}
	return nil, fragment
}

// WithReadings is a link with what was read at the house.
func WithReadings(link string, r visit.Readings) string {
	if len(r) == 0 {
		return link
	}
	return link + "&" + readKey + r.String()
}

// In is the link of a house that opens by the entry that the page is in.
func (s *Store) In(link string) string {
	if s.Entry == Home {
		return link
	}
	link += "&" + entryKey + s.Entry.Name()
	if s.Entry == Lesson && s.Exp != "" {
		link += "&" + expKey + s.Exp
	}
	if s.Entry == Lesson && s.Big {
		link += "&" + bigPart
	}
	return link
}

// Address is the fragment that restores the scenario and the entry.
func (s *Store) Address() string { return s.In(s.Link()) }
