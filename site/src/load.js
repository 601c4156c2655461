// load starts the WebAssembly: streaming where the host sends the right type, else
// from bytes.
export async function load (url, imports) {
  const reply = await fetch(url)
  if (!reply.ok) throw new Error(url + ': ' + reply.status)
  try {
    return await WebAssembly.instantiateStreaming(reply.clone(), imports)
  } catch (error) {
    if (!(error instanceof TypeError)) throw error
    return WebAssembly.instantiate(await reply.arrayBuffer(), imports)
  }
}
