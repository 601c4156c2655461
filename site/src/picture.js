// picture returns the SVG of an element, or of the first in it, as a file of its own: with
// the page's rules and its background. Nothing where there is none.
export function picture (id) {
  const host = document.getElementById(id)
  const svg = host && (host instanceof SVGSVGElement ? host : host.querySelector('svg'))
  if (!svg) return ''
  const { width, height } = svg.getBoundingClientRect()
  const copy = svg.cloneNode(true)
  copy.setAttribute('xmlns', 'http://www.w3.org/2000/svg')
  copy.setAttribute('width', width)
  copy.setAttribute('height', height)
  if (!copy.getAttribute('viewBox')) copy.setAttribute('viewBox', `0 0 ${width} ${height}`)
  copy.style.background = getComputedStyle(document.body).backgroundColor
  const style = document.createElementNS('http://www.w3.org/2000/svg', 'style')
  style.textContent = [...document.styleSheets].flatMap(sheet => [...sheet.cssRules]).map(rule => rule.cssText).join('\n')
  copy.prepend(style)
  return new XMLSerializer().serializeToString(copy)
}
