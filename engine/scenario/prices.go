package scenario

import (
	"fmt"
	"strconv"
	"strings"

	"suncask/engine/tariff"
)

// How many bands and blocks a tariff may have.
const (
	MostBands  = 12
	MostBlocks = 6
)

// Days in the text of bands.
const (
	onWeekdays = "wd"
	onWeekends = "we"
)

// ReadBands reads prices of some hours between commas, semicolons or spaces: hours by the
// clock, a colon, a price, as 2200-0600:0.12. Before the hours may stand wd (Monday to
// Friday) or we (the weekend), and before these months and a slash: 11-2/wd1700-2000:0.5.
// ok is false for anything else, for a price beyond Price's range, and for too many.
func ReadBands(text string) (list []tariff.Band, ok bool) {
	for _, entry := range entries(text) {
		b := tariff.Band{Last: 11}
		if months, rest, cut := strings.Cut(entry, "/"); cut {
			from, to, _ := strings.Cut(months, "-")
			a, ok1 := wholeNumber(from, 1, 12)
			z, ok2 := wholeNumber(to, 1, 12)
			if !ok1 || !ok2 {
				return nil, false
			}
			b.First, b.Last, entry = a-1, z-1, rest
		}
		if rest, cut := strings.CutPrefix(entry, onWeekdays); cut {
			b.Days, entry = tariff.Weekdays, rest
		} else if rest, cut := strings.CutPrefix(entry, onWeekends); cut {
			b.Days, entry = tariff.Weekends, rest
		}
		hours, price, _ := strings.Cut(entry, ":")
		from, to, _ := strings.Cut(hours, "-")
		a, ok1 := readClock(from)
		z, ok2 := readClock(to)
		p, ok3 := readPrice(price)
		if !ok1 || !ok2 || !ok3 {
			return nil, false
		}
		b.From, b.To, b.PerKWh = a, z, p
		list = append(list, b)
	}
	return list, len(list) <= MostBands
}

// WriteBands is their one text.
func WriteBands(list []tariff.Band) string {
	var parts []string
	for _, b := range list {
		text := ""
		if b.First != 0 || b.Last != 11 {
			text = fmt.Sprintf("%d-%d/", b.First+1, b.Last+1)
		}
		text += [...]string{"", onWeekdays, onWeekends}[b.Days]
		parts = append(parts, text+clock(b.From)+"-"+clock(b.To)+":"+number(b.PerKWh))
	}
	return strings.Join(parts, ",")
}

// ReadBlocks reads blocks of a month's use between commas, semicolons or spaces: from how
// many kilowatt-hours on, a colon, the price: 100:0.15, 300:0.22. They must ascend.
func ReadBlocks(text string) (list []tariff.Block, ok bool) {
	for _, entry := range entries(text) {
		from, price, _ := strings.Cut(entry, ":")
		kWh, ok1 := wholeNumber(from, 1, 10000)
		p, ok2 := readPrice(price)
		if !ok1 || !ok2 || len(list) > 0 && float64(kWh) <= list[len(list)-1].FromKWh {
			return nil, false
		}
		list = append(list, tariff.Block{FromKWh: float64(kWh), PerKWh: p})
	}
	return list, len(list) <= MostBlocks
}

// WriteBlocks is their one text.
func WriteBlocks(list []tariff.Block) string {
	var parts []string
	for _, b := range list {
		parts = append(parts, number(b.FromKWh)+":"+number(b.PerKWh))
	}
	return strings.Join(parts, ",")
}

// Tariff is the scenario's; its texts must be ones that Problems accepts. The hours of
// low price come after all bands.
func (s *Scenario) Tariff() tariff.Tariff {
	t := tariff.Tariff{PerKWh: s.Price, Export: s.ExportPrice, ExportKWh: s.ExportKWh, ExportRest: s.ExportRest}
	t.Bands, _ = ReadBands(s.Bands)
	t.Blocks, _ = ReadBlocks(s.Blocks)
	if s.LowFrom != s.LowTo {
		t.Bands = append(t.Bands, tariff.Band{From: s.LowFrom, To: s.LowTo, Last: 11, PerKWh: s.LowPrice})
	}
	return t
}

// entries are the parts of a list between commas, semicolons or spaces.
func entries(text string) []string {
	return strings.FieldsFunc(text, func(r rune) bool { return r == ',' || r == ';' || r == ' ' })
}

func wholeNumber(text string, least, most int) (n int, ok bool) {
	n, err := strconv.Atoi(text)
	return n, err == nil && n >= least && n <= most
}

func clock(minute int) string { return pad(minute/60) + pad(minute%60) }

func readPrice(text string) (price float64, ok bool) {
	price, err := strconv.ParseFloat(text, 64)
	f := FieldOf(Price)
	return price, err == nil && f.Check(price) == nil
}

func number(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }
