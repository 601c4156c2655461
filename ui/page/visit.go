package page

// VisitPart is a part of an installer's visit.
type VisitPart int8

// Parts of a visit, in walking order.
const (
	NoPart VisitPart = iota
	Survey
	Wiring
	Meters
)

// Visit is what is open in a visit, and what was read from meters: in no link.
type Visit struct {
	Part    VisitPart
	Section int  // of the survey
	ByAmps  bool // light by a string's short circuit, else by a meter
	Cells   int  // what the cells' temperature is known by, see ui/visit
	Typed   map[string]string
}

// OpenPart shows a part of the visit alone: its fields stand in the house's cards too.
func (c *Page) OpenPart(p VisitPart) {
	c.Visit.Part, c.Panel, c.Question = p, "", -1
}
