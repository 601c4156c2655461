package view

import (
	"strings"

	"suncask/engine/simulate"
	"suncask/ui/state"
)

// unseen stands where a result is hidden.
const unseen = "?"

// seen is the house as it may be seen: without results while they are hidden.
func (v *View) seen(s *state.Store) *state.Store {
	if !v.Hidden {
		return s
	}
	blank := *s
	blank.Results, blank.Bare, blank.Before, blank.Since = state.Results{}, simulate.Flows{}, nil, nil
	blank.Ahead = state.Ahead{}
	day := &blank.Results.Day // sun and uses are the house's own, how they end is not
	day.SunW = s.Results.Day.SunW
	for _, u := range s.Results.Day.Uses {
		day.Uses = append(day.Uses, simulate.UseResult{Use: u.Use})
	}
	return &blank
}

// hide takes results out of the list of attributes: their texts, and their values for scripts.
func (v *View) hide() {
	if !v.Hidden {
		return
	}
	results := map[string]bool{}
	for _, a := range v.list {
		if a.Name == "data-value" {
			results[a.ID] = true
		}
	}
	for i := range v.list {
		a := &v.list[i]
		switch {
		case a.Name == "data-value":
			a.Value = ""
		case a.ID == "verdict" && a.Name == "class":
			a.Value = "verdict"
		case a.Name == "" && (results[a.ID] || a.ID == "say-days" || a.ID == "say-cost" || a.ID == "say-less"):
			a.Value = unseen
		case a.Name == "" && strings.HasPrefix(a.ID, "change-"):
			a.Value = ""
		}
	}
}
