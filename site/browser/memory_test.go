package browser

import (
	"context"
	"fmt"
	"testing"

	"github.com/chromedp/cdproto/heapprofiler"
	"github.com/chromedp/chromedp"
)

// Ten thousand drag events leave memory as it was: the script's heap, the nodes and the
// WebAssembly's memory.
func TestDrag_MemoryFlat(t *testing.T) {
	b := start(t, phone)
	b.open("#" + house + "&backup=1500-1800")
	drag := func(frames int) {
		x, y, path := b.around("#grip-1-hit", 300, 40)
		points := ""
		for _, p := range path {
			points += fmt.Sprintf("[%.1f,%.1f],", p[0], p[1])
		}
		b.run(chromedp.Evaluate(fmt.Sprintf(`new Promise(done => {
			const points = [%s], grip = document.getElementById('grip-1-hit')
			const send = (type, x, y) => grip.dispatchEvent(new PointerEvent(type, { bubbles: true, cancelable: true, pointerId: 1, button: 0, clientX: x, clientY: y }))
			grip.setPointerCapture = () => {}
			send('pointerdown', %g, %g)
			let frame = 0
			const next = () => {
				for (let i = 0; i < 20; i++) { const p = points[(frame * 20 + i) %% points.length]; send('pointermove', p[0], p[1]) }
				if (++frame < %d) return requestAnimationFrame(next)
				send('pointerup', %g, %g)
				setTimeout(() => done(frame), 300)
			}
			requestAnimationFrame(next)
		})`, points, x, y, frames, x, y), new(int), awaitPromise))
	}
	type size struct{ heap, nodes, wasm float64 }
	measure := func() (s size) {
		b.run(chromedp.ActionFunc(func(ctx context.Context) error { return heapprofiler.CollectGarbage().Do(ctx) }))
		b.eval(`(performance.clearMeasures(), performance.memory.usedJSHeapSize)`, &s.heap)
		b.eval(`document.querySelectorAll('*').length`, &s.nodes)
		b.eval(`suncaskMemory()`, &s.wasm)
		return s
	}
	for range 3 { // the heap finds its size
		drag(500)
		t.Logf("%+v", measure())
	}
	before := measure()
	drag(500)
	after := measure()
	t.Logf("before %+v, after 10,000 events %+v", before, after)
	if after.heap > before.heap+3e6 || after.nodes > before.nodes+5 || after.wasm > 1.25*before.wasm {
		t.Errorf("memory grows: before %+v, after %+v", before, after)
	}
	b.clean()
}
