module suncask

go 1.26

ignore ./site/node_modules

require (
	github.com/andybalholm/brotli v1.2.8
	github.com/chromedp/cdproto v0.0.0-20250724212937-08a3db8b4327
	github.com/chromedp/chromedp v0.14.2
	github.com/go-echarts/go-echarts/v2 v2.6.7
	github.com/makiuchi-d/gozxing v0.1.1
	github.com/vugu/html v0.0.0-20190914200101-c62dc20b8289
	github.com/vugu/vjson v0.0.0-20200505061711-f9cbed27d3d9
	github.com/vugu/vugu v0.4.0
	golang.org/x/text v0.14.0
	rsc.io/qr v0.2.0
)

require (
	github.com/chromedp/sysutil v1.1.0 // indirect
	github.com/go-json-experiment/json v0.0.0-20250725192818-e39067aee2d2 // indirect
	github.com/gobwas/httphead v0.1.0 // indirect
	github.com/gobwas/pool v0.2.1 // indirect
	github.com/gobwas/ws v1.4.0 // indirect
	github.com/vugu/xxhash v0.0.0-20191111030615-ed24d0179019 // indirect
	golang.org/x/sys v0.34.0 // indirect
	golang.org/x/xerrors v0.0.0-20200804184101-5ec99f83aff1 // indirect
)

tool github.com/vugu/vugu/cmd/vugugen
