package nodes

import (
	"testing"

	"github.com/vugu/vugu"
)

// What a text says of an element: namespace, tag, attributes, white space before it, content.
func TestAdd_Spec(t *testing.T) {
	top := Root("div\x00class\x00visit\x00id\x00")
	if top.Data != "div" || len(top.Attr) != 2 || top.Attr[0] != (vugu.VGAttribute{Key: "class", Val: "visit"}) || top.Attr[1] != (vugu.VGAttribute{Key: "id"}) {
		t.Errorf("%+v", top)
	}
	n := Saying(top, "\nsvg:use\x00href\x00#a:b", "5 < 6")
	if n.Namespace != "svg" || n.Data != "use" || n.Attr[0].Val != "#a:b" || n.InnerHTML == nil || *n.InnerHTML != "5 &lt; 6" {
		t.Errorf("%+v", n)
	}
	if space := top.FirstChild; space.Type != vugu.TextNode || space.Data != "\n" || space.NextSibling != n {
		t.Errorf("before it: %+v", space)
	}
	if plain := Add(top, "b"); len(plain.Attr) != 0 || plain.PrevSibling != n {
		t.Errorf("%+v", plain)
	}
	Attr(n, "hidden", false)
	Attr(n, "title", "x")
	Prop(n, "value", "a\"b")
	On(n, "click", func(vugu.DOMEvent) {})
	if len(n.Attr) != 2 || string(n.Prop[0].JSONVal) != `"a\"b"` || n.DOMEventHandlerSpecList[0].EventType != "click" {
		t.Errorf("%+v", n)
	}
}
