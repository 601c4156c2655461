package parts

import (
	"testing"

	"suncask/engine/scenario"
	"suncask/ui/page"
	"suncask/ui/state"
	"suncask/ui/view"
)

// Each field has a name, a number its range, and one that nobody gave is assumed.
func TestRow(t *testing.T) {
	for _, link := range []string{"v=1&tank=200&modules2=2&modules3=1&modules4=1", "v=1&rule=sun&awaydays=5&elements=two&lossby=overnight&switching=cycle"} {
		p := page.New(state.Open(link), view.New())
		for _, f := range scenario.Fields() {
			if f.Kind == scenario.Months || f.Kind == scenario.Hours || f.ID == scenario.WeatherFile {
				continue // not as rows
			}
			r := &Row{Page: p, ID: f.ID}
			if r.Compute(); r.name == "" || r.decimal && r.allowed == "" {
				t.Errorf("%s: %+v", f.Key, r)
			}
			if r.assumed == p.Store.Scenario.Known.Has(f.ID) {
				t.Errorf("%s: assumed %v", f.Key, r.assumed)
			}
		}
	}
}
