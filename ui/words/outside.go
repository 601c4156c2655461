//go:build outside

package words

var english *Catalogue

// English is the catalogue the page shows. With this build tag it is not in the program but
// a file beside it, so that the WebAssembly is smaller.
func English() *Catalogue { return english }

// UseEnglish gives the catalogue. Call it once, before anything else of this package.
func UseEnglish(c *Catalogue) { english = c }
