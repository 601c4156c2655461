//go:build !outside

package words

// English is the catalogue in which the page is built.
func English() *Catalogue { return &english }

// Spanish is the second language's.
func Spanish() *Catalogue { return &spanish }

// All are the catalogues in the order of Languages.
func All() []*Catalogue { return []*Catalogue{&english, &spanish, &french, &portuguese} }

// Shown is the catalogue that the page shows.
func Shown() *Catalogue { return &english }
