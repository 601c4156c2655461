// Package towns finds towns of the world by name and by position.
//
// The list is a text, dist/towns.txt, made from GeoNames when the site is built. Its parts
// stand between empty lines: whose it is; countries (code, English and Spanish name, other
// names); groups of towns that follow each other (country, region, zone of the IANA data base,
// how many); and of each town in that order its names, latitude and longitude in hundredths of a
// degree, metres above the sea (- where unknown), and a step of size; last, by zone, the
// outposts: smaller places whose clock is another than their nearest town's; and "end". Tabs part what
// stands on a line, semicolons part names and outposts.
package towns

import (
	"fmt"
	"math"
	"strconv"
	"strings"
)

// List is a list that was read.
type List struct {
	countries []country
	groups    []group
	names     []string // of each town, with semicolons
	lat, lon  []int16  // hundredths of a degree
	height    []int16  // m, noHeight where unknown
	size      []int16  // twice the binary logarithm of people over 15,000
	outposts  []outpost
	index     index
}

type outpost struct {
	lat, lon int16 // hundredths of a degree
	zone     string
}

type country struct{ code, english, shown, folded string }

type group struct {
	country              int
	region, zone, folded string
	first                int // town
}

const noHeight = math.MinInt16

// Town is one of the list.
type Town struct {
	Name, Region   string
	Country        string // in the language of the list
	English        string // the country's name in English
	Zone           string // of the IANA data base
	LatDeg, LonDeg float64
	HeightM        float64 // NaN where unknown
}

// Read reads a list, with the countries' names in a language, "en" or "es".
func Read(text, language string) (*List, error) {
	r, err := NewReader(text, language)
	if err != nil {
		return nil, err
	}
	for r.Step() {
	}
	return r.List()
}

// Reader reads a list in steps of a millisecond or two.
type Reader struct {
	list    *List
	columns []string // that are not read yet
	indexer
	err error
}

// NewReader begins to read a list.
func NewReader(text, language string) (*Reader, error) {
	parts := strings.Split(strings.TrimSuffix(text, "\n"), "\n\n")
	if len(parts) != 10 || parts[9] != "end" {
		return nil, fmt.Errorf("towns: %d parts, want 10", len(parts))
	}
	l := &List{}
	if err := l.readCountries(parts[1], language); err != nil {
		return nil, err
	}
	l.names = strings.Split(parts[3], "\n")
	if err := l.readGroups(parts[2]); err != nil {
		return nil, err
	}
	if err := l.readOutposts(parts[8]); err != nil {
		return nil, err
	}
	return &Reader{list: l, columns: parts[4:8], indexer: newIndexer(l.names)}, nil
}

// Step does a part of the work; false when all is done or something is wrong.
func (r *Reader) Step() bool {
	l := r.list
	switch {
	case r.err != nil:
		return false
	case len(r.columns) > 0:
		column := func(least, most int) (list []int16) {
			list, r.err = numbers(r.columns[0], len(l.names), least, most)
			return list
		}
		switch len(r.columns) {
		case 4:
			l.lat = column(-9000, 9000)
		case 3:
			l.lon = column(-18000, 18000)
		case 2:
			l.height = column(-500, 9000)
		case 1:
			l.size = column(0, 100)
		}
		r.columns = r.columns[1:]
		return r.err == nil
	}
	return r.indexer.step()
}

// List is what was read, once Step has returned false.
func (r *Reader) List() (*List, error) {
	if r.err != nil {
		return nil, r.err
	}
	r.list.index = r.indexer.index
	return r.list, nil
}

func (l *List) readCountries(text, language string) error {
	for _, line := range strings.Split(text, "\n") {
		f := strings.Split(line, "\t")
		if len(f) != 4 {
			return fmt.Errorf("towns: country %q has %d columns, want 4", line, len(f))
		}
		c := country{code: f[0], english: f[1], shown: f[1], folded: " " + strings.ReplaceAll(Fold(strings.Join(f, " ")), ";", " ")}
		if language == "es" {
			c.shown = f[2]
		}
		l.countries = append(l.countries, c)
	}
	return nil
}

func (l *List) readGroups(text string) error {
	byCode := map[string]int{}
	for i, c := range l.countries {
		byCode[c.code] = i
	}
	first := 0
	for _, line := range strings.Split(text, "\n") {
		f := strings.Split(line, "\t")
		if len(f) != 4 {
			return fmt.Errorf("towns: group %q has %d columns, want 4", line, len(f))
		}
		country, ok := byCode[f[0]]
		n, err := strconv.Atoi(f[3])
		if !ok || err != nil || n < 1 {
			return fmt.Errorf("towns: group %q names no country, or no number of towns", line)
		}
		region, _, _ := strings.Cut(f[1], ";")
		l.groups = append(l.groups, group{country: country, region: region, zone: f[2], folded: " " + strings.ReplaceAll(Fold(f[1]), ";", " "), first: first})
		first += n
	}
	if first != len(l.names) {
		return fmt.Errorf("towns: groups of %d towns, there are %d", first, len(l.names))
	}
	return nil
}

