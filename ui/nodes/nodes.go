// Package nodes is what the generated templates say over and over; build.sh puts these calls
// into them, which makes the WebAssembly smaller.
package nodes

import "github.com/vugu/vugu"

// Text is a node of text.
func Text(text string) *vugu.VGNode { return &vugu.VGNode{Type: vugu.TextNode, Data: text} }

// Element is an element with its attributes, see Attrs.
func Element(namespace, tag string, list []vugu.VGAttribute) *vugu.VGNode {
	return &vugu.VGNode{Type: vugu.ElementNode, Namespace: namespace, Data: tag, Attr: list}
}

// Attrs takes keys and values in turn.
func Attrs(pairs ...string) []vugu.VGAttribute {
	list := make([]vugu.VGAttribute, 0, len(pairs)/2+2)
	for i := 0; i < len(pairs); i += 2 {
		list = append(list, vugu.VGAttribute{Key: pairs[i], Val: pairs[i+1]})
	}
	return list
}

// Handlers returns a node's handlers and another.
func Handlers(n *vugu.VGNode, event string, do func(vugu.DOMEvent)) []vugu.DOMEventHandlerSpec {
	return append(n.DOMEventHandlerSpecList, vugu.DOMEventHandlerSpec{EventType: event, Func: do})
}
