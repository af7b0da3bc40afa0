// Gives mutants to processes, and puts another process in the place of one that hangs or dies.
import { fork } from "node:child_process";
import { join } from "node:path";

const WORKER = join(import.meta.dirname, "worker.mjs");
/** A mutant that allocates without end dies of it, before the machine does. */
const HEAP_MB = 1500;
/** Longest wait for an answer. Loops are ended by the watchdog, long before; this is for what waits for nothing. */
const LONGEST_MS = 300_000;

/** Runs the tests with no mutant on, which writes what it finds into the plan. */
export async function dryRun(planFile) {
  const child = start("dry", planFile);
  const code = await new Promise((resolve) => child.on("exit", resolve));
  if (code !== 0) throw new Error("The dry run broke off.");
}

/**
 * @param {string} planFile
 * @param {readonly number[]} mutants
 * @param {number} processes
 * @param {(id: number, outcome: { status: string, by?: string }) => void} onOutcome
 */
export async function runAll(planFile, mutants, processes, onOutcome) {
  const waiting = [...mutants];
  await Promise.all(Array.from({ length: Math.min(processes, mutants.length) }, () => runSome()));

  async function runSome() {
    while (waiting.length > 0) await runUntilItEnds();
  }

  function runUntilItEnds() {
    return new Promise((resolve) => {
      const child = start("run", planFile);
      let mutant;
      let clock;
      child.on("message", ({ id, ...outcome }) => {
        clearTimeout(clock);
        if (mutant !== undefined) onOutcome(id, outcome);
        mutant = waiting.shift();
        if (mutant === undefined) return child.kill();
        clock = setTimeout(() => child.kill("SIGKILL"), LONGEST_MS);
        child.send({ id: mutant });
      });
      child.on("exit", () => {
        clearTimeout(clock);
        if (mutant !== undefined) onOutcome(mutant, { status: "timeout" });
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
