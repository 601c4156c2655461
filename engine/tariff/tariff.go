// Package tariff knows what bought electricity costs: prices by hour, day of the week and
// month, prices that rise with a month's use, and what is paid for what is fed back.
package tariff

// Tariff is a price for each hour. Money is in any currency.
type Tariff struct {
	PerKWh float64 // outside all bands, up to the first block
	Bands  []Band  // of those that hold at a time, the first counts
	Blocks []Block // in ascending order; they raise the price outside all bands
	Export float64 // paid for a kWh that is fed back
	// ExportKWh is up to how many of them in a month, 0: for all; ExportRest is paid beyond.
	ExportKWh, ExportRest float64
}

// Days are those of a week on which a band holds.
type Days int8

const (
	EveryDay Days = iota
	Weekdays      // Monday to Friday
	Weekends
)

// Band is another price in some hours, from From to To, minutes after local midnight. It
// may wrap past midnight, where each half belongs to its own day; equal edges are the
// whole day. It holds from month First to month Last (0 to 11), which may wrap too.
type Band struct {
	From, To    int
	Days        Days
	First, Last int
	PerKWh      float64
}

// Block is the price of a month's kilowatt-hours beyond FromKWh.
type Block struct{ FromKWh, PerKWh float64 }

// Weekend tells whether a day of the year (0 to 364) is a Saturday or a Sunday: a year
// begins on a Monday here.
func Weekend(day int) bool { return day%7 >= 5 }

// At returns the price at a minute (0 to 1439) of a day in a month (0 to 11), and whether
// it is the price outside all bands, which blocks raise.
func (t *Tariff) At(month int, weekend bool, minute int) (perKWh float64, base bool) {
	for i := range t.Bands {
		if b := &t.Bands[i]; b.holds(month, weekend) && within(minute, b.From, b.To) {
			return b.PerKWh, false
		}
	}
	return t.PerKWh, true
}

func (b *Band) holds(month int, weekend bool) bool {
	if b.Days == Weekdays && weekend || b.Days == Weekends && !weekend {
		return false
	}
	if b.First <= b.Last {
		return month >= b.First && month <= b.Last
	}
	return month >= b.First || month <= b.Last
}

// within tells whether a minute lies in hours that may wrap past midnight.
func within(minute, from, to int) bool {
	switch {
	case from == to:
		return true
	case from < to:
		return minute >= from && minute < to
	}
	return minute >= from || minute < to
}

// OnePrice tells whether a kilowatt-hour costs the same whenever it is bought, however
// many there are, and nothing is paid for what is fed back.
func (t *Tariff) OnePrice() bool {
	for i := range t.Bands {
		if t.Bands[i].PerKWh != t.PerKWh {
			return false
		}
	}
	return len(t.Blocks) == 0 && !t.PaysExport()
}

// PaysExport tells whether anything is paid for what is fed back.
func (t *Tariff) PaysExport() bool { return t.Export > 0 || t.ExportKWh > 0 && t.ExportRest > 0 }

// Fed is what is paid for a month's kilowatt-hours that are fed back.
func (t *Tariff) Fed(kWh float64) float64 {
	if t.ExportKWh == 0 || kWh <= t.ExportKWh {
		return t.Export * kWh
	}
	return t.Export*t.ExportKWh + t.ExportRest*(kWh-t.ExportKWh)
}

// Month is what a month's kilowatt-hours outside all bands cost.
func (t *Tariff) Month(kWh float64) float64 {
	sum, price, from := 0.0, t.PerKWh, 0.0
	for _, b := range t.Blocks {
		if kWh <= b.FromKWh {
			break
		}
		sum += (b.FromKWh - from) * price
		price, from = b.PerKWh, b.FromKWh
	}
	return sum + (kWh-from)*price
}

// Marginal is the price of the next kilowatt-hour outside all bands after so many in a
// month: what one more costs, and one less saves.
func (t *Tariff) Marginal(kWh float64) float64 {
	price := t.PerKWh
	for _, b := range t.Blocks {
		if kWh < b.FromKWh {
			break
		}
		price = b.PerKWh
	}
	return price
}
