// Turns the drawings of the dial that the site's program has left in dist/ into pictures.
import { readFileSync, rmSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { initWasm, Resvg } from '@resvg/resvg-wasm'

const dist = new URL('../../dist/', import.meta.url)
await initWasm(readFileSync(createRequire(import.meta.url).resolve('@resvg/resvg-wasm/index_bg.wasm')))
for (const [from, to, width] of [
  ['icon', 'icon-192', 192], ['icon', 'icon-512', 512], ['icon-cut', 'icon-cut-512', 512], ['icon-cut', 'icon-touch', 180], ['preview', 'preview', 1200]
]) {
  const drawn = new Resvg(readFileSync(new URL(from + '.svg', dist)), { fitTo: { mode: 'width', value: width } })
  writeFileSync(new URL(to + '.png', dist), drawn.render().asPng())
}
for (const name of ['icon-cut', 'preview']) rmSync(new URL(name + '.svg', dist))
