// load fetches places and words, and starts the WebAssembly.
export async function load (scope, url, imports) {
  const [places, words, program] = await Promise.all([text('places.csv'), text('words.en.txt'), compile(url, imports)])
  scope.suncaskPlaces = places
  scope.suncaskWords = words
  return program
}

async function text (url) {
  const reply = await fetch(url)
  if (!reply.ok) throw new Error(url + ': ' + reply.status)
  return reply.text()
}

// compile does so streaming where the host sends the right type, else from bytes.
async function compile (url, imports) {
  const reply = await fetch(url)
  if (!reply.ok) throw new Error(url + ': ' + reply.status)
  try {
    return await WebAssembly.instantiateStreaming(reply.clone(), imports)
  } catch (error) {
    if (!(error instanceof TypeError)) throw error
    return WebAssembly.instantiate(await reply.arrayBuffer(), imports)
  }
}
