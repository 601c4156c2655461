package main

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"errors"
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"

	"github.com/vugu/vugu"
	"github.com/vugu/vugu/staticrender"

	"suncask/ui"
	"suncask/ui/chart"
	"suncask/ui/page"
	"suncask/ui/state"
	"suncask/ui/view"
	"suncask/ui/words"
)

// helperHash is the SHA-256 of vugu's helper script that the page was tested
// with. Another one means another vugu: read what changed, then change this.
const helperHash = "522085e7ca94752984d46fbfc4f86596f2a3e5eafd8c4f81d936d3fb8a7fdf98"

func build() error {
	if err := os.MkdirAll(dist, 0o755); err != nil {
		return err
	}
	if err := stylesheet(); err != nil {
		return err
	}
	if err := copyFile("site/static/manifest.webmanifest", filepath.Join(dist, "manifest.webmanifest")); err != nil {
		return err
	}
	if err := copyFile("engine/climate/places.csv", filepath.Join(dist, "places.csv")); err != nil {
		return err
	}
	for _, c := range words.All() {
		for units, c := range map[string]*words.Catalogue{"metric": c, "us": c.InCustomary()} {
			for part, text := range map[string]string{"words": c.Lines(), "visit": c.VisitLines(), "lesson": c.LessonLines()} {
				name := part + "." + c.Text(words.LanguageCode) + "." + units + ".txt"
				if err := os.WriteFile(filepath.Join(dist, name), []byte(text), 0o644); err != nil {
					return err
				}
			}
		}
	}
	root, err := output("go", "env", "GOROOT")
	if err != nil {
		return err
	}
	if err := copyFile(filepath.Join(root, "lib/wasm/wasm_exec.js"), filepath.Join(dist, "wasm_exec.js")); err != nil {
		return err
	}
	helper, err := vuguHelper()
	if err != nil {
		return err
	}
	if err := os.WriteFile(filepath.Join(dist, "vugu.js"), helper, 0o644); err != nil {
		return err
	}
	if err := index(); err != nil {
		return err
	}
	if err := licences(); err != nil {
		return err
	}
	if err := offline(); err != nil {
		return err
	}
	raw, err := os.ReadFile(filepath.Join(dist, townsFile))
	if err != nil {
		return err
	}
	zipped, err := gzipped(townsFile)
	if err != nil {
		return err
	}
	fmt.Printf("%s: %d bytes, %d with gzip, fetched when a place is asked for\n", townsFile, len(raw), len(zipped))
	return nil
}

// townsFile is the list of towns, which site/src/towns.mjs has written; a first visit does
// not load it.
const townsFile = "towns.txt"

// offline writes the service worker with the files it keeps, and the compressed program for
// hosts that compress nothing.
func offline() error {
	const program = "suncask.wasm"
	zipped, err := gzipped(program)
	if err != nil {
		return err
	}
	if err := os.WriteFile(filepath.Join(dist, program+".gz"), zipped, 0o644); err != nil {
		return err
	}
	entries, err := os.ReadDir(dist)
	if err != nil {
		return err
	}
	files, hash := []string{"./"}, sha256.New()
	for _, e := range entries {
		name := e.Name()
		raw, err := os.ReadFile(filepath.Join(dist, name))
		if err != nil {
			return err
		}
		fmt.Fprintf(hash, "%s %d\n%s", name, len(raw), raw)
		if name != "index.html" && name != program && name != townsFile && name != "licences.txt" && !strings.HasSuffix(name, ".png") {
			files = append(files, name)
		}
	}
	list, err := json.Marshal(files)
	if err != nil {
		return err
	}
	script, err := os.ReadFile("site/src/offline.js")
	if err != nil {
		return err
	}
	head := fmt.Sprintf("const version = %q, files = %s\n", hex.EncodeToString(hash.Sum(nil))[:12], list)
	return os.WriteFile(filepath.Join(dist, "offline.js"), append([]byte(head), script...), 0o644)
}

func charts() error {
	raw, err := chart.All()
	if err != nil {
		return err
	}
	_, err = os.Stdout.Write(raw)
	return err
}

func copyFile(from, to string) error {
	raw, err := os.ReadFile(from)
	if err != nil {
		return err
	}
	return os.WriteFile(to, raw, 0o644)
}

func output(name string, args ...string) (string, error) {
	out, err := exec.Command(name, args...).Output()
	if err != nil {
		return "", fmt.Errorf("%s %s: %w", name, strings.Join(args, " "), err)
	}
	return strings.TrimSpace(string(out)), nil
}

// vuguHelper takes the script that vugu would hand to eval out of its source, so
// that the page can load it from a file and forbid eval.
func vuguHelper() ([]byte, error) {
	dir, err := output("go", "list", "-m", "-f", "{{.Dir}}", "github.com/vugu/vugu")
	if err != nil {
		return nil, err
	}
	file, err := parser.ParseFile(token.NewFileSet(), filepath.Join(dir, "domrender/renderer-js-script.go"), nil, 0)
	if err != nil {
		return nil, err
	}
	text := ""
	ast.Inspect(file, func(n ast.Node) bool {
		if lit, ok := n.(*ast.BasicLit); ok && lit.Kind == token.STRING {
			if s, err := strconv.Unquote(lit.Value); err == nil && len(s) > len(text) {
				text = s
			}
		}
		return true
	})
	sum := sha256.Sum256([]byte(text))
	if got := hex.EncodeToString(sum[:]); got != helperHash {
		return nil, fmt.Errorf("vugu's helper script has hash %s, the page was tested with %s", got, helperHash)
	}
	return []byte(text), nil
}

// index writes the page with the example house rendered into it: real numbers
// before the WebAssembly has come.
func index() error {
	raw, err := os.ReadFile("site/static/index.html")
	if err != nil {
		return err
	}
	page, err := prerender()
	if err != nil {
		return err
	}
	text := strings.Replace(string(raw), "{{page}}", page, 1)
	return os.WriteFile(filepath.Join(dist, "index.html"), []byte(text), 0o644)
}

func prerender() (string, error) {
	var out bytes.Buffer
	renderer := staticrender.New(&out)
	env, err := vugu.NewBuildEnv(renderer.EventEnv())
	if err != nil {
		return "", err
	}
	p := page.New(state.Open(""), view.New())
	if err := renderer.Render(env.RunBuild(&ui.Root{Page: p})); err != nil {
		return "", err
	}
	before, after, ok := strings.Cut(out.String(), ` id="strip">`)
	if !ok {
		return "", errors.New("the page has no strip")
	}
	return before + ` id="strip">` + chart.Sketch(p.View.Strip(p.Store)) + after, nil
}
