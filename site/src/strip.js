// The strip chart: ECharts with what it needs and nothing else. Go hands over
// the options once and then only numbers.
import { init, use } from 'echarts/core'
import { LineChart } from 'echarts/charts'
import { GridComponent } from 'echarts/components'
import { SVGRenderer } from 'echarts/renderers'

use([LineChart, GridComponent, SVGRenderer])

let chart
let yAxis
let tops = []

window.suncaskStrip = {
  // mount draws an empty chart in a box of its own inside host.
  mount (host, options) {
    if (chart) chart.dispose()
    host.textContent = ''
    const box = document.createElement('div')
    box.className = 'strip-box'
    host.append(box)
    chart = init(box, null, { renderer: 'svg' })
    const parsed = JSON.parse(options)
    yAxis = parsed.yAxis
    tops = []
    chart.setOption(parsed)
  },
  // data takes numbers as little-endian doubles: the tops of the two axes, then
  // for each series its length and its points.
  data (bytes, count) {
    const n = new Float64Array(bytes.buffer, bytes.byteOffset, count)
    const series = []
    for (let i = 2; i < count;) {
      const points = []
      let left = n[i++]
      while (left-- > 0) {
        points.push([n[i], n[i + 1]])
        i += 2
      }
      series.push({ data: points })
    }
    const change = { series }
    if (tops[0] !== n[0] || tops[1] !== n[1]) {
      tops = [n[0], n[1]]
      change.yAxis = yAxis.map((axis, i) => ({ max: tops[i], interval: tops[i] }))
    }
    chart.setOption(change, { lazyUpdate: false, silent: true })
  },
  // series returns the points that are drawn, for scripts and tests.
  series () {
    return chart.getOption().series.map(s => s.data)
  }
}

window.addEventListener('resize', () => chart && chart.resize())
window.dispatchEvent(new Event('strip-ready'))
