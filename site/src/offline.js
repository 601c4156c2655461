// The service worker: keeps all files of one version and answers from them, so that the
// page works without a network. The build puts `version` and `files` before this.
const prefix = 'suncask ' + self.registration.scope + ' '
const kept = prefix + version
const later = 'towns.txt' // kept once it was asked for

self.addEventListener('install', event => {
  event.waitUntil((async () => {
    const asked = []
    for (const name of await caches.keys()) {
      const cache = name.startsWith(prefix) && await caches.open(name)
      if (cache && await cache.match(later)) asked.push(later)
    }
    const cache = await caches.open(kept)
    await cache.addAll([...new Set([...files, ...asked])].map(file => new Request(file, { cache: 'no-cache' })))
  })())
})

self.addEventListener('activate', event => {
  event.waitUntil((async () => {
    for (const name of await caches.keys()) {
      if (name.startsWith(prefix) && name !== kept) await caches.delete(name)
    }
    await self.clients.claim()
  })())
})

// A new version waits until the page says so, or until no page is open. A page that fetched the
// towns before it had a worker says that too.
self.addEventListener('message', event => {
  if (event.data === 'now') self.skipWaiting()
  if (event.data === 'towns') event.waitUntil(caches.open(kept).then(cache => cache.add(later)))
})

self.addEventListener('fetch', event => {
  const { request } = event
  if (request.method !== 'GET' || new URL(request.url).origin !== self.location.origin) return
  event.respondWith((async () => {
    const cache = await caches.open(kept)
    const wanted = request.mode === 'navigate' ? './' : request
    const found = await cache.match(wanted, { ignoreSearch: true })
    if (found) return found
    const reply = await fetch(request)
    if (reply.ok && request.url.endsWith('/' + later)) await cache.put(later, reply.clone())
    return reply
  })())
})
