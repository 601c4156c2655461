package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// Statements of vugu's kind become calls; what is not of that kind stays as it was.
func TestPack_Statements(t *testing.T) {
	const head = "package p\n\nfunc (c *C) Build(vgin *vugu.BuildIn) (vgout *vugu.BuildOut) {\n"
	for _, c := range []struct{ name, from, want string }{
		{"a text and an element with content", `
			vgn = &vugu.VGNode{Type: vugu.VGNodeType(1), Data: "\n   "}
			vgparent.AppendChild(vgn)
			vgn = &vugu.VGNode{Type: vugu.VGNodeType(3), Namespace: "", Data: "p", Attr: []vugu.VGAttribute{{Namespace: "", Key: "class", Val: "note"}}}
			vgparent.AppendChild(vgn)
			vgn.SetInnerHTML(c.x())`, `vgn = nodes.Saying(vgparent, "\np\x00class\x00note", c.x())`},
		{"attributes without an element's end", `
			vgn = &vugu.VGNode{Type: vugu.VGNodeType(3), Namespace: "svg", Data: "use", Attr: []vugu.VGAttribute(nil)}
			vgparent.AppendChild(vgn)
			vgn.AddAttrInterface("href", c.h)`, "vgn = nodes.Add(vgparent, \"svg:use\")\n\tnodes.Attr(vgn, \"href\", c.h)"},
		{"white space before something else", `
			vgn = &vugu.VGNode{Type: vugu.VGNodeType(1), Data: " "}
			vgparent.AppendChild(vgn)
			other()`, "nodes.Space(vgparent, \" \")\n\tother()"},
		{"a text that is no white space", `
			vgn = &vugu.VGNode{Type: vugu.VGNodeType(1), Data: "a  b"}
			vgparent.AppendChild(vgn)`, `nodes.Space(vgparent, "a  b")`},
		{"a handler", `
			vgn.DOMEventHandlerSpecList = append(vgn.DOMEventHandlerSpecList, vugu.DOMEventHandlerSpec{EventType: "click", Func: f})`, `nodes.On(vgn, "click", f)`},
		{"a handler of another kind", `
			vgn.DOMEventHandlerSpecList = append(vgn.DOMEventHandlerSpecList, vugu.DOMEventHandlerSpec{EventType: "click", Func: f, Capture: true})`, `Capture: true`},
		{"an attribute with a namespace", `
			vgn = &vugu.VGNode{Type: vugu.VGNodeType(3), Namespace: "", Data: "p", Attr: []vugu.VGAttribute{{Namespace: "x", Key: "class", Val: "note"}}}
			vgparent.AppendChild(vgn)`, `Namespace: "x"`},
	} {
		file := filepath.Join(t.TempDir(), "x_gen.go")
		if err := os.WriteFile(file, []byte(head+c.from+"\n}\n"), 0o644); err != nil {
			t.Fatal(err)
		}
		if err := pack(file); err != nil {
			t.Fatal(err)
		}
		raw, _ := os.ReadFile(file)
		if one := func(s string) string { return strings.Join(strings.Fields(s), " ") }; !strings.Contains(one(string(raw)), one(c.want)) {
			t.Errorf("%s: %s", c.name, raw)
		}
	}
	if err := pack(filepath.Join(t.TempDir(), "none.go")); err == nil {
		t.Error("a file that is not there is packed")
	}
}
