//go:build !outside

package climate

import _ "embed"

//go:embed places.csv
var table string
