package towns

import "strings"

// leastLetters is how long a text is before names spelled nearly so are looked for.
const leastLetters = 4

// Similar lists towns with a name that differs from a text by one letter, in longer names
// by two: one too many, too few, another, or two exchanged. Fewer first, then the largest.
func (l *List) Similar(text string, most int) []Match {
	name, _, _ := strings.Cut(text, ",")
	want := strings.ReplaceAll(Fold(name), ";", " ")
	if len(want) < leastLetters {
		return nil
	}
	for limit := 1; limit <= 2 && limit*leastLetters <= len(want); limit++ {
		if found := l.within(want, limit, most); len(found) > 0 {
			return found
		}
	}
	return nil
}

func (l *List) within(want string, limit, most int) (best []Match) {
	letters := lettersOf(want)
	at, name := 0, -1
	for town := range l.names {
		for n, end := 0, false; !end; n++ {
			stop := at
			for l.index.text[stop] != ';' && l.index.text[stop] != '\n' {
				stop++
			}
			have := l.index.text[at:stop]
			end = l.index.text[stop] == '\n'
			at = stop + 1
			name++
			if len(have) < len(want)-limit || len(have) > len(want)+limit || strange(letters&^l.index.letters[name]) > limit || differ(want, have, limit) > limit {
				continue
			}
			m := Match{Town: town, Fit: Near}
			if len(best) < most || l.before(m, best[most-1]) {
				m.Name = strings.Split(l.names[town], ";")[n]
				best = l.insert(best, m, most)
			}
		}
	}
	return best
}

// letterOf is a byte in a set of letters, several bytes to a bit, no space.
func letterOf(c byte) uint32 { return 1 << (c & 31) }

func lettersOf(text string) (set uint32) {
	for i := range len(text) {
		if text[i] != ' ' {
			set |= letterOf(text[i])
		}
	}
	return set
}

func strange(set uint32) (n int) {
	for ; set != 0; set &= set - 1 {
		n++
	}
	return n
}

// mostBytes is the longest name that is compared.
const mostBytes = 64

// differ is the restricted distance of Damerau and Levenshtein, in bytes; more than limit
// where it is beyond that.
func differ(a, b string, limit int) int {
	if len(a) > mostBytes || len(b) > mostBytes {
		return limit + 1
	}
	var rows [3][mostBytes + 1]int
	before, last, row := &rows[0], &rows[1], &rows[2]
	for j := range len(b) + 1 {
		last[j] = j
	}
	for i := 1; i <= len(a); i++ {
		row[0] = i
		least := i
		for j := 1; j <= len(b); j++ {
			cost := 1
			if a[i-1] == b[j-1] {
				cost = 0
			}
			d := min(last[j]+1, row[j-1]+1, last[j-1]+cost)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				d = min(d, before[j-2]+1)
			}
			row[j] = d
			least = min(least, d)
		}
		if least > limit {
			return limit + 1
		}
		before, last, row = last, row, before
	}
	return last[len(b)]
}
