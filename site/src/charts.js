// The charts: ECharts with what they need and nothing else. Their options are
// written when the site is built; the program hands over only numbers.
import { init, use } from 'echarts/core'
import { BarChart, LineChart, SankeyChart } from 'echarts/charts'
import { GridComponent } from 'echarts/components'
import { SVGRenderer } from 'echarts/renderers'
import themes from '../../dist/charts.json'

use([BarChart, LineChart, SankeyChart, GridComponent, SVGRenderer])

const charts = {}

// numbered are axes whose numbers are written as the page writes them.
const numbered = axes => axes?.map(() => ({
  axisLabel: { formatter: v => String(v).replace('.', window.suncaskLocale.decimal).replace(/\B(?=(\d{3})+$)/g, Math.abs(v) < 1e4 ? '' : '\u202f') }
}))

window.suncaskCharts = {
  // mount draws an empty chart in a box of its own inside the element of its name.
  mount (name, dark) {
    if (charts[name]) charts[name].drawn.dispose()
    const host = document.getElementById(name)
    host.textContent = ''
    const box = document.createElement('div')
    box.className = 'chart-box'
    host.append(box)
    const drawn = init(box, null, { renderer: 'svg' })
    const described = themes[dark ? 'dark' : 'light'][name]
    // Drawn with its data, not before.
    drawn.setOption(described, { lazyUpdate: true })
    drawn.setOption({ xAxis: numbered(described.xAxis), yAxis: numbered(described.yAxis) }, { lazyUpdate: true })
    charts[name] = { drawn, described, ends: [] }
  },
  // data takes numbers as little-endian doubles: how many vertical axes, their ends,
  // the ends across, then for each series its length and its points.
  data (name, bytes, count) {
    const chart = charts[name]
    const n = new Float64Array(bytes.buffer, bytes.byteOffset, count)
    const from = 3 + 2 * n[0]
    const ends = n.slice(1, from)
    const series = []
    for (let i = from; i < count;) {
      const points = []
      let left = n[i++]
      while (left-- > 0) {
        points.push([n[i], n[i + 1]])
        i += 2
      }
      series.push({ data: points })
    }
    const flow = chart.described.series[0]
    if (flow.type === 'sankey') { // drawn once its nodes are named
      chart.links = flow.links.map((link, i) => ({ ...link, value: series[0].data[i][1] }))
      return
    }
    const change = { series }
    if (ends.some((v, i) => v !== chart.ends[i])) {
      chart.ends = ends
      change.yAxis = []
      const [left, right] = ends.slice(-2)
      if (right > left) change.xAxis = [{ min: left, max: right, interval: right }]
      for (let i = 0; i < ends.length - 2; i += 2) {
        change.yAxis.push({ min: ends[i], max: ends[i + 1], interval: ends[i + 1] - ends[i] })
      }
    }
    chart.drawn.setOption(change, { lazyUpdate: false, silent: true })
  },
  // names draws an energy flow whose nodes have these names; those without energy are left out.
  names (name, names) {
    const chart = charts[name]
    const links = chart.links.filter(link => link.value > 0)
    const used = new Set(links.flatMap(link => [link.source, link.target]))
    const data = names.map((name, i) => ({ name, itemStyle: chart.described.series[0].data[i].itemStyle })).filter((_, i) => used.has(i))
    chart.drawn.setOption({
      series: [{ data, links: links.map(link => ({ source: names[link.source], target: names[link.target], value: link.value })) }]
    })
  },
  // series returns the points that are drawn, for scripts and tests.
  series (name) {
    return charts[name].drawn.getOption().series.map(s => s.data)
  }
}

window.addEventListener('resize', () => {
  for (const chart of Object.values(charts)) chart.drawn.resize()
})
window.dispatchEvent(new Event('charts-ready'))
