package browser

import (
	"compress/gzip"
	"context"
	"io"
	"net/http"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
)

// After the first visit the page works without a network, under a path below the host's
// top, workers too.
func TestOffline_AfterFirstVisit(t *testing.T) {
	for _, s := range []screen{phone, wideDark} {
		t.Run(s.name, func(t *testing.T) {
			b := start(t, s)
			b.open("#" + house + "&backup=1500-1800")
			b.until(`navigator.serviceWorker.controller !== null`)
			b.server.CloseClientConnections()
			b.server.Listener.Close()
			b.open("#" + house + "&backup=1500-1800&month=jun")
			b.sameAsNative(house + "&month=jun")
			finger{b, s.touch}.drag("#grip-1-hit", 30, 4, func() {})
			b.run(place("advice"), chromedp.Click("#length-button", chromedp.ByQuery))
			b.until(`document.querySelector('#lengths svg') !== null`)
			b.clean()
		})
	}
}

// It starts whatever the host does with the program: send it with a wrong type, compressed,
// or as it is; where it is not compressed by the host the page takes the compressed file.
func TestStart_AnyHost(t *testing.T) {
	plain := http.FileServer(http.Dir(dist))
	for name, c := range map[string]struct {
		files http.HandlerFunc
		gz    bool // the compressed file is asked for
	}{
		"wrong type": {func(w http.ResponseWriter, r *http.Request) {
			if strings.HasSuffix(r.URL.Path, ".wasm") {
				w.Header().Set("Content-Type", "text/plain")
			}
			plain.ServeHTTP(w, r)
		}, true},
		"as it is": {plain.ServeHTTP, true},
		"compressed": {func(w http.ResponseWriter, r *http.Request) {
			f, err := os.Open(filepath.Join(dist, "suncask.wasm"))
			if !strings.HasSuffix(r.URL.Path, "suncask.wasm") || err != nil {
				plain.ServeHTTP(w, r)
				return
			}
			defer f.Close()
			w.Header().Set("Content-Type", "application/wasm")
			w.Header().Set("Content-Encoding", "gzip")
			zip, _ := gzip.NewWriterLevel(w, 1)
			defer zip.Close()
			_, _ = io.Copy(zip, f)
		}, false},
	} {
		t.Run(name, func(t *testing.T) {
			asked := make(chan string, 200)
			b := startAt(t, phone, http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
				asked <- r.URL.Path
				c.files(w, r)
			}))
			// Without a service worker, which would ask for the compressed file too.
			b.before(`delete Navigator.prototype.serviceWorker`)
			b.open("#" + house + "&backup=1500-1800")
			b.sameAsNative(house)
			gz := false
			for len(asked) > 0 {
				path := <-asked
				gz = gz || strings.HasSuffix(path, ".wasm.gz")
			}
			if gz != c.gz {
				t.Errorf("the compressed file was asked for: %v, want %v", gz, c.gz)
			}
			b.clean()
		})
	}
}

// before runs a script before every page's own.
func (b *tab) before(script string) {
	b.t.Helper()
	b.run(chromedp.ActionFunc(func(ctx context.Context) error {
		_, err := page.AddScriptToEvaluateOnNewDocument(script).Do(ctx)
		return err
	}))
}

// With all storage blocked the page works.
func TestStart_StorageBlocked(t *testing.T) {
	b := start(t, phone)
	b.before(`for (const name of ['localStorage', 'sessionStorage', 'indexedDB', 'caches']) {
		Object.defineProperty(window, name, { get () { throw new DOMException('blocked', 'SecurityError') } })
	}
	if (navigator.serviceWorker) navigator.serviceWorker.register = () => Promise.reject(new DOMException('blocked', 'SecurityError'))`)
	b.open("#" + house + "&backup=1500-1800")
	finger{b, true}.drag("#grip-1-hit", 30, 4, func() {})
	b.run(card("#panel-weather"))
	b.frame()
	b.clean()
}

// A newer version is told of, waits, and is taken by its button with the house kept.
func TestOffline_NewerVersion(t *testing.T) {
	dir := t.TempDir()
	if err := os.CopyFS(dir, os.DirFS(dist)); err != nil {
		t.Fatal(err)
	}
	b := startAt(t, phone, http.FileServer(http.Dir(dir)))
	b.open("#" + house + "&backup=1500-1800")
	b.until(`navigator.serviceWorker.controller !== null`)
	change := func(name, was, now string) {
		t.Helper()
		file := filepath.Join(dir, name)
		raw, err := os.ReadFile(file)
		if err != nil || !strings.Contains(string(raw), was) {
			t.Fatalf("%s has no %q: %v", name, was, err)
		}
		if err := os.WriteFile(file, []byte(strings.Replace(string(raw), was, now, 1)), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	change("offline.js", `version = "`, `version = "newer `)
	change("index.html", "<main>", `<main data-newer="yes">`)
	b.open("#" + house + "&backup=1600-1800") // still the old one
	b.until(`document.getElementById('newer') !== null`)
	old := true
	if b.eval(`document.querySelector('[data-newer]') === null`, &old); !old {
		t.Error("the newer version came without being asked for")
	}
	b.shot("newer")
	b.run(chromedp.Click("#newer button"))
	b.until(`document.querySelector('[data-newer]') !== null`)
	b.ready()
	hash := ""
	if b.eval(`location.hash`, &hash); !strings.Contains(hash, "backup=1600-1800") {
		t.Errorf("the house became %s", hash)
	}
	b.clean()
}
