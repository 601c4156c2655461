package ui

import "github.com/vugu/vugu"

// What the generated templates say over and over; build.sh puts these calls into them,
// which makes the WebAssembly smaller.

func textNode(text string) *vugu.VGNode { return &vugu.VGNode{Type: vugu.TextNode, Data: text} }

func element(namespace, tag string, list []vugu.VGAttribute) *vugu.VGNode {
	return &vugu.VGNode{Type: vugu.ElementNode, Namespace: namespace, Data: tag, Attr: list}
}

// attrs takes keys and values in turn.
func attrs(pairs ...string) []vugu.VGAttribute {
	list := make([]vugu.VGAttribute, 0, len(pairs)/2+2)
	for i := 0; i < len(pairs); i += 2 {
		list = append(list, vugu.VGAttribute{Key: pairs[i], Val: pairs[i+1]})
	}
	return list
}

// handlers returns a node's handlers and another.
func handlers(n *vugu.VGNode, event string, do func(vugu.DOMEvent)) []vugu.DOMEventHandlerSpec {
	return append(n.DOMEventHandlerSpecList, vugu.DOMEventHandlerSpec{EventType: event, Func: do})
}
