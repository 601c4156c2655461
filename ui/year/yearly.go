package year

import (
	"suncask/ui/page"
	"suncask/ui/parts"
	"suncask/ui/words"
)

// Yearly shows the year: by month, by day, and where its energy goes.
type Yearly struct{ Page *page.Page }

func (c *Yearly) legend() []parts.Legend {
	t := c.Page.T
	return []parts.Legend{{Class: "key key-sun", Text: t(words.KeySun)}, {Class: "key key-grid", Text: t(words.KeyGrid)}}
}
