// Command site assembles the static site and serves it on this machine:
//
//	site join    joins the data segments of the WebAssembly
//	site charts  prints the options of the charts, which the bundle takes in
//	site icons   draws the icons from the dial, to be turned into pictures
//	site build   puts everything but the WebAssembly and the bundles into dist/
//	site sizes   prints what a first visit loads and fails above the ceilings
//	site weigh   prints what a WebAssembly with names weighs, by section and package
//	site serve   serves dist/ and prints the address
package main

import (
	"fmt"
	"os"
)

// dist is where the site is put together, from the top of the project.
const dist = "dist"

func main() {
	if len(os.Args) < 2 {
		fail(fmt.Errorf("say join, charts, icons, build, sizes, weigh or serve"))
	}
	var err error
	switch os.Args[1] {
	case "join":
		err = join()
	case "charts":
		err = charts()
	case "icons":
		err = icons()
	case "build":
		err = build()
	case "sizes":
		err = sizes()
	case "weigh":
		if len(os.Args) < 3 {
			fail(fmt.Errorf("say which file to weigh"))
		}
		err = weigh(os.Args[2])
	case "serve":
		err = serve()
	default:
		err = fmt.Errorf("unknown command %q: say join, charts, icons, build, sizes, weigh or serve", os.Args[1])
	}
	if err != nil {
		fail(err)
	}
}

func fail(err error) {
	fmt.Fprintln(os.Stderr, "site:", err)
	os.Exit(1)
}
