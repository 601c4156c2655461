package published

import (
	"time"
	_ "time/tzdata" // the same on every machine; tests only
)

// Offsets are the hours by which the clocks of an IANA zone are ahead of UTC at noon of the
// first 365 days of a year, by Go's copy of the IANA data.
func Offsets(zone string, year int) (hours [365]float64, err error) {
	at, err := time.LoadLocation(zone)
	if err != nil {
		return hours, err
	}
	for day := range hours {
		_, seconds := time.Date(year, 1, 1+day, 12, 0, 0, 0, at).Zone()
		hours[day] = float64(seconds) / 3600
	}
	return hours, nil
}
