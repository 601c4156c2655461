package browser

import (
	"encoding/json"
	"fmt"
	"image/png"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// The icons that the manifest names are there, as large as it says and not empty; one may be
// cut by the device, and all addresses stay below wherever the site is.
func TestManifest_Icons(t *testing.T) {
	raw, err := os.ReadFile(filepath.Join(dist, "manifest.webmanifest"))
	if err != nil {
		t.Fatal(err)
	}
	var m struct {
		ID, Scope string
		Start     string `json:"start_url"`
		Icons     []struct{ Src, Sizes, Type, Purpose string }
	}
	if err := json.Unmarshal(raw, &m); err != nil {
		t.Fatal(err)
	}
	if m.ID != "./" || m.Scope != "./" || m.Start != "./" {
		t.Errorf("id %q, scope %q, start %q, want ./ each", m.ID, m.Scope, m.Start)
	}
	seen := map[string]bool{}
	for _, icon := range m.Icons {
		seen[icon.Sizes+" "+icon.Purpose] = true
		f, err := os.Open(filepath.Join(dist, icon.Src))
		if err != nil {
			t.Error(err)
			continue
		}
		defer f.Close()
		if icon.Type != "image/png" {
			continue
		}
		img, err := png.Decode(f)
		if err != nil {
			t.Errorf("%s: %v", icon.Src, err)
			continue
		}
		size := img.Bounds().Size()
		if want := fmt.Sprintf("%dx%d", size.X, size.Y); want != icon.Sizes {
			t.Errorf("%s is %s, the manifest says %s", icon.Src, want, icon.Sizes)
		}
		colours := map[string]bool{}
		for x := range size.X {
			for y := range size.Y {
				r, g, b, _ := img.At(x, y).RGBA()
				colours[fmt.Sprintf("%02x%02x%02x", r>>8, g>>8, b>>8)] = true
			}
		}
		for _, token := range []string{"5b3fa6", "0f7c86", "f5b52e"} { // hours, water, sun
			if !colours[token] {
				t.Errorf("%s has no #%s", icon.Src, token)
			}
		}
	}
	for _, want := range []string{"any any", "192x192 any", "512x512 any", "512x512 maskable"} {
		if !seen[want] {
			t.Errorf("no icon %s in %s", want, strings.TrimSpace(string(raw)))
		}
	}
}
