// The process that mutants run in. Its parent gives it a mutant, it tells whether a test fails, and where it hangs or
// dies, the parent starts another. The first of them makes the dry run.
import { readFileSync, writeFileSync } from "node:fs";
import { dryRun } from "./dryRun.mjs";
import { collect, runTest, testsOf } from "./harness.mjs";
import { ranOver, turnOff, turnOn } from "./switches.mjs";
import { loadPackages, TestFile } from "./testFile.mjs";
import { startWatchdog } from "./watchdog.mjs";

const [task, planFile] = process.argv.slice(2);
const plan = JSON.parse(readFileSync(planFile, "utf8"));
for (const name of ["log", "info", "warn", "error"]) console[name] = () => {};
// What a mutant leaves behind after its test is over.
process.on("unhandledRejection", () => {});
process.on("uncaughtException", () => {});

/** A loop passes its mutant this many times more than in the dry run before it counts as endless. */
const PASSES_MORE = 100;
const PASSES_AT_LEAST = 20_000;
/** Likewise for processor time, where the mutant itself is outside the loop. */
const TIME_MORE = 10;
const TIME_AT_LEAST_MS = 3000;

if (task === "dry") {
  const { checks, ...told } = await dryRun(plan);
  writeFileSync(planFile, JSON.stringify({ ...plan, ...told, checks: Object.fromEntries(checks) }));
  process.exit(0);
}

const allow = startWatchdog();
const loaded = new Map();
process.on("message", async ({ id }) => process.send({ id, ...(await outcomeOf(id, plan.checks[id])) }));
process.send({ ready: true });

/** Runs what passes a mutant until something fails. */
async function outcomeOf(id, checks) {
  for (const check of checks) {
    const copy = await copyOf(check.file);
    const failed = await fails(id, check, copy);
    if (!failed) continue;
    // A test that now fails without the mutant has kept something of it: then only a fresh copy tells.
    if (check.kind === "test" && (await fails(-1, check, copy))) {
      loaded.delete(check.file);
      if (!(await fails(id, check, await copyOf(check.file)))) continue;
    }
    return failed;
  }
  return { status: "survived" };
}

/** The tests of a file, as they are with no mutant on. */
async function copyOf(file) {
  if (!loaded.has(file)) {
    const { bundle, packages } = plan.files[file];
    await loadPackages(packages);
    const testFile = new TestFile(bundle);
    loaded.set(file, { testFile, ...testFile.fresh() });
  }
  return loaded.get(file);
}

async function fails(id, check, copy) {
  allow(TIME_AT_LEAST_MS + TIME_MORE * check.ms);
  turnOn(id, Math.max(PASSES_AT_LEAST, check.passes * PASSES_MORE));
  try {
    for (const test of testsFor(check, copy)) await runTest(test);
  } catch (error) {
    return { status: ranOver() ? "timeout" : "killed", by: error?.message };
  } finally {
    turnOff();
    allow(0);
  }
  return ranOver() ? { status: "timeout" } : undefined;
}

function testsFor({ kind, index, file }, { testFile, root, tests }) {
  const leftOut = new Set(plan.leftOutTests?.[file]);
  if (kind === "test") return [tests[index]];
  if (kind === "file") return testFile.fresh().tests.filter((test) => !leftOut.has(test.index));
  const { name, body } = root.suites[index];
  const first = testsOf(root.suites[index])[0]?.index ?? 0;
  return testsOf(collect(name, body, root)).filter((_, at) => !leftOut.has(first + at));
}
