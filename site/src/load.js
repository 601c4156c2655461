// load fetches places, words in a language and units, and the program. The program comes
// compressed where neither the host nor a service worker (kept) would send it so, and is compiled
// as it arrives; progress is told its share.
export async function load ({ spoken, locale, kept }, progress) {
  const [places, words, module] = await Promise.all([text('places.csv'), text(`words.${spoken}.${locale.units}.txt`), compile('suncask.wasm', kept, progress)])
  return { places, words, locale, module }
}

// run starts a loaded program in a scope.
export async function run (scope, { places, words, locale, module }) {
  scope.suncaskPlaces = places
  scope.suncaskWords = words
  scope.suncaskLocale = locale
  const go = new scope.Go()
  const instance = await WebAssembly.instantiate(module, go.importObject)
  await new Promise(turn => setTimeout(turn)) // the program's own start is long enough
  return { go, instance }
}

async function get (url) {
  const reply = await fetch(url)
  if (!reply.ok) throw new Error(url + ': ' + reply.status)
  return reply
}

async function text (url) {
  return (await get(url)).text()
}

async function compile (url, kept, progress) {
  let { body, packed } = await source(url, kept)
  if (packed) body = body.pipeThrough(new DecompressionStream('gzip'))
  let done = 0
  let told = 0
  const counted = body.pipeThrough(new TransformStream({
    transform (chunk, controller) {
      done += chunk.length
      if (done > told + WASM_BYTES / 20) progress(Math.min(1, (told = done) / WASM_BYTES))
      controller.enqueue(chunk)
    }
  }))
  // Whatever type the host sends: this one is right.
  return WebAssembly.compileStreaming(new Response(counted, { headers: { 'Content-Type': 'application/wasm' } }))
}

async function source (url, kept) {
  if (typeof DecompressionStream !== 'function') return await get(url)
  if (!kept) {
    const plain = await get(url)
    if (plain.headers.get('Content-Encoding')) return plain
    plain.body.cancel()
  }
  return { body: (await get(url + '.gz')).body, packed: true }
}
