#!/usr/bin/env bash
# Builds, serves and tests Suncask. See README.md.
set -euo pipefail
cd "$(dirname "$0")"

usage() {
  echo "usage: ./build.sh run | build | gen | test | bench"
  echo "  run    build, serve on this machine and print the address"
  echo "  build  put the static site into dist/"
  echo "  gen    make vugu's generated Go (needed before editors and go vet)"
  echo "  test   everything: format, vet, engine natively and in WebAssembly, build, sizes, browser, Lighthouse"
  echo "  bench  print the benchmarks, natively and in WebAssembly, and Lighthouse's scores"
}

# need TOOL WHAT-FOR: names what is missing; all of it before failing.
missing=0
need() {
  if ! command -v "$1" >/dev/null 2>&1; then
    echo "missing: $1 ($2)" >&2
    missing=1
  fi
}

tools() {
  need go "the Go toolchain, 1.26 or later"
  need node "Node.js, for WebAssembly tests and the chart bundle"
  need gzip "gzip, to measure what is sent"
  need npm "Node's npm, for the chart bundle"
  if [ "${1:-}" = browser ] && ! command -v chromium >/dev/null 2>&1; then
    if [ -f /etc/debian_version ] && [ "$(id -u)" = 0 ]; then
      echo "installing Chromium for the browser tests"
      apt-get update -qq && apt-get install -y -qq chromium >/dev/null
    fi
    need chromium "Chromium, for the browser tests (Debian: apt-get install chromium)"
  fi
  [ "$missing" = 0 ] || exit 1
}

gen() {
  rm -f ui/*_gen.go ui/*/*_gen.go
  go generate ./ui/...
  # What the templates say over and over becomes calls of ui/nodes, smaller in WebAssembly.
  go run ./ui/nodes/pack $(generated)
}

# generated lists what vugu made.
generated() { find ui -name '*_gen.go'; }

packages() {
  # A fresh install whenever the lock file is newer than what is there.
  if [ ! -e site/node_modules/.package-lock.json ] || [ site/package-lock.json -nt site/node_modules/.package-lock.json ]; then
    (cd site && npm ci --ignore-scripts --no-audit --no-fund --loglevel=error)
    touch site/node_modules/.package-lock.json
  fi
}

# program LDFLAGS FILE
program() {
  # Packages that do not simulate are built without inlining: a twentieth smaller.
  cold=()
  for p in encoding/... reflect fmt net/... os time log html io/... internal/{poll,abi,runtime/atomic} syscall/... strings github.com/... \
    suncask/wasm suncask/ui suncask/ui/{page,nodes,parts,day,house,year,advice,sheets,visit,words,curve,view,state,format,landscape,skyline,calendar,dial} \
    suncask/engine/{scenario,climate/hourly,climate,care,plan,finance,tariff,draw,explain,visit}; do
    cold+=("-gcflags=$p=-l")
  done
  # The tag tinygo makes vugu take its own small JSON instead of encoding/json, 100 kB.
  GOOS=js GOARCH=wasm go build -trimpath -tags outside,tinygo -ldflags="$1" "${cold[@]}" -o "$2" ./wasm
}

build() {
  packages
  rm -rf dist
  mkdir dist
  program '-s -w' dist/suncask.wasm
  go run ./site join
  go run ./site charts >dist/charts.json
  (cd site && node_modules/.bin/esbuild src/charts.js --bundle --minify --target=es2020 --legal-comments=none --outfile=../dist/charts.js --log-level=warning)
  rm dist/charts.json
  for script in boot worker; do
    (cd site && node_modules/.bin/esbuild "src/$script.js" --bundle --minify --target=es2020 --format=iife "--define:WASM_BYTES=$(wc -c <../dist/suncask.wasm)" "--outfile=../dist/$script.js" --log-level=warning)
  done
  go run ./site icons
  node site/src/icons.mjs
  node site/src/towns.mjs
  node site/src/font.mjs
  go run ./site build
}

# wasm runs go for js/wasm under node; wasm_exec refuses a large environment.
wasm() {
  env -i PATH="$(go env GOROOT)/lib/wasm:$PATH" HOME="$HOME" GOCACHE="$(go env GOCACHE)" \
    GOFLAGS="$(go env GOFLAGS)" GOPROXY="$(go env GOPROXY)" GOOS=js GOARCH=wasm go "$@"
}

# lighthouse scores the first visit on a phone. It is not in the lock file: 200 packages that
# nothing else needs.
lighthouse() {
  echo "== first visit on a phone"
  (cd site && npm install --no-save --no-package-lock --ignore-scripts --no-audit --no-fund --loglevel=error lighthouse@12.8.2)
  served=$(mktemp -d)
  go build -o "$served/site" ./site
  "$served/site" serve >"$served/said" &
  sleep 1
  address=$(sed -n 's/.*\(http:[^ ]*\).*/\1/p' "$served/said")
  scored=0
  (cd site && CHROME_PATH=$(command -v chromium) node lighthouse.mjs "$address") || scored=1
  kill $!
  rm -r "$served"
  return $scored
}

check() {
  unformatted=$(gofmt -l engine ui wasm site/*.go site/browser 2>/dev/null || true)
  if [ -n "$unformatted" ]; then
    echo "gofmt would change: $unformatted" >&2
    exit 1
  fi
  go vet ./...
  GOOS=js GOARCH=wasm go vet ./engine/... ./ui/... ./wasm
}

case "${1:-}" in
  run)
    tools
    gen
    build
    go run ./site serve
    ;;
  build)
    tools
    gen
    build
    ;;
  gen)
    tools
    gen
    ;;
  test)
    tools browser
    gen
    check
    echo "== engine and interface, natively"
    go test -timeout 40m ./engine/... ./ui/...
    go test ./engine/scenario -run '^$' -fuzz FuzzDecode -fuzztime=50000x
    go test ./ui/state -run '^$' -fuzz FuzzType -fuzztime=50000x
    for layout in EPW TMY3 PVGIS POWER NSRDB Plain; do
      go test ./engine/climate/hourly -run '^$' -fuzz "Fuzz$layout\$" -fuzztime=30000x -fuzzminimizetime 5x
    done
    echo "== engine, in WebAssembly under node"
    wasm test -timeout 40m ./engine/...
    echo "== build and sizes"
    build
    go run ./site sizes
    echo "== in Chromium"
    go test -count 1 -timeout 40m -v ./site/...
    lighthouse
    ;;
  bench)
    tools browser
    gen
    echo "== natively"
    go test ./engine/simulate ./engine/plan ./engine/climate/hourly -run '^$' -bench . -count 5
    echo "== in WebAssembly under node"
    wasm test ./engine/simulate ./engine/plan ./engine/climate/hourly -run '^$' -bench . -count 5
    build
    go run ./site sizes
    echo "== the program by section and package"
    named=$(mktemp)
    program -w "$named"
    go run ./site weigh "$named"
    rm "$named"
    lighthouse
    ;;
  *)
    usage
    exit 2
    ;;
esac