func (l *List) readOutposts(text string) error {
	for _, line := range strings.Split(text, "\n") {
		zone, points, _ := strings.Cut(line, "\t")
		for _, point := range strings.Split(points, ";") {
			lat, lon, _ := strings.Cut(point, " ")
			a, err1 := strconv.Atoi(lat)
			b, err2 := strconv.Atoi(lon)
			if err1 != nil || err2 != nil || a < -9000 || a > 9000 || b < -18000 || b > 18000 {
				return fmt.Errorf("towns: %q is no outpost", point)
			}
			l.outposts = append(l.outposts, outpost{int16(a), int16(b), zone})
		}
	}
	return nil
}

// numbers reads a column of whole numbers; - is noHeight.
func numbers(text string, count, least, most int) ([]int16, error) {
	list := make([]int16, 0, count)
	for len(text) > 0 {
		line, rest, _ := strings.Cut(text, "\n")
		text = rest
		if line == "-" {
			list = append(list, noHeight)
			continue
		}
		n, err := strconv.Atoi(line)
		if err != nil || n < least || n > most {
			return nil, fmt.Errorf("towns: %q is not a number from %d to %d", line, least, most)
		}
		list = append(list, int16(n))
	}
	if len(list) != count {
		return nil, fmt.Errorf("towns: a column has %d lines, want %d", len(list), count)
	}
	return list, nil
}

// Len is how many towns there are.
func (l *List) Len() int { return len(l.names) }

// Town returns one.
func (l *List) Town(i int) Town {
	g := &l.groups[l.groupOf(i)]
	name, _, _ := strings.Cut(l.names[i], ";")
	t := Town{Name: name, Region: g.region, Country: l.countries[g.country].shown, English: l.countries[g.country].english, Zone: g.zone,
		LatDeg: float64(l.lat[i]) / 100, LonDeg: float64(l.lon[i]) / 100, HeightM: math.NaN()}
	if l.height[i] != noHeight {
		t.HeightM = float64(l.height[i])
	}
	return t
}

// groupOf finds a town's group.
func (l *List) groupOf(town int) int {
	low, high := 0, len(l.groups)
	for high-low > 1 {
		if middle := (low + high) / 2; l.groups[middle].first <= town {
			low = middle
		} else {
			high = middle
		}
	}
	return low
}

// Nearest is the town nearest to a point and how far it is along a great circle.
func (l *List) Nearest(latDeg, lonDeg float64) (town int, km float64) {
	n := nearest{latDeg: latDeg, lonDeg: lonDeg, least: math.Inf(1)}
	for i := range l.lat {
		if n.takes(l.lat[i], l.lon[i]) {
			town = i
		}
	}
	return town, n.km()
}

// Zone is the zone of the town or outpost that is nearest to a point, and how far that is.
func (l *List) Zone(latDeg, lonDeg float64) (zone string, km float64) {
	n := nearest{latDeg: latDeg, lonDeg: lonDeg, least: math.Inf(1)}
	for _, o := range l.outposts {
		if n.takes(o.lat, o.lon) {
			zone = o.zone
		}
	}
	town := -1
	for i := range l.lat {
		if n.takes(l.lat[i], l.lon[i]) {
			town = i
		}
	}
	if town >= 0 {
		zone = l.groups[l.groupOf(town)].zone
	}
	return zone, n.km()
}

// nearest keeps the least distance from a point.
type nearest struct{ latDeg, lonDeg, least float64 } // least is a haversine

const rad = math.Pi / 180

// takes tells whether a place is nearer than all before.
func (n *nearest) takes(lat, lon int16) bool {
	// The haversine is at least that of the latitudes alone.
	a := math.Sin((float64(lat)/100 - n.latDeg) / 2 * rad)
	if a *= a; a >= n.least {
		return false
	}
	b := math.Sin((float64(lon)/100 - n.lonDeg) / 2 * rad)
	h := a + math.Cos(n.latDeg*rad)*math.Cos(float64(lat)/100*rad)*b*b
	if h >= n.least {
		return false
	}
	n.least = h
	return true
}

func (n *nearest) km() float64 { return 2 * 6371 * math.Asin(math.Min(1, math.Sqrt(n.least))) }
