import { load, run } from './load.js'
import { choose, language, locale } from './language.js'
import { picture } from './picture.js'
import { towns, zone } from './zone.js'

// Starts the WebAssembly. vugu's helper script is loaded already, so its one eval is idle.
const state = document.documentElement.dataset

window.suncaskPicture = picture
window.suncaskChoose = choose
window.suncaskTowns = towns
window.suncaskZone = zone
window.suncaskRead = text => { try { return Object(JSON.parse(text)) } catch { return {} } }

// The texts of a visit or a lesson and their parts of the stylesheet come when somebody enters one.
window.suncaskPart = async name => {
  const sheet = Object.assign(document.createElement('link'), { rel: 'stylesheet', href: name + '.css' })
  const styled = new Promise((resolve, reject) => { sheet.onload = resolve; sheet.onerror = reject })
  document.head.append(sheet)
  await styled
  const reply = await fetch(`${name}.${spoken}.${locale(spoken).units}.txt`)
  if (!reply.ok) throw new Error(reply.url + ': ' + reply.status)
  return reply.text()
}
try { state.theme = localStorage.getItem('suncask theme') ?? 'auto' } catch {}
window.suncaskStorage = () => { try { return localStorage } catch { return null } }

const spoken = language()
const failed = {
  en: 'The calculator could not start. What you see is the example house. Reload to try again.',
  es: 'El calculador no pudo arrancar. Lo que ves es la casa de ejemplo. Recarga para intentarlo de nuevo.',
  fr: 'Le calculateur n’a pas pu démarrer. Vous voyez la maison d’exemple. Rechargez la page pour réessayer.',
  pt: 'A calculadora não conseguiu arrancar. O que se vê é a casa de exemplo. Recarregar para tentar de novo.'
}

function fail (error) {
  state.state = 'failed'
  const box = document.getElementById('trouble')
  box.querySelector('p').textContent = failed[spoken]
  box.querySelector('pre').textContent = String(error)
  box.hidden = false
}

// The charts' script comes when a chart is needed, and else some seconds after the start.
let drawing = false
window.suncaskDraw = () => {
  if (!drawing) document.head.append(Object.assign(document.createElement('script'), { src: 'charts.js', onerror: () => { drawing = false } }))
  drawing = true
}

// painted waits until the example is on the screen; a page in the background is not painted.
const painted = () => new Promise(done => {
  requestAnimationFrame(() => setTimeout(done))
  setTimeout(done, 500)
})

// label lets labels name what the dial shows, until somebody touches the page.
function label () {
  state.first = ''
  const seen = () => {
    delete state.first
    try { localStorage.setItem('suncask seen', '1') } catch {}
    for (const event of ['pointerdown', 'keydown']) removeEventListener(event, seen, true)
  }
  for (const event of ['pointerdown', 'keydown']) addEventListener(event, seen, true)
}
window.suncaskLabel = label

// greet does that on a first visit.
function greet () {
  if (location.hash.includes('view=lesson')) return // of a class nothing is kept
  try { if (localStorage.getItem('suncask seen')) return } catch { return }
  label()
}

// loadedInWorker has a worker load the program and run it once: engines compile WebAssembly when
// it first runs, and share what is compiled between a worker and its page. Where that is not to
// be had, the page loads it itself.
function loadedInWorker (what, progress) {
  return new Promise((resolve, reject) => {
    let worker
    let handed = false
    const alone = () => {
      worker?.terminate()
      if (!handed) load(what, progress).then(resolve, reject)
      handed = true
    }
    try { worker = new Worker('worker.js') } catch { return alone() }
    worker.onerror = alone
    worker.onmessageerror = alone
    worker.onmessage = ({ data }) => {
      if ('share' in data) progress(data.share)
      if ('failed' in data) alone() // and says itself what is wrong
      if ('loaded' in data) {
        handed = true
        resolve(data.loaded)
      }
      if ('end' in data) worker.terminate()
    }
    worker.postMessage({ link: location.hash.slice(1), load: what })
  })
}

async function boot () {
  await painted()
  const bar = document.getElementById('progress')
  const what = { spoken, locale: locale(spoken), kept: !!navigator.serviceWorker?.controller }
  const loaded = await loadedInWorker(what, share => { bar.value = share })
  window.suncaskLoaded = loaded // for workers
  document.documentElement.lang = spoken
  const { go, instance } = await run(window, loaded)
  window.suncaskMemory = () => instance.exports.mem.buffer.byteLength
  window.eval = () => undefined // the policy forbids it anyway
  const ended = go.run(instance)
  keepOffline()
  setTimeout(window.suncaskDraw, 4000)
  await ended
  if (state.state !== 'failed') fail('the program ended')
}

// keepOffline lets a service worker keep this version, and tells the page when a newer one
// waits. Without one, or without storage, the page works on, online.
async function keepOffline () {
  try {
    const registration = await navigator.serviceWorker.register('offline.js')
    const tell = () => {
      if (!registration.waiting || !navigator.serviceWorker.controller) return
      window.suncaskUpdate = () => {
        navigator.serviceWorker.addEventListener('controllerchange', () => location.reload())
        registration.waiting.postMessage('now')
      }
      window.dispatchEvent(new Event('newer-version'))
    }
    tell()
    registration.addEventListener('updatefound', () => registration.installing?.addEventListener('statechange', tell))
  } catch {}
}

greet()
boot().catch(fail)
