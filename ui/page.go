package ui

import (
	"errors"
	"math"
	"strconv"
	"strings"

	"github.com/vugu/vugu"

	"suncask/engine/care"
	"suncask/engine/climate"
	"suncask/engine/climate/hourly"
	"suncask/engine/explain"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/ui/dial"
	"suncask/ui/format"
	"suncask/ui/state"
	"suncask/ui/view"
	"suncask/ui/words"
)

// Host is what the page asks of the browser around it.
type Host interface {
	Share(copied func()) (link string) // copied is called if the clipboard took it
	CanSend() bool                     // the device can send a link to others
	Send(link string)
	Find()                          // looks for better hours, in slices
	Start(j state.Job, link string) // does a job for the house of a link, see state.Work
	Stop(j state.Job)
	DevicePlace()             // asks the device where it is, see Page.At
	Save(name, text string)   // hands a file to the user
	Picture(id string)        // hands the picture of an element to the user
	Play()                    // calls Tick in turns, as long as it returns true
	Choose(key, value string) // shows the page in another language (lang) or other units (units)
	Kept() []Kept             // houses that the device keeps
	Keep(name, link string) bool
	Drop(name string)
	Open(link string)                // makes the house of a link the present one, with the weather file it names
	Beside(link string) *state.Store // opens one beside the present one, likewise
	Update()                         // takes the newer version of the page
	Reveal(id string)                // brings an element into sight once the page is rendered
	Went(top bool)                   // another place or sheet is shown: the browser's Back returns from it, and to no sheet that was closed; top: from its beginning
	Light(theme string)              // auto, light or dark
	Print()
	ShowMe() // names what the dial shows and moves a grip there and back
}

// Page is the whole page.
type Page struct {
	Store *state.Store
	View  *view.View
	Host  Host // nil when rendered outside a browser

	Place       Place
	Over        Sheet
	Wide        int8             // 0: a phone, 1: two columns, 2: three
	Printing    bool             // every place is shown, and all inputs as a list
	Theme       string           // auto, light or dark
	HelpOf      string           // the field whose explanation is open
	TableOpen   string           // the table that is shown beside its picture
	AllLengths  bool             // the landscape shows the other lengths than at first
	Reads       map[string]int   // items of charts that somebody chose to read
	Panel       int              // open card, -1 none
	entry       state.Entry      // whose group was opened
	More        bool             // the open group shows all its fields
	Playing     bool             // the day passes, see Tick
	Wait        Wait             // what is in the tank now
	TankMinute  int              // of the day shown, at which the tank is drawn
	UsesShown   int              // mark whose uses are listed, -1 none
	Question    int              // of those that make the house somebody's own, -1 none
	Explained   explain.Quantity // the figure that is opened
	ExplainedAt explain.Span
	DayShown    int    // day of the year whose uses are listed, -1 none
	FindNote    string // what the search for better hours came to
	LinkShown   string
	Copied      bool
	Newer       bool // a newer version of the page waits
	Shared      bool // the house came with a link, nothing of it is kept yet
	HouseName   string
	HouseNote   string

	FileReading  int    // percent of a weather file that is read, -1 none
	FileProblem  string // why the last one was refused
	PlaceRefused bool   // the device did not tell its place
	Towns        TownsState
	Draft        Draft

	attrs    map[[2]string]string
	landKept landShapes
	useFixes fixes

	other     *state.Store // compared with, nil if none
	otherName string
	minded    []care.Finding // of the house shown
	mindedAt  mindedAt
	water     coldWater
}

// NewPage returns a page that shows a store.
func NewPage(s *state.Store, v *view.View) *Page {
	return &Page{Store: s, View: v, Theme: "auto", Reads: map[string]int{}, Panel: -1, UsesShown: -1, DayShown: -1, ExplainedAt: explain.Year, Question: -1, FileReading: -1, TankMinute: 18 * 60, Wait: Wait{TempC: 25, UsedL: 150}}
}

// Compute takes the frame that the templates read.
func (c *Page) Compute(vugu.ComputeCtx) {
	if c.attrs == nil {
		c.attrs = map[[2]string]string{}
	}
	c.begin()
	c.minded = c.findings()
	c.View.Open = 0
	if c.DayShown < 0 {
		c.View.Open = c.openUses()
	}
	clear(c.attrs)
	for _, a := range c.View.Frame(c.Store) {
		c.attrs[[2]string{a.ID, a.Name}] = a.Value
	}
}

