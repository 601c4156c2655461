package tank

import "math"

// UsableLitres returns how many litres at useC could be drawn in one go, without
// heating, before the tap falls below useC - tolK:
//
//	sum V_i max(1, (T_i - T_c)/(T_u - T_c))   from the top while T_i >= T_u - tolK
//
// When all water above the inlet zone is warm enough, the zone adds what it
// pushes up before the cold water has thinned it too far; and what a tank ahead holds
// passes through it.
func (t *Tank) UsableLitres(useC, coldC, tolK float64) float64 {
	if useC <= coldC {
		return math.Inf(1)
	}
	least := useC - tolK
	span := useC - coldC
	usable, height := 0.0, t.p.Litres
	for i := t.hi - 1; i >= t.lo; i-- {
		v := t.s[i].v
		if height-v < t.p.InletMixedLitres {
			v = height - t.p.InletMixedLitres
		}
		temp := t.temp(i)
		if v > 0 {
			if temp < least {
				return usable
			}
			usable += v * larger(1, (temp-coldC)/span)
		}
		height -= v
		if height <= t.p.InletMixedLitres {
			break
		}
	}
	switch {
	case t.p.InletMixedLitres == 0 && t.ahead != nil:
		usable += t.ahead.UsableLitres(useC, coldC, tolK)
	case t.ahead != nil:
		usable += t.aheadLitres(useC, coldC, least)
	case t.p.InletMixedLitres > 0:
		usable += zoneLitres(t.p.InletMixedLitres, t.zoneTemp(), useC, coldC, least)
	}
	return usable
}

// zoneTemp is the temperature of the inlet zone once it is mixed.
func (t *Tank) zoneTemp() float64 {
	left, sum := t.p.InletMixedLitres, 0.0
	for i := t.lo; i < t.hi && left > 0; i++ {
		v := lesser(left, t.s[i].v)
		sum += v * t.s[i].x
		left -= v
	}
	return t.a + t.d*sum/(t.p.InletMixedLitres-left)
}

// zoneLitres is what a zone of vm litres at zoneC gives: first mixed with cold
// water down to useC, then undiluted down to leastC.
func zoneLitres(vm, zoneC, useC, coldC, leastC float64) float64 {
	if zoneC <= leastC || leastC <= coldC {
		return 0
	}
	litres := 0.0
	from := zoneC
	if zoneC > useC {
		litres = vm * (zoneC - useC) / (useC - coldC)
		from = useC
	}
	return litres + vm*math.Log((from-coldC)/(leastC-coldC))
}
