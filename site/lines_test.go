package main

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
)

// traced is a program that walks its stack in every way the page's may: by collections, growing
// stacks, a recovered failure and one that is not.
const traced = `package main

import (
	"fmt"
	"runtime"
)

type tree struct{ a, b *tree }

func grow(n int) *tree {
	if n == 0 {
		runtime.GC()
		return nil
	}
	var room [64]int
	room[n%64] = n
	return &tree{grow(n - room[n%64]/n), nil}
}

func fails(n int) (said any) {
	defer func() { said = recover() }()
	return []int{1}[n]
}

func deep(n int) {
	if n == 0 {
		panic("at last")
	}
	deep(n - 1)
}

func main() {
	fmt.Println(fails(7))
	done := make(chan *tree)
	go func() { done <- grow(3000) }()
	n := 0
	for t := <-done; t != nil; t = t.a {
		n++
	}
	fmt.Println(n)
	deep(3)
}
`

// Without its lines a program does the same, and the trace of its failure names the functions and
// no file; it is smaller by what stays unsaid.
func TestUnline(t *testing.T) {
	dir := t.TempDir()
	at := func(name string) string { return filepath.Join(dir, name) }
	for name, text := range map[string]string{"main.go": traced, "go.mod": "module traced\n\ngo 1.26\n"} {
		if err := os.WriteFile(at(name), []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	build := exec.Command("go", "build", "-ldflags=-s -w", "-o", "traced.wasm", ".")
	build.Dir, build.Env = dir, append(os.Environ(), "GOOS=js", "GOARCH=wasm")
	if out, err := build.CombinedOutput(); err != nil {
		t.Fatalf("%v: %s", err, out)
	}
	root, err := exec.Command("go", "env", "GOROOT").Output()
	if err != nil {
		t.Fatal(err)
	}
	run := func() (out, trace string) {
		c := exec.Command("node", "--stack-size=8192", filepath.Join(strings.TrimSpace(string(root)), "lib/wasm/wasm_exec_node.js"), at("traced.wasm"))
		c.Env = []string{"PATH=" + os.Getenv("PATH")} // a large environment is refused
		var errors strings.Builder
		c.Stderr = &errors
		said, err := c.Output()
		if err == nil {
			t.Fatal("it did not fail")
		}
		return string(said), errors.String()
	}
	before, lined := run()
	if !strings.Contains(lined, "main.go:") || !strings.HasPrefix(before, "runtime error: index out of range [7] with length 1\n3000\n") {
		t.Fatalf("%s%s", before, lined)
	}
	module, err := os.ReadFile(at("traced.wasm"))
	if err != nil {
		t.Fatal(err)
	}
	zeros := func() (n int) {
		for _, b := range module {
			if b == 0 {
				n++
			}
		}
		return n
	}
	was := zeros()
	if module, err = joined(module); err == nil {
		err = unline(module)
	}
	if err != nil {
		t.Fatal(err)
	}
	if now := zeros(); now < was+len(module)/40 {
		t.Errorf("%d zeros, before %d of %d", now, was, len(module))
	}
	if err := os.WriteFile(at("traced.wasm"), module, 0o644); err != nil {
		t.Fatal(err)
	}
	after, trace := run()
	if after != before {
		t.Errorf("it says %q, before %q", after, before)
	}
	if !strings.Contains(trace, "at last") || strings.Count(trace, "main.deep(") != 4 || strings.Contains(trace, ".go:") {
		t.Errorf("trace:\n%s", trace)
	}
}

// Modules without such tables, or with torn ones, are refused.
func TestUnline_Refused(t *testing.T) {
	head := "\x00asm\x01\x00\x00\x00"
	data := func(text string) string {
		body := "\x01\x00\x41\x00\x0b" + string(rune(len(text))) + text
		return head + "\x0b" + string(rune(len(body))) + body
	}
	for name, module := range map[string]string{"no module": "hello", "no tables": data("abc"), "torn": data(tablesMagic + "abcdefg")} {
		if err := unline([]byte(module)); err == nil {
			t.Errorf("%s: taken", name)
		}
	}
}
