package main

import (
	"os"
	"path/filepath"
)

// tokens is the part of the stylesheet that names its colours.
const tokens = "site/static/css/tokens.css"

// styles are the parts of the stylesheet in their order: of two rules that weigh the same, the
// later one holds.
var styles = []string{"tokens", "controls", "frame", "result", "day", "house", "over", "screens", "charts"}

// stylesheet writes them as one.
func stylesheet() error {
	var all []byte
	for _, name := range styles {
		raw, err := os.ReadFile(filepath.Join("site/static/css", name+".css"))
		if err != nil {
			return err
		}
		all = append(all, raw...)
	}
	for _, name := range []string{"visit.css", "lesson.css"} { // come with their texts
		if err := copyFile(filepath.Join("site/static/css", name), filepath.Join(dist, name)); err != nil {
			return err
		}
	}
	return os.WriteFile(filepath.Join(dist, "suncask.css"), all, 0o644)
}
