package main

import (
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"strings"

	"suncask/ui/state"
	"suncask/ui/view"
)

// picture is a drawing of the example's dial: its name, its size, and how much of its height
// the dial takes.
type picture struct {
	name          string
	width, height int
	share         float64
}

// Of an icon that the device cuts, the middle four fifths stay.
var pictures = []picture{
	{"icon", 512, 512, 1},
	{"icon-cut", 512, 512, 0.78},
	{"preview", 1200, 630, 0.92},
}

// icons draws the icons and the preview of shared links from the dial, as SVG files that
// site/src/icons.mjs turns into pictures.
func icons() error {
	css, err := os.ReadFile(tokens)
	if err != nil {
		return err
	}
	colour := func(token string) string {
		found := regexp.MustCompile(`--` + token + `: (?:light-dark\()?(#[0-9a-f]+)`).FindSubmatch(css) // the first is the light one
		if found == nil {
			err = fmt.Errorf("%s has no colour %s", tokens, token)
			return ""
		}
		return string(found[1])
	}
	frame := map[[2]string]string{}
	for _, a := range view.New().Frame(state.Open("")) {
		frame[[2]string{a.ID, a.Name}] = a.Value
	}
	var b strings.Builder
	add := func(id, style string) {
		fmt.Fprintf(&b, `<path d="%s" %s/>`, frame[[2]string{id, "d"}], style)
	}
	fmt.Fprintf(&b, `<circle cx="180" cy="174" r="181" fill="%s"/>`, colour("page"))
	add("petals", fmt.Sprintf(`fill="%s" stroke="%s" stroke-width="2.5"`, colour("petal"), colour("petal-edge")))
	add("staves-night", fmt.Sprintf(`fill="%s"`, colour("night")))
	add("staves-day", fmt.Sprintf(`fill="%s" stroke="%s" stroke-width=".5"`, colour("day"), colour("line")))
	add("window-staves-0", fmt.Sprintf(`fill="%s" stroke="%s" stroke-width="2"`, colour("violet"), colour("violet-deep")))
	add("price-ring", fmt.Sprintf(`fill="%s"`, colour("price")))
	add("pool", fmt.Sprintf(`fill="%s"`, colour("teal")))
	fmt.Fprintf(&b, `<circle cx="180" cy="174" r="44" fill="%s"/>`, colour("page"))
	for _, grip := range []string{"grip-0", "grip-1"} {
		fmt.Fprintf(&b, `<g transform="%s">`, frame[[2]string{grip, "transform"}])
		add(grip+"-body", fmt.Sprintf(`fill="%s" stroke="%s" stroke-width="2"`, colour("raised"), colour("violet-deep")))
		b.WriteString(`</g>`)
	}
	for _, p := range pictures {
		const across = 366 // of the dial with its grips
		high := across / p.share
		wide := high * float64(p.width) / float64(p.height)
		text := fmt.Sprintf(`<svg xmlns="http://www.w3.org/2000/svg" width="%d" height="%d" viewBox="%.1f %.1f %.1f %.1f">`, p.width, p.height, 180-wide/2, 174-high/2, wide, high)
		if p.share < 1 {
			text += fmt.Sprintf(`<path fill="%s" d="M-999-999h2999v2999H-999z"/>`, colour("page"))
		}
		if err := os.WriteFile(filepath.Join(dist, p.name+".svg"), []byte(text+b.String()+"</svg>\n"), 0o644); err != nil {
			return err
		}
	}
	return err
}
