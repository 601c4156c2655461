// The same program in a worker: it takes one job, answers it and ends.
import { load } from './load.js'

self.onmessage = async event => {
  self.importScripts('wasm_exec.js')
  self.job = event.data
  const go = new self.Go()
  const { instance } = await load(self, 'suncask.wasm', go.importObject)
  await go.run(instance)
}
self.onunhandledrejection = event => { throw event.reason }
