// Languages that the page has words in.
const languages = ['en', 'es', 'fr', 'pt']

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
function units () {
  const home = /-US$/.test(navigator.language) && /^(America|Pacific\/Honolulu)/.test(Intl.DateTimeFormat().resolvedOptions().timeZone)
  return chosen('units').find(u => u === 'us' || u === 'metric') ?? (home ? 'us' : 'metric')
}

// locale is how things are written: the units, and as the browser's region does if it speaks
// the page's language, the mark before decimals and whether a currency stands after its amount.
export function locale (spoken) {
  const region = navigator.languages?.find(l => l.startsWith(spoken)) ?? spoken
  const parts = new Intl.NumberFormat(region, { style: 'currency', currency: 'EUR' }).formatToParts(1.5).map(p => p.type)
  return {
    units: units(),
    decimal: new Intl.NumberFormat(region).format(1.5)[1] === ',' ? ',' : '.',
    currencyAfter: parts.indexOf('currency') > parts.indexOf('integer')
  }
}
