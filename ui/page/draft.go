package page

// Draft is what somebody is typing into a box and has not yet entered: a render in between
// must not take it away.
type Draft struct{ Box, Text string }

// Box is what a box shows: what is being typed into it, else its value.
func (c *Page) Box(id, value string) string {
	if c.Draft.Box == id && id != "" {
		return c.Draft.Text
	}
	return value
}
