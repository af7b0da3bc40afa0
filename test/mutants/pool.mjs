// Gives mutants to processes, and puts another process in the place of one that hangs or dies.
import { fork } from "node:child_process";
import { join } from "node:path";

const WORKER = join(import.meta.dirname, "worker.mjs");
/** A mutant that allocates without end dies of it, before the machine does. */
const HEAP_MB = 1500;
/** A check may take this much longer than in the dry run, and this long anyhow, since the machine may be busy. */
const SLOWER = 20;
const ANYHOW_MS = 15_000;

/** Runs the tests with no mutant on, which writes what it finds into the plan. */
export async function dryRun(planFile) {
  const child = start("dry", planFile);
  const code = await new Promise((resolve) => child.on("exit", resolve));
  if (code !== 0) throw new Error("The dry run broke off.");
}

/**
 * @param {string} planFile
 * @param {readonly { id: number, ms: number }[]} jobs mutants, with what their checks take.
 * @param {number} processes
 * @param {(id: number, outcome: { status: string, by?: string }) => void} onOutcome
 */
export async function runAll(planFile, jobs, processes, onOutcome) {
  const waiting = [...jobs];
  await Promise.all(Array.from({ length: Math.min(processes, jobs.length) }, () => runSome()));

  async function runSome() {
    while (waiting.length > 0) await runUntilItEnds();
  }

  function runUntilItEnds() {
    return new Promise((resolve) => {
      const child = start("run", planFile);
      let job;
      let clock;
      child.on("message", ({ id, ...outcome }) => {
        clearTimeout(clock);
        if (job) onOutcome(id, outcome);
        job = waiting.shift();
        if (!job) return child.kill();
        clock = setTimeout(() => child.kill("SIGKILL"), ANYHOW_MS + SLOWER * job.ms);
        child.send({ id: job.id });
      });
      child.on("exit", () => {
        clearTimeout(clock);
        if (job) onOutcome(job.id, { status: "timeout" });
        resolve();
      });
    });
  }
}

const start = (task, planFile) =>
  fork(WORKER, [task, planFile], {
    execArgv: [`--max-old-space-size=${HEAP_MB}`],
    stdio: ["ignore", "ignore", "inherit", "ipc"],
  });
