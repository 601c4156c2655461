//go:build !tableoutside

package climate

import _ "embed"

//go:embed places.csv
var table string
