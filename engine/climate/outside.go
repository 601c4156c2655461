//go:build outside

package climate

// table is places.csv. With this build tag it is not in the program but a file beside it,
// so that the WebAssembly is smaller.
var table string

// UseTable gives the table of places. Call it once, before anything else of this package.
func UseTable(places string) { table = places }
