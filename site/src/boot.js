import { load } from './load.js'
import { picture } from './picture.js'

window.suncaskPicture = picture

// Starts the WebAssembly. vugu's helper script is loaded already, so its one eval is idle.
const state = document.documentElement.dataset

function fail (error) {
  state.state = 'failed'
  const box = document.getElementById('trouble')
  box.querySelector('p').textContent =
    'The calculator could not start. What you see is the example house. Reload to try again.'
  box.querySelector('pre').textContent = String(error)
  box.hidden = false
}

async function boot () {
  const go = new window.Go()
  const { instance } = await load(window, 'suncask.wasm', go.importObject)
  const real = window.eval
  window.eval = () => undefined
  const ended = go.run(instance)
  window.eval = real
  await ended
  if (state.state !== 'failed') fail('the program ended')
}

boot().catch(fail)
