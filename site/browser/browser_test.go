// Package browser tests the built site in a real Chromium.
package browser

import (
	"context"
	"encoding/json"
	"fmt"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/log"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"
)

const dist = "../../dist"

// screen is a device to test on.
type screen struct {
	name          string
	width, height int64
	touch, dark   bool
}

var (
	phone     = screen{"phone", 360, 740, true, false}
	phoneDark = screen{"phone-dark", 360, 740, true, true}
	tablet    = screen{"tablet", 820, 1180, true, false}
	wide      = screen{"wide", 1440, 900, false, false}
	wideDark  = screen{"wide-dark", 1440, 900, false, true}
)

// tab is an open page with what it complained about.
type tab struct {
	t       *testing.T
	ctx     context.Context
	address string

	mu       sync.Mutex
	problems []string
	foreign  []string
	server   *httptest.Server
}

// start serves dist and opens a browser on a screen, with no page yet.
func start(t *testing.T, s screen) *tab {
	t.Helper()
	return startAt(t, s, http.FileServer(http.Dir(dist)))
}

// startAt is start with another way to serve dist.
func startAt(t *testing.T, s screen, files http.Handler) *tab {
	t.Helper()
	if _, err := os.Stat(filepath.Join(dist, "suncask.wasm")); err != nil {
		t.Fatal("dist/ is not built: run ./build.sh build first")
	}
	server := httptest.NewServer(http.StripPrefix("/try/", files))
	t.Cleanup(server.Close)
	options := append(chromedp.DefaultExecAllocatorOptions[:],
		chromedp.NoSandbox, chromedp.DisableGPU, chromedp.NoFirstRun,
		chromedp.Flag("disable-quic", true), chromedp.Flag("disable-background-networking", true),
		chromedp.Flag("disable-component-update", true), chromedp.Flag("disable-sync", true),
		chromedp.WindowSize(int(s.width), int(s.height)))
	alloc, cancel := chromedp.NewExecAllocator(context.Background(), options...)
	t.Cleanup(cancel)
	ctx, cancel := chromedp.NewContext(alloc)
	t.Cleanup(cancel)
	ctx, cancel = context.WithTimeout(ctx, 4*time.Minute)
	t.Cleanup(cancel)
	b := &tab{t: t, ctx: ctx, address: server.URL + "/try/", server: server}
	chromedp.ListenTarget(ctx, b.note)
	theme := "light"
	if s.dark {
		theme = "dark"
	}
	b.run(
		network.Enable(), log.Enable(), runtime.Enable(),
		emulation.SetDeviceMetricsOverride(s.width, s.height, 1, s.touch),
		emulation.SetTouchEmulationEnabled(s.touch),
		emulation.SetFocusEmulationEnabled(true),
		emulation.SetEmulatedMedia().WithFeatures([]*emulation.MediaFeature{{Name: "prefers-color-scheme", Value: theme}}),
	)
	return b
}

func (b *tab) note(event any) {
	b.mu.Lock()
	defer b.mu.Unlock()
	switch e := event.(type) {
	case *runtime.EventExceptionThrown:
		b.problems = append(b.problems, "exception: "+e.ExceptionDetails.Error())
	case *runtime.EventConsoleAPICalled:
		if e.Type == runtime.APITypeError || e.Type == runtime.APITypeWarning {
			b.problems = append(b.problems, fmt.Sprintf("console: %s", e.Args[0].Value))
		}
	case *log.EventEntryAdded:
		if e.Entry.Level == log.LevelError {
			b.problems = append(b.problems, "log: "+e.Entry.Text+" "+e.Entry.URL)
		}
	case *network.EventRequestWillBeSent:
		u := e.Request.URL
		if !strings.HasPrefix(u, b.address) && !strings.HasPrefix(u, "data:") && !strings.HasPrefix(u, "about:") {
			b.foreign = append(b.foreign, u)
		}
	}
}

func (b *tab) run(actions ...chromedp.Action) {
	b.t.Helper()
	if err := chromedp.Run(b.ctx, actions...); err != nil {
		b.t.Fatal(err)
	}
}

// open loads a link and waits until the page calculates and the strip is drawn.
func (b *tab) open(fragment string) {
	b.t.Helper()
	b.run(chromedp.Navigate("about:blank"), chromedp.Navigate(b.address+fragment))
	b.ready()
	if strings.Contains(fragment, "view=visit") { // its texts come after the page is ready
		b.until(`document.getElementById('visit') !== null`)
	}
}

