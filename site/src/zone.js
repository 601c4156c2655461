// The list of towns, kept by the service worker once it was asked for.
export async function towns () {
  const reply = await fetch('towns.txt')
  if (!reply.ok) throw new Error('towns.txt: ' + reply.status)
  const text = await reply.text()
  const worker = navigator.serviceWorker
  if (worker && !worker.controller) worker.ready.then(({ active }) => active.postMessage('towns'))
  return text
}

// zone tells by how many hours a zone's clocks are ahead of UTC at noon of each of 365 days,
// by the browser's own data; null for a zone that it does not know.
export function zone (name, year) {
  try {
    const format = new Intl.DateTimeFormat('en', { timeZone: name, timeZoneName: 'longOffset' })
    const ahead = time => {
      const [, sign, hours, minutes] = /GMT(?:([+-])(\d+):(\d+))?$/.exec(format.format(time))
      return sign ? Number(sign + 1) * (Number(hours) + minutes / 60) : 0
    }
    return Array.from({ length: 365 }, (_, day) => {
      const noon = Date.UTC(year, 0, 1 + day, 12)
      return ahead(noon - 3600000 * ahead(noon))
    })
  } catch { return null }
}
