package visit

import "math"

// Joint is what a joint between strings and element adds to the cable, ohm, and turns to heat, W,
// by the volts at both ends and the amps under load: (Va - Ve)/I - R. A little below 0 is the
// meters' own doubt. ok is false without current, and where volts rise along the cable: leads are
// crossed, or the two were not read at once.
func Joint(stringsV, elementV, amps, cableOhms float64) (ohms, watts float64, ok bool) {
	if !(amps > 0 && cableOhms >= 0 && stringsV >= elementV) {
		return 0, 0, false
	}
	ohms = (stringsV-elementV)/amps - cableOhms
	return ohms, ohms * amps * amps, true
}

// FaultModules is after how many modules from the negative end one fault lies that joins a string
// to earth, by the volts from its plus and its minus to earth: N |V-|/(V+ - V-). ok is false where
// they are not those of one fault.
func FaultModules(inString int, plusV, minusV float64) (modules float64, ok bool) {
	if !(plusV-minusV > 0) || plusV < 0 || minusV > 0 || inString < 1 {
		return 0, false
	}
	return float64(inString) * -minusV / (plusV - minusV), true
}

// ParallelMegohm is what strings measure together whose insulation to earth is known one by one,
// megohm: 1/sum(1/R). A reading of zero makes all of it zero; ok is false without readings, and
// where one is below zero.
func ParallelMegohm(each ...float64) (megohm float64, ok bool) {
	sum := 0.0
	for _, r := range each {
		if !(r >= 0) {
			return 0, false
		}
		sum += 1 / math.Abs(r) // a zero written -0 is a short, too
	}
	return 1 / sum, len(each) > 0
}
