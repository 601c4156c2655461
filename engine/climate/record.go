package climate

import (
	"encoding/binary"
	"fmt"
	"hash/fnv"
	"math"
)

// Record is a year of hourly weather from a file, hour after hour of one clock that
// knows no summer time. Its values are kept in steps, so that two devices that read
// the same file have the same record to the bit.
type Record struct {
	LatDeg, LonDeg float64
	ElevationM     float64 // NaN where unknown
	OffsetH        float64 // its clock less UTC
	Global         [Hours]uint16
	Diffuse        [Hours]uint16 // both: hour's mean on the horizontal, steps of LightStep
	Air            [Hours]int16  // hour's mean, steps of AirStep
}

// Steps of a record's values.
const (
	LightStep = 0.1  // W/m2
	AirStep   = 0.01 // K
)

// recordMagic opens an encoded record and tells its layout.
const recordMagic = "suncask-hours-1\n"

const recordBytes = len(recordMagic) + 4*8 + 3*2*Hours

// Encode writes a record for keeping: 53 kB.
func (r *Record) Encode() []byte {
	out := make([]byte, 0, recordBytes)
	out = append(out, recordMagic...)
	for _, v := range []float64{r.LatDeg, r.LonDeg, r.ElevationM, r.OffsetH} {
		out = binary.LittleEndian.AppendUint64(out, math.Float64bits(v))
	}
	for _, column := range [][]uint16{r.Global[:], r.Diffuse[:]} {
		for _, v := range column {
			out = binary.LittleEndian.AppendUint16(out, v)
		}
	}
	for _, v := range r.Air {
		out = binary.LittleEndian.AppendUint16(out, uint16(v))
	}
	return out
}

// DecodeRecord reads what Encode wrote.
func DecodeRecord(raw []byte) (*Record, error) {
	if len(raw) != recordBytes || string(raw[:len(recordMagic)]) != recordMagic {
		return nil, fmt.Errorf("climate: %d bytes are not a kept weather year of %d", len(raw), recordBytes)
	}
	raw = raw[len(recordMagic):]
	r := &Record{}
	for _, v := range []*float64{&r.LatDeg, &r.LonDeg, &r.ElevationM, &r.OffsetH} {
		*v = math.Float64frombits(binary.LittleEndian.Uint64(raw))
		raw = raw[8:]
	}
	if PointProblem(r.LatDeg, r.LonDeg, r.ElevationM) != "" || !(math.Abs(r.OffsetH) <= 14) {
		return nil, fmt.Errorf("climate: a kept weather year lies at %g, %g", r.LatDeg, r.LonDeg)
	}
	for _, column := range [][]uint16{r.Global[:], r.Diffuse[:]} {
		for i := range column {
			column[i] = binary.LittleEndian.Uint16(raw)
			raw = raw[2:]
		}
	}
	for i := range r.Air {
		r.Air[i] = int16(binary.LittleEndian.Uint16(raw))
		raw = raw[2:]
	}
	return r, nil
}

// Key names a record: the first eight hexadecimal digits of its FNV-1a hash of 64
// bits, enough to tell a person's files apart.
func (r *Record) Key() string {
	h := fnv.New64a()
	h.Write(r.Encode())
	return fmt.Sprintf("%016x", h.Sum64())[:8]
}

// PointName is where the record's weather was, as links write it.
func (r *Record) PointName() string {
	return PointName(r.LatDeg, r.LonDeg, r.ElevationM)
}

// FromRecord puts a record on a place's clock. Its light is moved later by shiftMin
// minutes first, for files whose radiation is off their own clock; temperature
// stays. Monthly means of the returned place are those of the record.
//
// Where hours do not fall on hours, an hour's light is taken to follow the cosine of
// the zenith angle within it, so that no energy is lost or made.
func FromRecord(p *Place, r *Record, shiftMin float64) *Year {
	y := &Year{Place: *p, Measured: true, Sun: SunYearOf(p)}
	y.Place.GHI, y.Place.TempC = [12]float64{}, [12]float64{}
	for i := range Hours {
		day := i / 24
		g, d := float64(r.Global[i])*LightStep, float64(r.Diffuse[i])*LightStep
		y.put(r, i, shiftMin, HourLight{Beam: g - d, Diffuse: d})
		t := float64(r.Air[i]) * AirStep
		y.Place.TempC[MonthOf(day)] += t / 24 / float64(DaysIn[MonthOf(day)])
	}
	for day := range Days {
		for h := range 24 {
			y.AirC[day][h] = r.airAt(float64(day*24+h) + 0.5 - (p.Clock.At(day) - r.OffsetH))
		}
	}
	for m := range 12 {
		sum, extra := 0.0, 0.0
		for day := FirstDay(m); day < FirstDay(m)+DaysIn[m]; day++ {
			extra += y.Sun[day].ExtraJ
			for _, l := range y.Light[day] {
				sum += (l.Beam + l.Diffuse) * 3600
			}
		}
		y.Place.GHI[m] = sum / 3.6e6 / float64(DaysIn[m])
		if y.Place.GHI[m] >= dark && sum < 0.95*extra {
			y.MonthKt[m] = sum / extra
			y.Clear[m] = ClearnessOfSpread(y.MonthKt[m], y.Place.dailySpread(m))
		}
	}
	y.ColdC = y.Place.coldYear()
	return y
}

// put adds an hour of a record to the hours of the place's clock that it overlaps.
func (y *Year) put(r *Record, hour int, shiftMin float64, l HourLight) {
	if l.Beam == 0 && l.Diffuse == 0 {
		return
	}
	// Local clock less the record's, as of the record's day.
	ahead := y.Place.Clock.At(hour/24) - r.OffsetH + shiftMin/60
	if ahead == math.Trunc(ahead) {
		y.add(hour+int(ahead), l)
		return
	}
	y.Sun.Cut(float64(hour)+ahead, 1, func(to int, share float64) {
		y.add(to, HourLight{l.Beam * share, l.Diffuse * share})
	})
}

// add puts light into an hour counted from the year's start, which may lie beyond its
// ends.
func (y *Year) add(hour int, l HourLight) {
	hour = (hour + Hours) % Hours
	to := &y.Light[hour/24][hour%24]
	to.Beam += l.Beam
	to.Diffuse += l.Diffuse
}

// airAt is the temperature at an instant of the record's clock: straight lines
// between the middles of its hours.
func (r *Record) airAt(at float64) float64 {
	at = math.Mod(at-0.5+2*Hours, Hours)
	i := min(int(at), Hours-1)
	part := at - float64(i)
	return (float64(r.Air[i])*(1-part) + float64(r.Air[(i+1)%Hours])*part) * AirStep
}
