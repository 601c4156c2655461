package towns

import (
	"strings"
)

// Fit says how well a name is what was typed; less is better.
type Fit int8

const (
	Whole  Fit = iota // it is one of the names
	Start             // the first name starts so
	Other             // another name does
	Within            // a later word of a name does
	Near              // it is spelled nearly so, see Similar
)

// Match is a town that was found.
type Match struct {
	Town int
	Name string // which of its names
	Fit  Fit

	other bool // it is neither the first name nor the region's
}

// alike are words that are written in two ways.
var alike = [][2]string{{"st", "saint"}, {"saint", "st"}, {"sankt", "st"}, {"st", "sankt"}, {"mt", "mount"}, {"mount", "mt"}, {"ft", "fort"}, {"fort", "ft"}, {"sta", "santa"}, {"sto", "santo"}}

// umlauts are letters that German keyboards elsewhere lack.
var umlauts = strings.NewReplacer("ae", "a", "oe", "o", "ue", "u")

// Search finds at most so many towns by words that begin so, the best fit first, then the
// largest. After the name may come region and country, after a comma or not, by names in English,
// Spanish and their own language, or by codes.
func (l *List) Search(text string, most int) []Match {
	name, rest, comma := strings.Cut(text, ",")
	words := strings.Fields(strings.ReplaceAll(Fold(name), ";", " "))
	where := strings.Fields(strings.ReplaceAll(Fold(rest), ";", " "))
	if len(words) == 0 {
		return nil
	}
	for n := len(words); n > 0; n-- {
		if comma && n < len(words) {
			break
		}
		phrase, tail := strings.Join(words[:n], " "), append(append([]string{}, words[n:]...), where...)
		for _, p := range spellings(phrase) {
			if found := l.find(p, tail, most); len(found) > 0 {
				return found
			}
		}
	}
	if comma && len(where) > 0 { // a part of the address that is no region here
		return l.Search(name, most)
	}
	return nil
}

// spellings are the ways to write a phrase.
func spellings(phrase string) []string {
	list := []string{phrase}
	add := func(p string) {
		for _, have := range list {
			if have == p {
				return
			}
		}
		list = append(list, p)
	}
	for _, a := range alike {
		if p := " " + phrase + " "; strings.Contains(p, " "+a[0]+" ") {
			add(strings.TrimSpace(strings.Replace(p, " "+a[0]+" ", " "+a[1]+" ", 1)))
		}
	}
	add(umlauts.Replace(phrase))
	return list
}

// find lists the towns with a name in which words begin as the phrase, in the region and
// country that the tail tells.
func (l *List) find(phrase string, tail []string, most int) (best []Match) {
	allowed := map[int]bool{}
	for _, at := range l.index.candidates(phrase) {
		text := l.index.text[at:]
		if !strings.HasPrefix(text, phrase) {
			continue
		}
		m := Match{Town: l.index.townAt(at), Fit: Within}
		if at == 0 || l.index.text[at-1] == ';' || l.index.text[at-1] == '\n' {
			m.Fit = Other
			if at == l.index.lines[m.Town] {
				m.Fit = Start
			}
			if end := text[len(phrase)]; end == ';' || end == '\n' {
				m.other = m.Fit == Other && !strings.HasPrefix(l.groups[l.groupOf(m.Town)].folded+" ", " "+phrase+" ")
				m.Fit = Whole
			}
		}
		if len(best) == most && !l.before(m, best[most-1]) {
			continue
		}
		if len(tail) > 0 {
			g := l.groupOf(m.Town)
			in, known := allowed[g]
			if !known {
				in = l.in(g, tail)
				allowed[g] = in
			}
			if !in {
				continue
			}
		}
		m.Name = l.nameAt(m.Town, at)
		best = l.insert(best, m, most)
	}
	return best
}

// in tells whether each word begins a word of the group's region or country.
func (l *List) in(g int, tail []string) bool {
	where := l.groups[g].folded + l.countries[l.groups[g].country].folded
	for _, w := range tail {
		if !strings.Contains(where, " "+w) {
			return false
		}
	}
	return true
}

// nameAt is the name, as written, in which a byte of the folded text stands.
func (l *List) nameAt(town int, at int32) string {
	n := strings.Count(l.index.text[l.index.lines[town]:at], ";")
	return strings.Split(l.names[town], ";")[n]
}

// otherSteps are the steps of size that a town loses which is found by another of its names:
// many are those of old times. Sixteen times the people make up for it. It loses none where its
// region has that name too.
const otherSteps = 8

// before orders matches: fit, size, then the order of the list.
func (l *List) before(a, b Match) bool {
	if a.Fit != b.Fit {
		return a.Fit < b.Fit
	}
	if l.weight(a) != l.weight(b) {
		return l.weight(a) > l.weight(b)
	}
	return a.Town < b.Town
}

func (l *List) weight(m Match) int {
	size := int(l.size[m.Town])
	if m.Fit == Whole && m.other {
		size -= otherSteps
	}
	return size
}

// insert keeps the best matches in order, each town once.
func (l *List) insert(best []Match, m Match, most int) []Match {
	for i := range best {
		if best[i].Town == m.Town {
			if !l.before(m, best[i]) {
				return best
			}
			best = append(best[:i], best[i+1:]...)
			break
		}
	}
	at := len(best)
	for at > 0 && l.before(m, best[at-1]) {
		at--
	}
	if len(best) < most {
		best = append(best, Match{})
	}
	if at < len(best) {
		copy(best[at+1:], best[at:])
		best[at] = m
	}
	return best
}
