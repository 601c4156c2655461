package sheets

import (
	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/words"
)

// Menu is the sheet of what concerns the page and not the house.
type Menu struct{ Page *page.Page }

// themes are the page's lights, by their values on the device.
var themes = [...]struct {
	value string
	name  words.Key
}{{"auto", words.ThemeAuto}, {"light", words.ThemeLight}, {"dark", words.ThemeDark}}

func (c *Menu) setTheme(value string) {
	c.Page.Theme = value
	if c.Page.Host != nil {
		c.Page.Host.Light(value)
	}
}

func (c *Menu) print() {
	c.Page.CloseSheet()
	if c.Page.Host != nil {
		c.Page.Host.Print()
	}
}

func (c *Menu) speak(language string) {
	if c.Page.Host != nil && language != c.Page.T(words.LanguageCode) {
		c.Page.Host.Choose("lang", language)
	}
}

// otherUnits names the units that the page is not in.
func (c *Menu) otherUnits() string {
	if format.Customary() {
		return c.Page.T(words.MetricUnits)
	}
	return c.Page.T(words.CustomaryUnits)
}

func (c *Menu) turnUnits() {
	if c.Page.Host != nil {
		c.Page.Host.Choose("units", map[bool]string{true: "metric", false: "us"}[format.Customary()])
	}
}

// assumed says what the page cannot change yet.
func (c *Menu) assumed() string {
	return c.Page.View.Words.Text(words.AlwaysAssumed, format.Degrees(simulate.CableC), format.In(scenario.Kelvin, simulate.ToleranceK, 0))
}

// waterNote says which cold water acts and what another would change.
func (c *Menu) waterNote() string {
	colder, warmer := c.Page.Store.OtherWater()
	kWh := func(joules float64) string {
		if joules > 0 {
			return "+" + format.KWh(joules, 0)
		}
		return format.KWh(joules, 0)
	}
	mean := format.Degrees(c.Page.Store.Prepared.ColdWaterC())
	return c.Page.View.Words.Text(words.ColdWaterNote, mean, c.Page.WaterModel(), kWh(colder), kWh(warmer))
}
