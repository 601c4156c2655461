package ui

import (
	"github.com/vugu/vugu"

	"suncask/engine/scenario"
	"suncask/ui/format"
	"suncask/ui/words"
)

// Panels are the inputs, one group open at a time.
type Panels struct{ Page *Page }

type panel struct {
	id     string
	title  words.Key
	fields []scenario.FieldID
}

var panels = []panel{
	{"panel-home", words.PanelHome, []scenario.FieldID{scenario.Place, scenario.UsesFrom, scenario.People, scenario.Showers,
		scenario.ShowerMinutes, scenario.ShowerFlow, scenario.PipeLitres}},
	{"panel-roof", words.PanelRoof, []scenario.FieldID{scenario.Modules, scenario.ModuleW, scenario.TiltDeg, scenario.AzimuthDeg}},
	{"panel-tank", words.PanelTank, []scenario.FieldID{scenario.TankLitres, scenario.SetC, scenario.SunLimitC, scenario.ElementW,
		scenario.LossKWh, scenario.RoomC}},
	{"panel-backup", words.PanelBackup, nil},
	{"panel-prices", words.PanelPrices, []scenario.FieldID{scenario.Price, scenario.Currency, scenario.LowPrice, scenario.LowFrom, scenario.LowTo}},
}

// row is one field as it stands on the page.
type row struct {
	id                        scenario.FieldID
	key, name, help           string
	value, unit, allowed      string
	problem                   string
	choices                   []string
	chosen                    int
	assumed, decimal, isPlace bool
}

// onBackup tells whether the open panel is that of the backup hours.
func (c *Panels) onBackup() bool {
	return c.Page.Panel >= 0 && panels[c.Page.Panel].id == "panel-backup"
}

// rows are the fields of the open panel.
func (c *Panels) rows() []row {
	if c.Page.Panel < 0 || c.Page.Panel >= len(panels) {
		return nil
	}
	s, w := c.Page.Store, c.Page.View.Words
	var list []row
	for _, id := range panels[c.Page.Panel].fields {
		f := scenario.FieldOf(id)
		text := w.Fields[id]
		r := row{id: id, key: "field-" + f.Key, name: text.Name, help: text.Help, problem: c.Page.problem(id),
			assumed: !s.Scenario.Known.Has(id), isPlace: id == scenario.Place}
		if f.Kind == scenario.Choice {
			r.choices, r.chosen = text.Choices, int(f.Get(&s.Scenario))
		} else {
			r.value, r.unit = s.Text(id), w.Units[f.Unit]
		}
		if f.Kind == scenario.Number && f.Unit != scenario.ClockMinute {
			r.decimal = true
			r.allowed = w.Text(words.Range, format.Input(f.Min), format.Input(f.Max))
		}
		if f.Unit == scenario.MoneyPerKWh {
			r.unit = s.Scenario.Currency + " " + r.unit
		}
		list = append(list, r)
	}
	return list
}

func (r row) mode() string {
	if r.decimal {
		return "decimal"
	}
	return "text"
}

// places names the list of places beside the place's box.
func (r row) places() string {
	if r.isPlace {
		return "places"
	}
	return ""
}

func (c *Panels) typed(event vugu.DOMEvent, id scenario.FieldID) { c.Page.typed(event, id) }
