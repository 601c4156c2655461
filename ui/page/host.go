package page

import "suncask/ui/state"

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
	Play()                    // calls house.Tick in turns, as long as it returns true
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
	Base() string                    // of links, before their fragment
	Copy(text string, copied func()) // hands a text to the clipboard; copied is called if it took it
	Now() (day, minute int)          // of the year, 0 to 364, by the device's clock
	Date() string                    // of today, as the device writes it
	ShowMe()                         // names what the dial shows and moves a grip there and back
}

// Kept is a house that this device keeps under a name.
type Kept struct{ Name, Link string }
