package tariff

// GridCarbon is how much CO2 equivalent a country's electricity causes, g a kWh over the
// life of its power stations, means of a year: Our World in Data, "carbon intensity of
// electricity generation", 2023, read in a copy of its table; rounded.
type GridCarbon struct {
	Country  string
	GramsKWh float64
	Year     int
}

var carbon = [...]GridCarbon{
	{"Australia", 549, 2023},
	{"Botswana", 848, 2022},
	{"Brazil", 98, 2023},
	{"China", 582, 2023},
	{"Cyprus", 534, 2023},
	{"Egypt", 570, 2023},
	{"France", 56, 2023},
	{"Germany", 381, 2023},
	{"Ghana", 484, 2022},
	{"Greece", 337, 2023},
	{"India", 713, 2023},
	{"Ireland", 291, 2023},
	{"Israel", 583, 2022},
	{"Italy", 331, 2023},
	{"Japan", 485, 2023},
	{"Kenya", 70, 2023},
	{"Mexico", 507, 2023},
	{"Morocco", 630, 2023},
	{"Mozambique", 136, 2022},
	{"Namibia", 59, 2022},
	{"Netherlands", 268, 2023},
	{"New Zealand", 113, 2023},
	{"Nigeria", 523, 2023},
	{"Norway", 30, 2023},
	{"Pakistan", 441, 2023},
	{"Philippines", 611, 2023},
	{"Poland", 662, 2023},
	{"Portugal", 166, 2023},
	{"South Africa", 708, 2023},
	{"Spain", 174, 2023},
	{"Sweden", 41, 2023},
	{"Thailand", 550, 2023},
	{"Turkey", 465, 2023},
	{"United Kingdom", 238, 2023},
	{"United States", 369, 2023},
	{"Zambia", 112, 2022},
	{"Zimbabwe", 298, 2022},
}

// Carbon returns a country's figure; ok is false for those that are not in the table.
func Carbon(country string) (c GridCarbon, ok bool) {
	for _, c := range carbon {
		if c.Country == country {
			return c, true
		}
	}
	return c, false
}
