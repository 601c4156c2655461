//go:build js && wasm

package main

import (
	"syscall/js"

	"suncask/ui/dial"
)

// painter writes the attributes of a frame that changed since the last one.
// Elements are looked up once; vugu re-uses its nodes, so they stay.
type painter struct {
	document js.Value
	last     []dial.Attr
	nodes    map[string]js.Value
}

func newPainter(document js.Value) *painter {
	return &painter{document: document, nodes: map[string]js.Value{}}
}

// remember takes a frame as painted: vugu has just rendered it.
func (p *painter) remember(list []dial.Attr) {
	p.last = append(p.last[:0], list...)
	clear(p.nodes)
}

// paint writes what differs from the last frame.
func (p *painter) paint(list []dial.Attr) {
	same := len(list) == len(p.last)
	for i, attr := range list {
		if same && p.last[i] == attr {
			continue
		}
		p.write(attr)
	}
	p.last = append(p.last[:0], list...)
}

func (p *painter) write(a dial.Attr) {
	node, ok := p.nodes[a.ID]
	if !ok {
		node = p.document.Call("getElementById", a.ID)
		p.nodes[a.ID] = node
	}
	switch a.Name {
	case "":
		node.Set("textContent", a.Value)
	case "value":
		node.Set("value", a.Value)
	default:
		node.Call("setAttribute", a.Name, a.Value)
	}
}
