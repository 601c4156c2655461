// The charts: ECharts with what they need and nothing else. Their options are
// written when the site is built; the program hands over only numbers.
import { init, use } from 'echarts/core'
import { BarChart, LineChart, SankeyChart } from 'echarts/charts'
import { GridComponent } from 'echarts/components'
import { SVGRenderer } from 'echarts/renderers'
import themes from '../../dist/charts.json'

use([BarChart, LineChart, SankeyChart, GridComponent, SVGRenderer])

const charts = {}

// month names a month of an axis of twelve, by a letter where there is little room.
function month (m) {
  if (m < 1 || m > 12) return ''
  const style = innerWidth < 400 ? 'narrow' : 'short'
  return new Date(2026, m - 1).toLocaleDateString(document.documentElement.lang, { month: style }).replace('.', '')
}

// numbered are axes whose numbers are written as the page writes them, and whose ends stay where bars stand.
const numbered = axes => axes?.map(axis => ({
  containShape: false,
  axisLabel: axis.max === 13 ? { formatter: month } : { formatter: v => String(v).replace('.', window.suncaskLocale.decimal).replace(/\B(?=(\d{3})+$)/g, Math.abs(v) < 1e4 ? '' : '\u202f') }
}))

// tall are charts with room for more numbers at an axis than its ends.
const tall = new Set(['year', 'cash', 'iv'])

// even is a round step between two ends that both are multiples of, three to six of them, else all
// the way.
function even (from, to) {
  const step = [5, 4, 3, 6].map(n => (to - from) / n).find(step => {
    const lead = step / 10 ** Math.floor(Math.log10(step) + 1e-9)
    return [1, 2, 2.5, 5].some(k => Math.abs(lead - k) < 1e-6) && Math.abs(from / step - Math.round(from / step)) < 1e-6
  })
  return step ?? to - from
}

// parts are those of a line that is drawn, ECharts' own (its version is pinned), with the pixels of the
// axes' zeros and of one unit on each.
function parts ({ drawn }, i) {
  const model = drawn.getModel().getSeriesByIndex(i)
  const { _polyline: line, _polygon: area } = drawn.getViewOfSeriesModel(model)
  const [x, y] = ['x', 'y'].map(across => model.coordinateSystem.getAxis(across))
  const [left, top] = [x.toGlobalCoord(x.dataToCoord(0)), y.toGlobalCoord(y.dataToCoord(0))]
  return { line, area, left, top, wide: x.toGlobalCoord(x.dataToCoord(1)) - left, high: y.toGlobalCoord(y.dataToCoord(1)) - top }
}

window.suncaskCharts = {
  // mount draws an empty chart in a box of its own inside the element of its name.
  mount (name, dark) {
    if (charts[name]) charts[name].drawn.dispose()
    const host = document.getElementById(name)
    host.textContent = ''
    const box = document.createElement('div')
    box.className = 'chart-box'
    box.dataset.chart = name
    host.append(box)
    const drawn = init(box, null, { renderer: 'svg' })
    const described = themes[dark ? 'dark' : 'light'][name]
    // Drawn with its data, not before.
    drawn.setOption(described, { lazyUpdate: true })
    const series = described.series.map(s => s.type === 'bar' && s.label ? { label: { show: box.clientWidth > 370, formatter: ({ value }) => String(Math.round(value[1])) } } : {})
    drawn.setOption({ xAxis: numbered(described.xAxis), yAxis: numbered(described.yAxis), series }, { lazyUpdate: true })
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
        change.yAxis.push({ min: ends[i], max: ends[i + 1], interval: tall.has(name) ? even(ends[i], ends[i + 1]) : ends[i + 1] - ends[i] })
      }
    }
    chart.drawn.setOption(change, { lazyUpdate: false, silent: true })
    chart.drawn.getZr().flush()
    chart.lengths = series.map(s => s.data.length)
  },
  // move takes the numbers of a gesture's frame: curves that are drawn already get new points, and
  // nothing else is worked out anew. The gesture's last numbers go to data.
  move (name, bytes, count) {
    const chart = charts[name]
    const n = new Float64Array(bytes.buffer, bytes.byteOffset, count)
    let from = 3 + 2 * n[0]
    for (let i = 1; i < from; i++) if (n[i] !== chart.ends[i - 1]) return this.data(name, bytes, count)
    const moved = []
    for (let i = 0; from < count; i++) {
      const length = n[from++]
      if (!length !== !chart.lengths[i]) return this.data(name, bytes, count)
      if (length) moved.push([i, from, length])
      from += 2 * length
    }
    for (const [i, from, length] of moved) {
      const { line, area, left, top, wide, high } = parts(chart, i)
      const points = new Float32Array(2 * length)
      const foot = area && new Float32Array(2 * length)
      for (let k = 0; k < 2 * length; k += 2) {
        points[k] = left + wide * n[from + k]
        points[k + 1] = top + high * n[from + k + 1]
        if (foot) [foot[k], foot[k + 1]] = [points[k], top]
      }
      line.setShape({ points })
      area?.setShape({ points, stackedOnPoints: foot })
    }
    chart.drawn.getZr().flush()
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
  // across is the value of a chart's horizontal axis under a pixel of the screen; NaN beside its plot.
  across (name, clientX) {
    const chart = charts[name]
    const left = chart.drawn.getDom().getBoundingClientRect().left
    return chart.drawn.convertFromPixel({ xAxisIndex: 0 }, clientX - left)
  },
  // mark stands a line at a value of the horizontal axis; it takes no tap.
  mark (name, x) {
    const chart = charts[name]
    const box = chart.drawn.getDom()
    let line = box.querySelector('.read-mark')
    if (!line) {
      line = document.createElement('div')
      line.className = 'read-mark'
      box.append(line)
    }
    chart.marked = x
    line.style.left = chart.drawn.convertToPixel({ xAxisIndex: 0 }, x) + 'px'
  },
  // points returns those of the lines as they are drawn, back in their axes' units; for tests.
  points (name) {
    const chart = charts[name]
    return chart.lengths.map((length, i) => {
      if (!length) return []
      const { line, left, top, wide, high } = parts(chart, i)
      const at = line.shape.points
      return Array.from({ length: at.length / 2 }, (_, k) => [(at[2 * k] - left) / wide, (at[2 * k + 1] - top) / high])
    })
  },
  // series returns a chart's points, for scripts and tests.
  series (name) {
    return charts[name].drawn.getOption().series.map(s => s.data)
  }
}

window.addEventListener('resize', () => {
  for (const [name, chart] of Object.entries(charts)) {
    chart.drawn.resize()
    if (chart.marked !== undefined) suncaskCharts.mark(name, chart.marked)
  }
})
window.dispatchEvent(new Event('charts-ready'))