func (b *tab) ready() {
	b.t.Helper()
	const done = `window.suncaskDraw && (window.suncaskDraw(), window.suncaskCharts) && document.readyState === 'complete' && document.documentElement.dataset.state === 'ready' && (document.querySelector('#strip .chart-box svg') !== null || document.getElementById('strip').clientWidth === 0)`
	for end := time.Now().Add(30 * time.Second); time.Now().Before(end); time.Sleep(30 * time.Millisecond) {
		ok := false
		// A page that is being exchanged has no context for a moment.
		if err := chromedp.Run(b.ctx, chromedp.Evaluate(done, &ok)); err == nil && ok {
			return
		}
	}
	b.t.Fatal("the page does not get ready")
}

// until waits for an expression to become true.
func (b *tab) until(expression string) {
	b.t.Helper()
	for end := time.Now().Add(20 * time.Second); time.Now().Before(end); time.Sleep(30 * time.Millisecond) {
		ok := false
		if b.eval(expression, &ok); ok {
			return
		}
	}
	said := ""
	b.eval(`document.documentElement.dataset.state + ' ' + location.hash + ' ' + document.getElementById('trouble').textContent`, &said)
	b.t.Fatalf("never true: %s; the page is %s", expression, said)
}

// eval runs an expression and decodes its value.
func (b *tab) eval(expression string, into any) {
	b.t.Helper()
	b.run(chromedp.Evaluate(expression, into))
}

// link is the address's fragment.
func (b *tab) link() (hash string) {
	b.t.Helper()
	b.eval(`location.hash`, &hash)
	return hash
}

func (b *tab) text(selector string) (s string) {
	b.t.Helper()
	b.eval(fmt.Sprintf(`document.querySelector(%s).textContent`, quote(selector)), &s)
	return s
}

func quote(s string) string {
	raw, _ := json.Marshal(s)
	return string(raw)
}

// clean fails the test if the page complained or asked another origin.
func (b *tab) clean() {
	b.t.Helper()
	b.mu.Lock()
	defer b.mu.Unlock()
	for _, p := range b.problems {
		b.t.Errorf("the page complained: %s", p)
	}
	for _, u := range b.foreign {
		b.t.Errorf("a request left the page's own origin: %s", u)
	}
}

// shot keeps a picture where SUNCASK_SHOTS says, for a person to look at.
func (b *tab) shot(name string) {
	b.t.Helper()
	dir := os.Getenv("SUNCASK_SHOTS")
	if dir == "" {
		return
	}
	var png []byte
	b.run(chromedp.ActionFunc(func(ctx context.Context) (err error) {
		png, err = page.CaptureScreenshot().Do(ctx)
		return err
	}))
	if err := os.WriteFile(filepath.Join(dir, name+".png"), png, 0o644); err != nil {
		b.t.Fatal(err)
	}
}

// keep keeps a text where SUNCASK_SHOTS says.
func (b *tab) keep(name, text string) {
	if dir := os.Getenv("SUNCASK_SHOTS"); dir != "" {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o644); err != nil {
			b.t.Fatal(err)
		}
	}
}

func TestLoad(t *testing.T) {
	for _, s := range []screen{phone, phoneDark, tablet, wide, wideDark} {
		t.Run(s.name, func(t *testing.T) {
			b := start(t, s)
			b.open("")
			b.shot("load-" + s.name)
			b.clean()
		})
	}
}

// place shows a part of the page, as its button does.
func place(name string) chromedp.Action {
	return chromedp.Evaluate(`(() => { const b = document.getElementById('place-`+name+`'); b.dispatchEvent(new PointerEvent('pointerdown', {bubbles: true})); b.click() })()`, nil)
}

// menu takes what stands in the page's menu.
func (b *tab) menu(id string) {
	b.t.Helper()
	b.run(chromedp.Click("#menu", chromedp.ByQuery))
	b.until(`document.getElementById('over') !== null`)
	b.run(chromedp.Click(id, chromedp.ByQuery))
}

// entry takes another way into the page, in the header or, on a phone, in the menu.
func (b *tab) entry(s screen, name string) {
	b.t.Helper()
	if s.width >= 760 {
		b.run(chromedp.Click("#entry-"+name, chromedp.ByQuery))
		return
	}
	b.menu("#entry-" + name)
	b.until(`document.getElementById('over') === null`)
}

// centred brings something into the middle of what is seen: at the edges bars stick.
func centred(selector string) chromedp.Action {
	return chromedp.Evaluate(`document.querySelector(`+quote(selector)+`).scrollIntoView({block: 'center'})`, nil)
}

// card opens a card of the house, or closes it.
func card(id string) chromedp.Action {
	return chromedp.Tasks{place("house"), chromedp.Click(id, chromedp.ByQuery)}
}
