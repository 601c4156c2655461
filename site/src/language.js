// Languages that the page has words in.
const languages = ['en', 'es']

// chosen is what the address asks for, or what this device keeps.
function chosen (key) {
  let kept = null
  try { kept = localStorage.getItem('suncask ' + key) } catch {}
  return [new URLSearchParams(location.search).get(key), kept]
}

// choose keeps a choice and shows the page in it; the address keeps the house.
export function choose (key, value) {
  try { localStorage.setItem('suncask ' + key, value) } catch {}
  const asked = new URLSearchParams(location.search)
  asked.set(key, value)
  location.search = asked
}

// language is the one chosen, or the browser's.
export function language () {
  return [...chosen('lang'), ...(navigator.languages ?? [])].map(l => l?.slice(0, 2).toLowerCase()).find(l => languages.includes(l)) ?? 'en'
}

// units are those chosen; US customary where the browser speaks the language of the United
// States and its clock is one of America's.
export function units () {
  const home = /-US$/.test(navigator.language) && /^(America|Pacific\/Honolulu)/.test(Intl.DateTimeFormat().resolvedOptions().timeZone)
  return chosen('units').find(u => u === 'us' || u === 'metric') ?? (home ? 'us' : 'metric')
}

// decimal is the mark before decimals: of the browser's region if it speaks the page's language.
export function decimal (spoken) {
  const region = navigator.languages?.find(l => l.startsWith(spoken)) ?? spoken
  return new Intl.NumberFormat(region).format(1.5)[1] === ',' ? ',' : '.'
}
