// The same program in a worker: it takes one job, answers it and ends. The page's first job has
// the worker load the program, too: compiled and run here, it costs the page's thread little.
import { load, run } from './load.js'

self.onmessage = async ({ data: job }) => {
  self.importScripts('wasm_exec.js')
  if (job.load) {
    try {
      job.loaded = await load(job.load, share => self.postMessage({ share }))
    } catch (error) {
      self.postMessage({ failed: String(error) })
      return
    }
    self.suncaskReady = () => self.postMessage({ loaded: job.loaded })
  }
  self.job = job
  const { go, instance } = await run(self, job.loaded)
  await go.run(instance)
  if (job.load) self.postMessage({ loaded: job.loaded }) // it ended early: the page will find out why
}
self.onunhandledrejection = event => { throw event.reason }
