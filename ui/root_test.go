package ui

import (
	"bytes"
	"strings"
	"testing"

	"github.com/vugu/html"
	"github.com/vugu/vugu"
	"github.com/vugu/vugu/staticrender"

	"suncask/engine/plan"
	"suncask/ui/dial"
	"suncask/ui/page"
	"suncask/ui/state"
	"suncask/ui/view"
)

// html5 is the page as vugu renders it off the browser.
func html5(t *testing.T, p *page.Page) *bytes.Buffer {
	t.Helper()
	out := new(bytes.Buffer)
	r := staticrender.New(out)
	env, err := vugu.NewBuildEnv(r.EventEnv())
	if err != nil {
		t.Fatal(err)
	}
	if err := r.Render(env.RunBuild(&Root{p})); err != nil {
		t.Fatal(err)
	}
	return out
}

// rendered is the page as vugu renders it: attributes by id, the text under "".
func rendered(t *testing.T, p *page.Page) map[string]map[string]string {
	t.Helper()
	out := html5(t, p)
	root, err := html.Parse(out)
	if err != nil {
		t.Fatal(err)
	}
	found := map[string]map[string]string{}
	var walk func(*html.Node)
	walk = func(n *html.Node) {
		if n.Type == html.ElementNode {
			attrs := map[string]string{}
			for _, a := range n.Attr {
				attrs[a.Key] = a.Val
			}
			if id := attrs["id"]; id != "" {
				if found[id] != nil {
					t.Errorf("id %q twice", id)
				}
				if n.FirstChild != nil && n.FirstChild.Type == html.TextNode && n.FirstChild.NextSibling == nil {
					attrs[""] = n.FirstChild.Data
				}
				found[id] = attrs
			}
		}
		for c := n.FirstChild; c != nil; c = c.NextSibling {
			walk(c)
		}
	}
	walk(root)
	return found
}

// What the painter of a gesture would write is what the templates render, so the
// render at a gesture's end cannot jump.
func TestTemplate_EqualsPainter(t *testing.T) {
	gesture := func(s *state.Store) {
		s.Begin(len(s.Windows())-1, dial.EndGrip, 1080)
		s.Drag(100, state.Coarse)
	}
	for name, c := range map[string]struct {
		link string
		then func(*state.Store)
	}{
		"example at rest":      {"", func(*state.Store) {}},
		"in a gesture":         {"", gesture},
		"no backup":            {"v=1&backup=none1200&month=dec&sky=dull", func(*state.Store) {}},
		"all day, two prices":  {"v=1&backup=all0300&lowfrom=1320&lowto=360", func(*state.Store) {}},
		"large profile, polar": {"v=1&place=mcmurdo&uses=l&backup=2300-0500&month=jun", gesture},
		"two windows":          {"v=1&backup=1500-1800&backup2=2300-0530", gesture},
		"looked ahead": {"v=1&tank=120", func(s *state.Store) {
			gesture(s)
			link, _ := s.BeginAhead()
			for part := range state.Work(state.AheadJob, plan.Whole, link, nil) {
				s.TakePart(state.AheadJob, part)
			}
		}},
		"uses in a gesture": {"v=1&people=5", func(s *state.Store) {
			s.BeginUses(s.OccasionsOf()[1], 0)
			s.Drag(200, state.Coarse)
		}},
		"a tap that waits": {"v=1&people=6&tank=80", func(s *state.Store) { s.Tap(400) }},
	} {
		s, v := state.Open(c.link), view.New()
		c.then(s)
		got := rendered(t, page.New(s, v))
		for _, a := range v.Frame(s) {
			at, ok := got[a.ID]
			if !ok {
				t.Errorf("%s: the templates have no element %q", name, a.ID)
				continue
			}
			if a.Name == "value" { // a property, which static rendering leaves out
				continue
			}
			if at[a.Name] != a.Value {
				t.Errorf("%s: %s %q is rendered as %.60q, painted as %.60q", name, a.ID, a.Name, at[a.Name], a.Value)
			}
		}
	}
}

// The page stays small: vugu's cost is linear in nodes.
func TestPage_NodeBudget(t *testing.T) {
	out := html5(t, page.New(state.Open(""), view.New()))
	if n := bytes.Count(out.Bytes(), []byte("<")) / 2; n > 300 {
		t.Errorf("%d elements, at most 300", n)
	} else {
		t.Logf("%d elements", n)
	}
}

// panels shows all places of a page and lists the ids of its groups.
func panels(t *testing.T, p *page.Page) (list []string) {
	t.Helper()
	p.Wide = 2
	for id := range rendered(t, p) {
		if strings.HasPrefix(id, "panel-") {
			list = append(list, id)
		}
	}
	if len(list) < 7 {
		t.Fatalf("only %v", list)
	}
	return list
}

// No text of any group has a hole where an argument should be.
func TestPanels_WordsTakeTheirArguments(t *testing.T) {
	for _, link := range []string{"", "v=1&backup=set-0200to1800&rule=sun&elements=two&couple=direct&modules=10&outfrom=228&outto=252&people=8", "v=1&modules=0",
		"v=2&expand=vessel&relief=60&supply=35&vessel=10&tapc=38&set=42&suncap=42&soil=30"} {
		p := page.New(state.Open(link), view.New())
		for _, id := range panels(t, p) {
			p.Panel, p.More = id, true
			if out := html5(t, p).String(); strings.Contains(out, "%!") || strings.Contains(out, "NaN") || strings.Contains(out, "Inf") {
				at := strings.Index(out, "%!")
				t.Errorf("%q, %s: %.120q", link, id, out[max(0, at-60):])
			}
		}
	}
}

// The page holds for a house without uses: every panel and entry renders, none of its texts is
// no number, and tools find nothing to keep warm.
func TestPage_NoUses(t *testing.T) {
	for _, link := range []string{"v=2&uses=none", "v=2&uses=none&elements=tanks&backup=all0000", "v=2&uses=none&modules=0&backup=none0000&exportfirst=30&export=500"} {
		s, v := state.Open(link), view.New()
		p := page.New(s, v)
		for _, id := range panels(t, p) {
			p.Panel, p.More = id, true
			out := html5(t, p).String()
			for _, bad := range []string{"NaN", "Inf", "\u221e", "%!"} {
				if strings.Contains(out, bad) {
					t.Errorf("%s, panel %s: %q on the page", link, id, bad)
				}
			}
		}
		for _, a := range v.Frame(s) {
			if strings.Contains(a.Value, "NaN") || strings.Contains(a.Value, "Inf") {
				t.Errorf("%s: %s %s is %q", link, a.ID, a.Name, a.Value)
			}
		}
		if _, ok := s.LatestStart(0); ok {
			t.Errorf("%s: a latest start for no use", link)
		}
		s.Fixes()
		s.StartFind()
		for s.FindStep() {
		}
		if f, ok := s.EndFind(); ok && f.CoolUses > 0 {
			t.Errorf("%s: better hours with %d cool uses", link, f.CoolUses)
		}
		for j := range state.JobCount {
			n := 0
			for range state.Work(j, plan.Whole, s.BeginJob(j), nil) {
				if n++; n == 12 {
					break
				}
			}
		}
	}
}
