package main

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"

	"github.com/andybalholm/brotli"
)

// Ceilings of a first visit, bytes, and of what may follow.
const (
	wasmBrotli = 1_300_000
	wasmGzip   = 1_750_000
	restBrotli = 260_000

	townsBrotli = 500_000 // fetched when a place is asked for
)

// firstVisit are the files that the page loads beside the WebAssembly.
var firstVisit = []string{"index.html", "suncask.css", "serif.woff2", "icon.svg", "wasm_exec.js", "vugu.js", "boot.js", "worker.js", "charts.js", "places.csv", "words.en.metric.txt", "manifest.webmanifest"}

func sizes() error {
	raw, gz, br, err := packed("suncask.wasm")
	if err != nil {
		return err
	}
	fmt.Printf("%-14s %9d raw %9d gzip %9d brotli (ceilings %d gzip, %d brotli)\n", "suncask.wasm", raw, gz, br, wasmGzip, wasmBrotli)
	over := gz > wasmGzip || br > wasmBrotli
	rest := 0
	for _, name := range firstVisit {
		raw, gz, br, err := packed(name)
		if err != nil {
			return err
		}
		fmt.Printf("%-14s %9d raw %9d gzip %9d brotli\n", name, raw, gz, br)
		rest += br
	}
	fmt.Printf("%-14s %41d brotli (ceiling %d)\n", "all but wasm", rest, restBrotli)
	raw, gz, br, err = packed(townsFile)
	if err != nil {
		return err
	}
	fmt.Printf("%-14s %9d raw %9d gzip %9d brotli (ceiling %d brotli), not in the first visit\n", townsFile, raw, gz, br, townsBrotli)
	if br > townsBrotli {
		return fmt.Errorf("the list of towns is above its ceiling")
	}
	if over || rest > restBrotli {
		return fmt.Errorf("the first visit is above its ceiling")
	}
	return nil
}

// packed returns a file's size as it is, with gzip -9 and with brotli -11.
func packed(name string) (raw, gz, br int, err error) {
	text, err := os.ReadFile(filepath.Join(dist, name))
	if err != nil {
		return 0, 0, 0, err
	}
	zipped, err := gzipped(name)
	if err != nil {
		return 0, 0, 0, err
	}
	var b bytes.Buffer
	w := brotli.NewWriterLevel(&b, brotli.BestCompression)
	if _, err := w.Write(text); err != nil {
		return 0, 0, 0, err
	}
	if err := w.Close(); err != nil {
		return 0, 0, 0, err
	}
	return len(text), len(zipped), b.Len(), nil
}

// gzipped compresses a file of dist as gzip -9 does.
func gzipped(name string) ([]byte, error) {
	zipped, err := exec.Command("gzip", "-9", "--no-name", "--stdout", filepath.Join(dist, name)).Output()
	if err != nil {
		return nil, fmt.Errorf("gzip %s: %w", name, err)
	}
	return zipped, nil
}
