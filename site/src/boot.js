// Starts the WebAssembly: streaming where the host sends the right type, else
// from bytes. vugu's helper script is loaded already, so its one eval is idle.
const state = document.documentElement.dataset

function fail (error) {
  state.state = 'failed'
  const box = document.getElementById('trouble')
  box.querySelector('p').textContent =
    'The calculator could not start. What you see is the example house. Reload to try again.'
  box.querySelector('pre').textContent = String(error)
  box.hidden = false
}

async function load (url, imports) {
  const reply = await fetch(url)
  if (!reply.ok) throw new Error(url + ': ' + reply.status)
  try {
    return await WebAssembly.instantiateStreaming(reply.clone(), imports)
  } catch (error) {
    if (!(error instanceof TypeError)) throw error
    return WebAssembly.instantiate(await reply.arrayBuffer(), imports)
  }
}

async function boot () {
  const go = new window.Go()
  const { instance } = await load('suncask.wasm', go.importObject)
  const real = window.eval
  window.eval = () => undefined
  const ended = go.run(instance)
  window.eval = real
  await ended
  if (state.state !== 'failed') fail('the program ended')
}

boot().catch(fail)
