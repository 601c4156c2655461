package visit

import (
	"errors"
	"strings"
	"testing"
)

// What is written is read again; zero is a reading, and so is what lies below it.
func TestReadings_Property(t *testing.T) {
	for _, text := range []string{"", "v1:207.4", "ri:0", "v1:-208", "d0:20261201,d1:20270301,m0:1200.5,m1:1299.9", "f1:1,f6:0,lb:790,li:800,tc:42.6"} {
		r, err := ParseReadings(text)
		if err != nil || r.String() != text {
			t.Errorf("%q becomes %q, %v", text, r.String(), err)
		}
	}
	if r, _ := ParseReadings("ri:0"); len(r) != 1 {
		t.Error("a reading of zero is lost")
	}
}

func TestParseReadings_Refuses(t *testing.T) {
	for _, text := range []string{",", "v1", "v1:", "v1:x", "v7:200", "v0:200", "zz:1", "v1:1,v1:2", "v1:1e3", "v1:NaN", "v1:Inf", "v1:1501", "li:-1", "s1:-1", "v1:200,", "d0:1", "v1:0x10", "V1:3", "f1:2", "f7:1"} {
		r, err := ParseReadings(text)
		var refused *ReadingError
		if !errors.As(err, &refused) || r != nil {
			t.Errorf("%q becomes %v, %v", text, r, err)
		}
	}
	if _, err := ParseReadings(strings.Repeat("x", 5000)); err == nil || len(err.Error()) > 100 {
		t.Errorf("a long text: %v", err)
	}
}

func FuzzParseReadings(f *testing.F) {
	f.Add("v1:207.4,ri:0")
	f.Fuzz(func(t *testing.T, text string) {
		r, err := ParseReadings(text)
		if err != nil {
			return
		}
		again, err := ParseReadings(r.String())
		if err != nil || again.String() != r.String() || len(r) > MostReadings {
			t.Errorf("%q becomes %q, then %q, %v", text, r.String(), again.String(), err)
		}
	})
}
