package parts

import (
	"suncask/ui/page"
	"suncask/ui/words"
)

// Table shows a sheet.
type Table struct {
	Page  *page.Page
	Sheet *Sheet
	Fold  bool // it is shown on demand: a picture says the same
}

func (c *Table) open() bool { return !c.Fold || c.Page.TableOpen == c.Sheet.ID }

// turn opens the table, or closes it; one is open at a time.
func (c *Table) turn() {
	if c.open() {
		c.Page.TableOpen = ""
	} else {
		c.Page.TableOpen = c.Sheet.ID
	}
}

func (c *Table) foldName() string {
	if c.open() {
		return c.Page.T(words.TableClose)
	}
	return c.Page.T(words.TableRead)
}

func (c *Table) save() {
	if c.Page.Host != nil {
		c.Page.Host.Save("suncask-"+c.Sheet.ID+".csv", c.Sheet.CSV())
	}
}

func (c *Table) saveName() string { return c.Page.T(words.SaveTable) }

func (c *Table) saveLabel() string { return c.saveName() + ": " + c.Sheet.Caption }

func (c *Table) take(r *SheetRow) {
	r.Take()
	c.Page.Changed()
}
