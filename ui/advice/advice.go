// Package advice is the place of what to change and what to mind.
package advice

import "suncask/ui/page"

//go:generate go tool vugugen -skip-go-mod -skip-main .

// Advice is the place.
type Advice struct{ Page *page.Page }
