// Package published reads the published values that the engine is checked against.
// Only tests use it.
package published

import (
	"encoding/json"
	"os"
	"testing"
)

// Block decodes one block of a file in the project's testdata, which names its source.
// It is for tests of packages two folders below the top.
func Block(t testing.TB, file, name string, into any) {
	t.Helper()
	raw, err := os.ReadFile("../../testdata/" + file)
	if err != nil {
		t.Fatal(err)
	}
	all := map[string]json.RawMessage{}
	if err := json.Unmarshal(raw, &all); err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(all[name], into); err != nil {
		t.Fatalf("%s: %v", name, err)
	}
}

// Rows decodes the rows of a block, and fails where there are not so many of them.
func Rows[T any](t testing.TB, file, name string, want int) []T {
	t.Helper()
	var b struct{ Rows []T }
	Block(t, file, name, &b)
	if len(b.Rows) != want {
		t.Fatalf("%s: %d rows, not %d", name, len(b.Rows), want)
	}
	return b.Rows
}