// A is an attribute of the frame; an empty name is the text.
func (c *Page) A(id, name string) string { return c.attrs[[2]string{id, name}] }

// T is a text of the page.
func (c *Page) T(k words.Key) string { return c.View.Words.Text(k) }

func yes(b bool) string {
	if b {
		return "true"
	}
	return "false"
}

func skyKeys() []string { return scenario.FieldOf(scenario.SkyKind).Choices }

func (c *Page) choose(id scenario.FieldID, choice int) {
	c.Store.Choose(id, choice)
	c.changed()
}

func (c *Page) typed(event vugu.DOMEvent, id scenario.FieldID) {
	c.Store.Type(id, event.PropString("target", "value"))
	c.changed()
}

func (c *Page) typedEdge(event vugu.DOMEvent, grip int) {
	c.Store.TypeEdge(grip/2, dial.Part(grip%2), event.PropString("target", "value"))
	c.changed()
}

func (c *Page) undo() {
	c.Store.Undo()
	c.changed()
}

func (c *Page) redo() {
	c.Store.Redo()
	c.changed()
}

// UndoKey takes the last change back, or makes it again.
func (c *Page) UndoKey(again bool) {
	if again {
		c.redo()
	} else {
		c.undo()
	}
}

func (c *Page) open(panel int) {
	if c.Panel == panel {
		panel = -1
	}
	c.Panel, c.More, c.Question = panel, false, -1
}

// change asks whose house it is, or opens the houses, from the header.
func (c *Page) change() {
	if c.Store.Example() {
		c.askMine()
		return
	}
	c.openSheet(HousesSheet)
}

func (c *Page) findHours() {
	c.FindNote = c.T(words.Finding)
	if c.Host != nil {
		c.Host.Find()
	}
}

// Found ends the search for better hours and says what came of it.
func (c *Page) Found() {
	f, ok := c.Store.EndFind()
	s, w := &c.Store.Scenario, c.View.Words
	hours := c.View.Hours(c.Store.Window(0))
	switch {
	case !ok:
		c.FindNote = ""
		return
	case !f.Kept && f.Took:
		c.FindNote = w.Text(words.FoundFewest, hours, s.AcceptUses, f.CoolUses)
		return
	case !f.Took:
		c.FindNote = c.T(words.FoundNone)
		return
	case f.Saved >= 0:
		c.FindNote = w.Text(words.FoundLess, hours, format.Money(f.Saved, s.Currency))
	default:
		c.FindNote = w.Text(words.FoundKeeps, hours, f.CoolUses, f.Before, format.Money(-f.Saved, s.Currency))
	}
	if f.FlatFrom != f.FlatTo {
		c.FindNote += " " + w.Text(words.FoundFlat, format.Clock(f.FlatFrom), format.Clock(f.FlatTo))
	}
}

func (c *Page) speak(language string) {
	if c.Host != nil && language != c.T(words.LanguageCode) {
		c.Host.Choose("lang", language)
	}
}

// otherUnits names the units that the page is not in.
func (c *Page) otherUnits() string {
	if format.Customary() {
		return c.T(words.MetricUnits)
	}
	return c.T(words.CustomaryUnits)
}

func (c *Page) turnUnits() {
	if c.Host != nil {
		c.Host.Choose("units", map[bool]string{true: "metric", false: "us"}[format.Customary()])
	}
}

func (c *Page) update() {
	if c.Host != nil {
		c.Host.Update()
	}
}

// changed takes notices away that spoke of the scenario before.
func (c *Page) changed() {
	c.LinkShown, c.FindNote, c.FileProblem, c.PlaceRefused = "", "", "", false
}

// linkProblems are the sentences about a link's refused parts.
func (c *Page) linkProblems() []string {
	var list []string
	for _, p := range c.Store.LinkProblems {
		list = append(list, c.View.Words.Problem(p))
	}
	return list
}

func (c *Page) dismissProblems() { c.Store.LinkProblems = nil }

// hoursProblem is the sentence about a typed time, empty if it was good.
func (c *Page) hoursProblem() string {
	if text := c.problem(scenario.BackupHours); text != "" {
		return text
	}
	return c.problem(scenario.SecondHours)
}

