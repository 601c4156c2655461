// Package climate knows places and turns their monthly means into hours: a
// year whose months keep their means, or one day of a chosen clearness.
package climate

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"sync"
)

// Place is a point on earth with its clock and monthly climate.
type Place struct {
	Slug          string // short name in links, unique
	Name, Country string
	LatDeg        float64 // north positive
	LonDeg        float64 // east positive
	ElevationM    float64 // NaN where unknown
	Zone          string  // of the IANA data base; empty for a point
	Clock         Clock
	GHI           [12]float64 // global horizontal irradiation, kWh/m2 a day
	TempC         [12]float64 // air temperature
	Cold          Monthly     // cold water where it is known, degC
	Water         WaterModel  // how the other months of cold water are reckoned
	Source        string
}

// Monthly are monthly values of which some are known.
type Monthly struct {
	Known [12]bool
	Value [12]float64 // 0 where not known
}

// Over returns base with the known values in their place.
func (m *Monthly) Over(base [12]float64) [12]float64 {
	for i, known := range m.Known {
		if known {
			base[i] = m.Value[i]
		}
	}
	return base
}

// The accuracy of places whose source is "core", to be said with every result:
// against 1317 typical-year stations.
const (
	IrradiationErrorPct = 10
	TemperatureErrorK   = 2
)

// Places returns the built-in places in the order of the table. The slice is
// shared: do not change it.
func Places() []Place { return places() }

var places = sync.OnceValue(func() []Place {
	list, err := parsePlaces(table)
	if err != nil {
		panic("climate: built-in table: " + err.Error())
	}
	return list
})

// PlaceBySlug finds a built-in place; ok is false if there is none of that name. It reads
// no more of the table than that place's row.
func PlaceBySlug(slug string) (p *Place, ok bool) {
	if known, ok := bySlug.Load(slug); ok {
		return known.(*Place), true
	}
	at := strings.Index(table, "\n"+slug+",")
	if at < 0 || slug == "" || slug == slugHead || strings.ContainsAny(slug, "#,\n") {
		return nil, false
	}
	line, _, _ := strings.Cut(table[at+1:], "\n")
	row, err := splitRow(line)
	if err != nil {
		panic("climate: built-in table: " + err.Error())
	}
	place, err := parsePlace(row)
	if err != nil {
		panic("climate: built-in table: " + err.Error())
	}
	bySlug.Store(slug, &place)
	return &place, true
}

// bySlug are the places that were asked for.
var bySlug sync.Map

// slugHead heads the column of slugs.
const slugHead = "slug"

const placeColumns = 9 + 24 + 1

func parsePlaces(text string) (list []Place, err error) {
	for n, line := range strings.Split(strings.TrimSpace(text), "\n") {
		if strings.HasPrefix(line, "#") {
			continue
		}
		row, err := splitRow(line)
		if err != nil {
			return nil, fmt.Errorf("line %d: %w", n+1, err)
		}
		if row[0] == slugHead {
			continue
		}
		p, err := parsePlace(row)
		if err != nil {
			return nil, err
		}
		list = append(list, p)
	}
	return list, nil
}

// splitRow cuts a line into its columns; nothing in the table is quoted.
func splitRow(line string) ([]string, error) {
	row := strings.Split(strings.TrimSuffix(line, "\r"), ",")
	if len(row) != placeColumns {
		return nil, fmt.Errorf("wrong number of fields, %d of %d", len(row), placeColumns)
	}
	return row, nil
}

func parsePlace(row []string) (p Place, err error) {
	number := func(column int) float64 {
		v, bad := strconv.ParseFloat(row[column], 64)
		if bad != nil && err == nil {
			err = fmt.Errorf("%s: %s %q is not a number", row[0], columnName(column), row[column])
		}
		return v
	}
	p = Place{
		Slug: row[0], Name: row[1], Country: row[2],
		LatDeg: number(3), LonDeg: number(4), ElevationM: math.NaN(),
		Zone: row[6], Source: row[placeColumns-1],
	}
	clock, ok := readSummer(row[8])
	if !ok {
		return p, fmt.Errorf("%s: summer time %q is not MMDD-MMDD", row[0], row[8])
	}
	p.Clock = clock
	p.Clock.OffsetH = number(7)
	p.Water = waterModel(p.Country, p.LatDeg)
	if row[5] != "" {
		p.ElevationM = number(5)
	}
	for m := range 12 {
		p.GHI[m], p.TempC[m] = number(9+m), number(21+m)
	}
	return p, err
}

// columnName is the heading of a column of the built-in table.
func columnName(column int) string {
	at := strings.Index(table, slugHead+",")
	line, _, _ := strings.Cut(table[max(0, at):], "\n")
	return strings.Split(line, ",")[column]
}
