// Package page is what is shown and open on the page, and how one goes from place to place: what
// its rooms, each a package of vugu components, have in common.
package page

import (
	"strings"

	"suncask/engine/care"
	"suncask/engine/explain"
	"suncask/engine/plan"
	"suncask/engine/scenario"
	"suncask/engine/visit"
	"suncask/ui/state"
	"suncask/ui/view"
	"suncask/ui/words"
)

// Page is the state of the whole page, beside that of the house.
type Page struct {
	Store *state.Store
	View  *view.View
	Host  Host // nil when rendered outside a browser

	Place       Place
	Over        Sheet
	Wide        int8           // 0: a phone, 1: two columns, 2: three
	Printing    bool           // every place is shown, and all inputs as a list
	Theme       string         // auto, light or dark
	SinceSeen   *state.Since   // the edit after which somebody went to another place
	HelpOf      string         // the field whose explanation is open
	TableOpen   string         // the table that is shown beside its picture
	AllLengths  bool           // the landscape shows the other lengths than at first
	Reads       map[string]int // items of charts that somebody chose to read
	Panel       string         // id of the open card, none if empty
	More        bool           // the open card shows all its fields
	Playing     bool           // the day passes in the tank
	Wait        Wait           // what is in the tank now
	Visit       Visit
	VisitLost   bool // its texts could not be fetched
	Lesson      Lesson
	LessonLost  bool             // its texts could not be fetched
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
	Tried        Tried

	Other     *state.Store // compared with, nil if none
	OtherName string

	Findings []care.Finding // of the house shown, worst first
	SourceOf *care.Finding  // the one whose source is shown
	// CardOf is the card that has a field: its id and title; ok is false where none has.
	CardOf  func(scenario.FieldID) (id string, title words.Key, ok bool)
	foundAt foundAt
	attrs   map[[2]string]string
	entry   state.Entry // whose group was opened
}

// Wait is what somebody found in the tank. It is nobody's house and in no link.
type Wait struct {
	ByUse bool
	TempC int // of all water
	UsedL int // of shower water since the tank was hot
}

// Tried are changes that were tried for a use of a scenario.
type Tried struct {
	Of   scenario.Scenario
	At   plan.CoolUse
	List []plan.Fix
}

// New returns a page that shows a store.
func New(s *state.Store, v *view.View) *Page {
	return &Page{Store: s, View: v, CardOf: func(scenario.FieldID) (id string, title words.Key, ok bool) { return "", 0, false }, Theme: "auto", Reads: map[string]int{}, Visit: Visit{Part: Survey, Typed: map[visit.Code]string{}, Plates: map[string]string{}}, Lesson: Lesson{At: -1}, UsesShown: -1, DayShown: -1, ExplainedAt: explain.Year, Question: -1, FileReading: -1, TankMinute: 18 * 60, Wait: Wait{TempC: 25, UsedL: 150}}
}

// Compute takes the frame that the templates read.
func (c *Page) Compute() {
	if c.attrs == nil {
		c.attrs = map[[2]string]string{}
	}
	c.begin()
	c.View.Hidden = c.Hides()
	c.findings()
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

// Yes writes the value of an attribute that says whether something is so.
func Yes(b bool) string {
	if b {
		return "true"
	}
	return "false"
}

// Choose takes one of a field's choices.
func (c *Page) Choose(id scenario.FieldID, choice int) {
	c.Store.Choose(id, choice)
	c.Changed()
}

// Undo takes the last change back.
func (c *Page) Undo() {
	c.Store.Undo()
	c.Changed()
}

// Redo makes the change again that was taken back.
func (c *Page) Redo() {
	c.Store.Redo()
	c.Changed()
}

// Changed takes notices away that spoke of the scenario before.
func (c *Page) Changed() {
	c.LinkShown, c.FindNote, c.FileProblem, c.PlaceRefused = "", "", "", false
}

// Problem is the sentence about what was typed into a field, empty if it was good.
func (c *Page) Problem(id scenario.FieldID) string {
	if r, ok := c.Store.Refused[id]; ok {
		return strings.TrimSpace(c.View.Words.Problem(r.Problem) + " " + c.nearly(r.Problem))
	}
	return ""
}
