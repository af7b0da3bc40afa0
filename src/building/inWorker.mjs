// @ts-check
import { Worker } from "node:worker_threads";

/**
 * Runs a module in a thread of its own, so that it uses the other core while webpack keeps the main thread busy.
 *
 * @template T
 * @param {URL} file the module; it posts its result as one message.
 * @param {unknown} given its `workerData`.
 * @returns {Promise<T>}
 */
export function inWorker(file, given) {
  return new Promise((resolve, reject) => {
    const worker = new Worker(file, { workerData: given });
    worker.once("message", resolve);
    worker.once("error", reject);
    worker.once("exit", (code) => reject(new Error(`${file.pathname} ended with ${code} before it had a result.`)));
  });
}
