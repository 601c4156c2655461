// Writes dist/serif.woff2: the letters that the page's titles need of a variable serif, its weights
// between those of text and of titles.
import { readFile, writeFile } from 'node:fs/promises'
import subset from 'subset-font'

const from = new URL('../node_modules/@fontsource-variable/source-serif-4/files/source-serif-4-latin-wght-normal.woff2', import.meta.url)
const signs = range => Array.from({ length: range[1] - range[0] + 1 }, (_, i) => String.fromCodePoint(range[0] + i)).join('')
const letters = signs([0x20, 0x7e]) + '¡¿ÀÁÂÃÇÈÉÊÍÑÓÔÕÚÜàáâãäçèéêëíîïñóôõöúûüß' + '\u00a0\u202f–—‘’“”«»€£¥°×·−…º²'
const font = await subset(await readFile(from), letters, { targetFormat: 'woff2', variationAxes: { wght: { min: 400, max: 600 } } })
await writeFile(new URL('../../dist/serif.woff2', import.meta.url), font)
