package sheets

import (
	"fmt"
	"image"
	"image/color"
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/makiuchi-d/gozxing"
	"github.com/makiuchi-d/gozxing/qrcode"

	"suncask/engine/scenario"
	"suncask/ui/page"
	"suncask/ui/state"
	"suncask/ui/view"
)

// The QR picture, read by another library, is the link: of ordinary houses and of ones with
// every field.
func TestShare_CodeIsTheLink(t *testing.T) {
	r := rand.New(rand.NewPCG(2, 9))
	for i := range 20 {
		s := scenario.Defaults(scenario.LatestVersion)
		for _, f := range scenario.Fields() {
			if f.Kind == scenario.Number && r.IntN(20) < i {
				s.Known = s.Known.With(f.ID)
			}
		}
		p := page.New(state.Open(""), view.New())
		p.LinkShown = "https://example.org/suncask/#" + scenario.Encode(&s)
		c := &Share{p}
		if got := decode(t, c.dark(), c.frame()); got != p.LinkShown {
			t.Errorf("%d bytes: read %q", len(p.LinkShown), got)
		}
	}
	p := page.New(state.Open(""), view.New())
	p.LinkShown = strings.Repeat("x", 4000)
	if path := (&Share{p}).dark(); path != "" {
		t.Error("4000 bytes have a code")
	}
}

// decode draws a path of runs and reads it.
func decode(t *testing.T, path, frame string) string {
	t.Helper()
	var side int
	if _, err := fmt.Sscanf(frame, "0 0 %d", &side); err != nil {
		t.Fatal(err)
	}
	const scale = 4
	img := image.NewGray(image.Rect(0, 0, side*scale, side*scale))
	for i := range img.Pix {
		img.Pix[i] = 255
	}
	for _, run := range strings.Split(path, "z") {
		var x, y, n int
		if _, err := fmt.Sscanf(run, "M%d %dh%d", &x, &y, &n); err != nil {
			continue
		}
		for px := x * scale; px < (x+n)*scale; px++ {
			for py := y * scale; py < (y+1)*scale; py++ {
				img.SetGray(px, py, color.Gray{})
			}
		}
	}
	bitmap, err := gozxing.NewBinaryBitmapFromImage(img)
	if err != nil {
		t.Fatal(err)
	}
	// A picture without a camera between: the library's search for the corners misses one in
	// thirty, whatever the mask.
	pure := map[gozxing.DecodeHintType]any{gozxing.DecodeHintType_PURE_BARCODE: true}
	result, err := qrcode.NewQRCodeReader().Decode(bitmap, pure)
	if err != nil {
		return err.Error()
	}
	return result.GetText()
}
