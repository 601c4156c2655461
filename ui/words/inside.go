//go:build !outside

package words

// English is the catalogue the page shows.
func English() *Catalogue { return &english }