// grips are the indices of the grips: two for each window.
func (c *Page) grips() []int {
	return []int{0, 1, 2, 3}[:2*len(c.Store.Windows())]
}

func (c *Page) addSecond() {
	c.Store.AddSecond()
	c.changed()
}

func (c *Page) removeSecond() {
	c.Store.RemoveSecond()
	c.changed()
}

func timeID(grip int) string { return "time-" + strconv.Itoa(grip) }

func (c *Page) problem(id scenario.FieldID) string {
	if r, ok := c.Store.Refused[id]; ok {
		return strings.TrimSpace(c.View.Words.Problem(r.Problem) + " " + c.nearly(r.Problem))
	}
	return ""
}

// devicePlace asks the device where it is.
func (c *Page) devicePlace() {
	c.PlaceRefused = false
	if c.Host != nil {
		c.Host.DevicePlace()
	}
}

// At takes the device's answer: its place to a hundredth of a degree, or a refusal.
func (c *Page) At(latDeg, lonDeg float64, ok bool) {
	if ok {
		c.Store.Type(scenario.Place, climate.PointName(latDeg, lonDeg, math.NaN()))
		c.changed()
	}
	c.PlaceRefused = !ok
}

// Reading says how far a weather file is read.
func (c *Page) Reading() string { return c.View.Words.Text(words.FileReading, c.FileReading) }

// ShowWeather opens the panel of the weather file.
func (c *Page) ShowWeather() {
	c.show(WeatherPanel)
}

// show opens a group.
func (c *Page) show(panel string) {
	for i := range panels {
		if panels[i].id == panel {
			c.Panel, c.Question = i, -1
			c.goTo(HousePlace)
		}
	}
}

// Shows tells whether a group of inputs is open.
func (c *Page) Shows(panel string) bool { return c.Panel >= 0 && panels[c.Panel].id == panel }

// FileEnded takes a weather file that was read, or why it was not; the scenario stays
// as it was then.
func (c *Page) FileEnded(r *hourly.Result, err error) {
	c.FileReading = -1
	c.changed()
	var refused *hourly.Error
	switch {
	case errors.As(err, &refused):
		c.FileProblem = c.View.Words.FileError(refused)
	case err != nil:
		c.FileProblem = err.Error()
	default:
		c.Store.TakeFile(r)
		c.FileProblem = c.problem(scenario.WeatherFile)
	}
}

// accuracy says where the weather comes from and how good it is.
func (c *Page) accuracy() string {
	s, w := c.Store, c.View.Words
	p, _ := s.Scenario.At()
	missing := ""
	if s.Prepared.FileMissing {
		missing = w.Text(words.FileAbsent, s.Scenario.Weather) + " "
	}
	switch {
	case s.Prepared.Weather.Measured:
		return w.Text(words.AccuracyFile, p.Name)
	case !p.Between:
		return missing + w.Text(words.Accuracy, p.Name, p.Country, climate.IrradiationErrorPct, format.In(scenario.Kelvin, climate.TemperatureErrorK, 0))
	}
	text := w.Text(words.AccuracyPoint, p.Name, p.Nearest, format.Kilometres(p.NearestKm), climate.IrradiationErrorPct, format.In(scenario.Kelvin, climate.TemperatureErrorK, 0))
	if p.NearestKm > climate.FarKm {
		text += " " + c.T(words.AccuracyFar)
	}
	return missing + text
}

// assumed says what the page cannot change yet.
func (c *Page) assumed() string {
	return c.View.Words.Text(words.AlwaysAssumed, degrees(simulate.CableC), format.In(scenario.Kelvin, simulate.ToleranceK, 0))
}

// legend explains the middle of the dial.
func (c *Page) legend() string {
	list := ""
	for i, n := range dial.Rings(c.Store.ShowerL(), c.Store.Results.Day.FullL) {
		if i > 0 {
			list += ", "
		}
		list += format.Number(float64(n), 0)
	}
	text := c.View.Words.Text(words.PoolLegend, list)
	if s := &c.Store.Scenario; s.OutFrom != s.OutTo {
		text += " " + c.View.Words.Text(words.OutagePart, format.Clock(s.OutFrom), format.Clock(s.OutTo))
	}
	return text
}
