package scenario

import (
	"os"
	"strings"
	"testing"
)

// Links of every version open for ever as what they were: testdata/links.txt has a link and,
// after a tab, all fields that it stood for when the line was written. Lines are only added.
func TestLink_OpensForEver(t *testing.T) {
	raw, err := os.ReadFile("../../testdata/links.txt")
	if err != nil {
		t.Fatal(err)
	}
	links := 0
	for _, line := range strings.Split(string(raw), "\n") {
		link, fields, ok := strings.Cut(line, "\t")
		if !ok || strings.HasPrefix(line, "#") {
			continue
		}
		links++
		s, problems := Decode(link)
		if len(problems) > 0 {
			t.Errorf("%s: %v", link, problems)
		}
		s.Known = AllFields()
		now := "&" + Encode(&s) + "&"
		for _, field := range strings.Split(fields, "&")[1:] { // the first is the version
			if field == "insulation=0" && strings.HasPrefix(fields, "v=1&") {
				field = "insulation=none" // what was not measured is written so since version 2
			}
			if !strings.Contains(now, "&"+field+"&") {
				t.Errorf("%s: %s has become another", link, field)
			}
		}
	}
	if links < 10 {
		t.Errorf("%d links", links)
	}
}
