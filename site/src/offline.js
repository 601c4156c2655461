// The service worker: keeps all files of one version and answers from them, so that the
// page works without a network. The build puts `version` and `files` before this.
const prefix = 'suncask ' + self.registration.scope + ' '
const kept = prefix + version

self.addEventListener('install', event => {
  event.waitUntil(caches.open(kept).then(cache => cache.addAll(files.map(file => new Request(file, { cache: 'no-cache' })))))
})

self.addEventListener('activate', event => {
  event.waitUntil((async () => {
    for (const name of await caches.keys()) {
      if (name.startsWith(prefix) && name !== kept) await caches.delete(name)
    }
    await self.clients.claim()
  })())
})

// A new version waits until the page says so, or until no page is open.
self.addEventListener('message', event => {
  if (event.data === 'now') self.skipWaiting()
})

self.addEventListener('fetch', event => {
  const { request } = event
  if (request.method !== 'GET' || new URL(request.url).origin !== self.location.origin) return
  event.respondWith((async () => {
    const cache = await caches.open(kept)
    const wanted = request.mode === 'navigate' ? './' : request
    return await cache.match(wanted, { ignoreSearch: true }) || fetch(request)
  })())
})
