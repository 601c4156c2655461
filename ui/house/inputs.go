package house

import (
	"suncask/engine/scenario"
	"suncask/ui/state"
)

// input is a field for the printed list.
type input struct {
	name, value string
	assumed     bool
}

// inputs are all fields that the house has.
func (c *House) inputs() (list []input) {
	s := c.Page.Store
	for _, f := range scenario.Fields() {
		if f.Kind == scenario.Months && !s.Scenario.Known.Has(f.ID) {
			continue
		}
		if v := c.Page.View.Field(s, f.ID); state.Applies(&s.Scenario, f.ID) && v != "" {
			list = append(list, input{c.Page.View.Words.Fields[f.ID].Name, v, !s.Scenario.Known.Has(f.ID)})
		}
	}
	return list
}
