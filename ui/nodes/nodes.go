// Package nodes is what the generated templates say over and over; ui/nodes/pack puts these calls
// into them, which makes the WebAssembly smaller.
package nodes

import (
	"strings"

	"github.com/vugu/vjson"
	"github.com/vugu/vugu"
)

// Space appends a text to a node.
func Space(to *vugu.VGNode, text string) {
	to.AppendChild(&vugu.VGNode{Type: vugu.TextNode, Data: text})
}

// Root is an element: its tag, behind a namespace and a colon where it has one, then keys and values
// of its attributes, all apart by zero bytes.
func Root(spec string) *vugu.VGNode {
	tag, rest, more := strings.Cut(spec, "\x00")
	n := &vugu.VGNode{Type: vugu.ElementNode, Data: tag}
	if space, name, ok := strings.Cut(tag, ":"); ok {
		n.Namespace, n.Data = space, name
	}
	if more {
		n.Attr = make([]vugu.VGAttribute, 0, strings.Count(rest, "\x00")/2+2)
	}
	for more {
		var key, value string
		key, rest, _ = strings.Cut(rest, "\x00")
		value, rest, more = strings.Cut(rest, "\x00")
		n.Attr = append(n.Attr, vugu.VGAttribute{Key: key, Val: value})
	}
	return n
}

// Add appends an element to a node, and before it white space where its text begins with some.
func Add(to *vugu.VGNode, spec string) *vugu.VGNode {
	if spec[0] == ' ' || spec[0] == '\n' {
		Space(to, spec[:1])
		spec = spec[1:]
	}
	n := Root(spec)
	to.AppendChild(n)
	return n
}

// Saying is Add of an element with a content.
func Saying[T any](to *vugu.VGNode, spec string, content T) *vugu.VGNode {
	n := Add(to, spec)
	n.SetInnerHTML(content)
	return n
}

// Says gives a node its content.
func Says[T any](n *vugu.VGNode, content T) { n.SetInnerHTML(content) }

// Attr gives a node an attribute.
func Attr[T any](n *vugu.VGNode, key string, value T) { n.AddAttrInterface(key, value) }

// Prop gives a node a property.
func Prop[T any](n *vugu.VGNode, key string, value T) {
	b, err := vjson.Marshal(value)
	if err != nil {
		panic(err)
	}
	n.Prop = append(n.Prop, vugu.VGProperty{Key: key, JSONVal: vjson.RawMessage(b)})
}

// On gives a node a handler of an event.
func On(n *vugu.VGNode, event string, do func(vugu.DOMEvent)) {
	n.DOMEventHandlerSpecList = append(n.DOMEventHandlerSpecList, vugu.DOMEventHandlerSpec{EventType: event, Func: do})
}

// Component is the component of a type that stood at a place of the page before, or a new one.
func Component[T any, P interface {
	*T
	vugu.Builder
}](in *vugu.BuildIn, key vugu.CompKey) P {
	c, _ := in.BuildEnv.CachedComponent(key).(P)
	if c == nil {
		c = new(T)
		in.BuildEnv.WireComponent(c)
	}
	in.BuildEnv.UseComponent(key, c)
	return c
}

// Place puts a component into a node.
func Place(out *vugu.BuildOut, to *vugu.VGNode, c vugu.Builder) {
	out.Components = append(out.Components, c)
	to.AppendChild(&vugu.VGNode{Component: c})
}
