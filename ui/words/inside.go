//go:build !outside

package words

// English is the catalogue in which the page is built.
func English() *Catalogue { return &english }

// Spanish is the second language's.
func Spanish() *Catalogue { return &spanish }

// Shown is the catalogue that the page shows.
func Shown() *Catalogue { return &english }
