// picture returns the SVG of an element, or of the first in it, as a file of its own: with
// the page's rules and its background. Nothing where there is none. It is put together as
// text: the page's policy forbids styles within documents.
export function picture (id) {
  const host = document.getElementById(id)
  const svg = host && (host instanceof SVGSVGElement ? host : host.querySelector('svg'))
  if (!svg) return ''
  const { width, height } = svg.getBoundingClientRect()
  const rules = [...document.styleSheets].flatMap(sheet => [...sheet.cssRules]).map(rule => rule.cssText).join('\n')
  const text = new XMLSerializer().serializeToString(svg)
  const end = text.indexOf('>')
  const box = svg.hasAttribute('viewBox') ? '' : ` viewBox="0 0 ${width} ${height}"`
  const head = text.slice(0, end).replace(/ (width|height|style)="[^"]*"/g, '')
  return `${head} width="${width}" height="${height}"${box}><style><![CDATA[${rules}
svg { background: ${getComputedStyle(document.body).backgroundColor} }]]></style>` + text.slice(end + 1)
}
