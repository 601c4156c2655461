package parts

import (
	"suncask/engine/plan"
	"suncask/ui/page"
	"suncask/ui/state"
	"suncask/ui/words"
)

// Job is the button that starts and stops a job, and how far it is.
type Job struct {
	Page *page.Page
	Of   state.Job
}

// jobTexts are a job's id, what its button says, and what it counts: done, and where it is
// known all. Jobs that nobody starts by hand have none.
var jobTexts = [state.JobCount]struct {
	id            string
	start, status words.Key
	all           int
}{
	state.YearsJob:     {"years", words.YearsButton, words.YearsProgress, plan.YearCount},
	state.LandscapeJob: {"land", words.LandButton, words.LandProgress, plan.Windows},
	state.SizesJob:     {"sizes", words.SizesButton, words.SearchProgress, 0},
	state.ElementsJob:  {"elements", words.ElementsButton, words.SearchProgress, 0},
	state.LengthsJob:   {"length", words.LengthsButton, words.LengthsProgress, plan.LengthCount},
	state.HoursJob:     {"best", words.FindHours, words.SearchProgress, 0},
	state.FixesJob:     {"fixes-job", words.FixesButton, words.SearchProgress, 0},
	state.WiringsJob:   {"wirings", words.WiringsName, words.SearchProgress, 0},
	state.MeterJob:     {"meter-job", words.NoBackup, words.SearchProgress, 0},
	state.WaysJob:      {"ways", words.WaysButton, words.SearchProgress, 0},
}

// JobID is what the ids of a job's elements begin with.
func JobID(j state.Job) string { return jobTexts[j].id }

// JobStatus says how far a job is; nothing where it is not on its way.
func JobStatus(c *page.Page, j state.Job) string {
	steps, running := c.Store.Running(j)
	if !running {
		return ""
	}
	t := &jobTexts[j]
	if t.all == 0 {
		return c.View.Words.Text(t.status, steps)
	}
	return c.View.Words.Text(t.status, steps, t.all)
}

func (c *Job) id(part string) string { return JobID(c.Of) + part }

func (c *Job) button() string {
	if _, running := c.Page.Store.Running(c.Of); running {
		return c.Page.T(words.JobStop)
	}
	return c.Page.T(jobTexts[c.Of].start)
}

func (c *Job) press() {
	if c.Page.Host == nil {
		return
	}
	if _, running := c.Page.Store.Running(c.Of); running {
		c.Page.Host.Stop(c.Of)
		c.Page.Store.EndJob(c.Of)
		return
	}
	c.Page.Host.Start(c.Of, c.Page.Store.BeginJob(c.Of))
}
