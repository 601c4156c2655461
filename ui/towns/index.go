package towns

import "sort"

// index finds the words of all names by their first two bytes.
type index struct {
	text    string   // all names folded, a line a town
	lines   []int32  // where each town's line begins
	letters []uint32 // of each name in turn, which letters it has
	words   []int32  // where words begin, in the order of their first two bytes
	from    []int32  // of each pair of bytes, where its words begin in words
}

const pairCount = 1 << 16

// indexer makes an index in steps.
type indexer struct {
	index
	names  []string
	folded []byte
	found  []int32 // where words begin, in the order of the text
	done   bool
}

// stepTowns are folded in one step.
const stepTowns = 1000

func newIndexer(names []string) indexer {
	return indexer{names: names, index: index{lines: make([]int32, 0, len(names)), from: make([]int32, pairCount+1)}}
}

// step folds some names, or sorts the words of all by counting; false when it is over.
func (x *indexer) step() bool {
	if x.done {
		return false
	}
	if len(x.lines) < len(x.names) {
		for _, n := range x.names[len(x.lines):min(len(x.names), len(x.lines)+stepTowns)] {
			x.add(n)
		}
		return true
	}
	x.text = string(x.folded)
	x.sort()
	x.folded, x.found, x.done = nil, nil, true
	return false
}

// add folds the names of one town.
func (x *indexer) add(names string) {
	at := len(x.folded)
	x.lines = append(x.lines, int32(at))
	x.folded = append(appendFolded(x.folded, names), '\n')
	begins, letters := true, uint32(0)
	for i, c := range x.folded[at:] {
		switch {
		case c == ';' || c == '\n':
			x.letters = append(x.letters, letters)
			begins, letters = true, 0
			continue
		case c == ' ':
			begins = true
			continue
		case begins:
			x.found = append(x.found, int32(at+i))
			begins = false
		}
		letters |= letterOf(c)
	}
}

func (x *indexer) sort() {
	pair := func(at int32) int { return int(x.text[at])<<8 | int(x.text[at+1]) }
	for _, at := range x.found {
		x.from[pair(at)+1]++
	}
	for i := range pairCount {
		x.from[i+1] += x.from[i]
	}
	next := append([]int32(nil), x.from[:pairCount]...)
	x.words = make([]int32, len(x.found))
	for _, at := range x.found {
		p := pair(at)
		x.words[next[p]] = at
		next[p]++
	}
}

// candidates are the words that may begin as a folded text does.
func (x *index) candidates(text string) []int32 {
	if len(text) == 1 {
		return x.words[x.from[int(text[0])<<8]:x.from[(int(text[0])+1)<<8]]
	}
	p := int(text[0])<<8 | int(text[1])
	return x.words[x.from[p]:x.from[p+1]]
}

// townAt is the town on whose line a byte of the text stands.
func (x *index) townAt(at int32) int {
	return sort.Search(len(x.lines), func(i int) bool { return x.lines[i] > at }) - 1
}
