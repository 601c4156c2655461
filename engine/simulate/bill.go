package simulate

import (
	"slices"
	"sort"

	"suncask/engine/climate"
	"suncask/engine/scenario"
	"suncask/engine/tariff"
)

// bill is a tariff laid out for runs: what a joule costs from each edge of a day on.
type bill struct {
	tariff     tariff.Tariff
	edges      []int         // minutes at which any band begins or ends, ascending
	prices     [12][2][]rate // by month and weekend: from midnight, then from each edge on
	exportPerJ float64
}

// rate is the price of a joule.
type rate struct {
	perJ float64
	base bool // it rises with the month's use, see Blocks
}

func (p *Prepared) setBill() {
	s := &p.Scenario
	b := bill{tariff: s.Tariff(), exportPerJ: s.ExportPrice / JPerKWh}
	for _, band := range b.tariff.Bands {
		for _, edge := range [2]int{band.From, band.To} {
			if edge > 0 && !slices.Contains(b.edges, edge) {
				b.edges = append(b.edges, edge)
			}
		}
	}
	sort.Slice(b.edges, func(i, j int) bool { return b.edges[i] < b.edges[j] })
	for month := range b.prices {
		for weekend := range b.prices[month] {
			for _, edge := range append([]int{0}, b.edges...) {
				price, base := b.tariff.At(month, weekend == 1, edge)
				if base {
					price = b.tariff.Marginal(s.OtherKWh)
				}
				b.prices[month][weekend] = append(b.prices[month][weekend], rate{price / JPerKWh, base})
			}
		}
	}
	p.bill = b
}

// on returns a day's prices.
func (b *bill) on(day int) []rate {
	weekend := 0
	if tariff.Weekend(day) {
		weekend = 1
	}
	return b.prices[climate.MonthOf(day)][weekend]
}

// Blocks is what blocks make a month's water cost more than its days' sum, which takes the
// price where the house's other use ends.
func (p *Prepared) Blocks(boughtJ float64) float64 {
	b, other := &p.bill.tariff, p.Scenario.OtherKWh
	if len(b.Blocks) == 0 {
		return 0
	}
	kWh := boughtJ / JPerKWh
	return b.Month(other+kWh) - b.Month(other) - b.Marginal(other)*kWh
}

// FedRest is what a month's water costs more than its days' sum because beyond a month's
// first kilowatt-hours that are fed back less is paid; below zero where more is.
func (p *Prepared) FedRest(fedJ float64) float64 {
	kWh := fedJ / JPerKWh
	return p.bill.tariff.Export*kWh - p.bill.tariff.Fed(kWh)
}

// monthMore is what a month costs beside the sum of its days.
func (p *Prepared) monthMore(f *Flows) float64 { return p.Blocks(f.BaseJ) + p.FedRest(f.UnusedSunJ) }

// OnePrice tells whether a bought kilowatt-hour costs the same at all hours.
func (p *Prepared) OnePrice() bool { return p.bill.tariff.OnePrice() }

// Prices hands out the price of a kilowatt-hour through a weekday of a month (0 to 11):
// minutes from which to which, in order.
func (p *Prepared) Prices(month int, band func(from, to int, perKWh float64)) {
	from := 0
	for i, r := range p.bill.prices[month][0] {
		to := scenario.DayMinutes
		if i < len(p.bill.edges) {
			to = p.bill.edges[i]
		}
		band(from, to, r.perJ*JPerKWh)
		from = to
	}
}
