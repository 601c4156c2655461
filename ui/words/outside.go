//go:build outside

package words

var shown *Catalogue

// Shown is the catalogue that the page shows. With this build tag no language is in the
// program; each is a file beside it, so that the WebAssembly is smaller.
func Shown() *Catalogue { return shown }

// Use makes a catalogue the one that is shown. Call it once, before anything else of this
// package.
func Use(c *Catalogue) { shown = c }
