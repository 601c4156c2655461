package foresight

import (
	"strings"
	"testing"

	"suncask/engine/plan"
)

func TestCurve_Drawn(t *testing.T) {
	points := []plan.At{{Value: 80, Cost: 50, CoolUses: 20}, {Value: 160, Cost: 80, CoolUses: 6}, {Value: 240, Cost: 100, CoolUses: 0}}
	line, area, bars := Curve(points, 80, 240, 5)
	if line != "M0 35L 50 17" && line != "M0 35 L50 17 L100 5" {
		t.Errorf("line %s", line)
	}
	if !strings.HasPrefix(area, line) || !strings.HasSuffix(area, "L100 40H0z") {
		t.Errorf("area %s", area)
	}
	// Up to half the way from 160 to 240: 0 to 75 of 100.
	if n := strings.Count(bars, "M"); n < 30 || n > 32 || strings.Contains(bars, "M77") {
		t.Errorf("%d bars: %s", n, bars)
	}
	if line, area, bars := Curve(points[:1], 80, 240, 5); line+area+bars != "" {
		t.Error("one point is drawn")
	}
	if Mark(300, 80, 240) != "M100 0V40" || Mark(80, 80, 240) != "M0 0V40" {
		t.Error("a value beyond the range is not at its end")
	}
}
