// Finds the smaller places whose clock is another than their nearest town's: a few hundred, which
// the list of towns carries without names, so that a point near a border gets its own clock.

const rad = Math.PI / 180
const cells = 60 // of the sphere's radius

const year = 2026 // climate.RefYear
const clocks = new Map()

// clock is a zone's offsets through the year, as a text; its name where Node.js does not know it.
function clock (zone) {
  if (!clocks.has(zone)) clocks.set(zone, offsets(zone))
  return clocks.get(zone)
}

function offsets (zone) {
  try {
    const format = new Intl.DateTimeFormat('en', { timeZone: zone, timeZoneName: 'longOffset' })
    return [...Array(52).keys()].map(week => format.format(Date.UTC(year, 0, 4 + 7 * week, 12)).replace(/.*GMT/, '')).join()
  } catch {
    return zone
  }
}

// Cloud is a set of places on the sphere, in cells of a cube.
class Cloud {
  #cells = new Map()

  static #at ({ lat, lon }) {
    return [Math.cos(lat * rad) * Math.cos(lon * rad), Math.cos(lat * rad) * Math.sin(lon * rad), Math.sin(lat * rad)]
  }

  static #cell = (x, y, z) => (x * 1000 + y) * 1000 + z

  add (place) {
    const at = Cloud.#at(place), cell = Cloud.#cell(...at.map(v => Math.floor((v + 1) * cells)))
    if (!this.#cells.has(cell)) this.#cells.set(cell, [])
    this.#cells.get(cell).push({ at, place })
  }

  nearest (place) {
    const at = Cloud.#at(place), [x, y, z] = at.map(v => Math.floor((v + 1) * cells))
    let best, least = Infinity
    for (let ring = 1; ring <= 2 * cells && !(Math.sqrt(least) <= (ring - 1) / cells); ring++) {
      for (let i = x - ring; i <= x + ring; i++) {
        for (let j = y - ring; j <= y + ring; j++) {
          for (let k = z - ring; k <= z + ring; k++) {
            if (ring > 1 && Math.max(Math.abs(i - x), Math.abs(j - y), Math.abs(k - z)) < ring) continue
            for (const other of this.#cells.get(Cloud.#cell(i, j, k)) ?? []) {
              const d = other.at.reduce((sum, v, axis) => sum + (v - at[axis]) ** 2, 0)
              if (d < least) [best, least] = [other.place, d]
            }
          }
        }
      }
    }
    return best
  }
}

// outposts are those of the places ({ lat, lon, zone }) whose clock is not that of the nearest
// town or outpost.
export function outposts (towns, places) {
  const cloud = new Cloud(), list = []
  for (const town of towns) cloud.add(town)
  for (let found = true; found;) {
    found = false
    for (const place of places) {
      if (clock(cloud.nearest(place).zone) === clock(place.zone)) continue
      cloud.add(place)
      list.push(place)
      found = true
    }
  }
  return list
}
