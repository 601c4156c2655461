// The same program in a worker: it takes one job, answers it and ends.
import { run } from './load.js'

self.onmessage = async event => {
  self.importScripts('wasm_exec.js')
  self.job = event.data
  const { go, instance } = await run(self, event.data.loaded)
  await go.run(instance)
}
self.onunhandledrejection = event => { throw event.reason }
