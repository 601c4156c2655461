package ui

import "suncask/ui/words"

// linkProblems are the sentences about a link's refused parts.
func (c *Root) linkProblems() []string {
	var list []string
	for _, p := range c.Page.Store.LinkProblems {
		list = append(list, c.Page.View.Words.Problem(p))
	}
	return list
}

func (c *Root) dismissProblems() { c.Page.Store.LinkProblems = nil }

func (c *Root) update() {
	if c.Page.Host != nil {
		c.Page.Host.Update()
	}
}

// coming says why texts that are fetched when they are needed are not there.
func (c *Root) coming(lost bool) string {
	if lost {
		return c.Page.T(words.TextsLost)
	}
	return c.Page.T(words.TextsComing)
}
