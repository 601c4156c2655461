package day

import "suncask/ui/page"

// Result is the year in a sentence.
type Result struct{ Page *page.Page }

// showBackup opens the group of the hours.
func (c *Result) showBackup() {
	c.Page.Show(page.BackupPanel)
	c.Page.Reveal(page.BackupPanel)
}
