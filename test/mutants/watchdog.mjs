// Ends a process whose mutant uses far more processor time than the tests need: an endless loop keeps every timer of its
// own thread from firing, so this one counts on a thread beside it. Processor time, since a busy machine is no loop.
import { isMainThread, Worker, workerData } from "node:worker_threads";

const LOOK_EVERY_MS = 200;

const cpuMs = () => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

/** @returns {(allowedMs: number) => void} sets how much processor time may pass from now on; 0 for any. */
export function startWatchdog() {
  const until = new Float64Array(new SharedArrayBuffer(8));
  new Worker(new URL(import.meta.url), { workerData: until }).unref();
  return (allowedMs) => {
    until[0] = allowedMs === 0 ? 0 : cpuMs() + allowedMs;
  };
}

if (!isMainThread) {
  setInterval(() => {
    if (workerData[0] > 0 && cpuMs() > workerData[0]) process.kill(process.pid, "SIGKILL");
  }, LOOK_EVERY_MS);
}
