package hourly

import "testing"

// BenchmarkRead reads a year of EPW, 1.4 MB.
func BenchmarkRead(b *testing.B) {
	raw := join(loadDay(b, "day.epw").year(false))
	b.SetBytes(int64(len(raw)))
	for b.Loop() {
		if _, err := readBytes(raw, lisbon); err != nil {
			b.Fatal(err)
		}
	}
}
