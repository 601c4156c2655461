// Languages that the page has words in.
const languages = ['en', 'es']
const kept = 'suncask language'

// language is the one asked for in the address, kept on this device, or the browser's.
export function language () {
  let own = null
  try { own = localStorage.getItem(kept) } catch {}
  const asked = [new URLSearchParams(location.search).get('lang'), own, ...(navigator.languages ?? [])]
  return asked.map(l => l?.slice(0, 2).toLowerCase()).find(l => languages.includes(l)) ?? 'en'
}

// speak keeps a language and shows the page in it; the address keeps the house.
export function speak (code) {
  try { localStorage.setItem(kept, code) } catch {}
  location.search = '?lang=' + code
}
