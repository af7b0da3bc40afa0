// Runs every test once with no mutant on, and notes which mutants it passes and how long it takes.
import { makeReady, runTest, testsOf, watch } from "./harness.mjs";
import { startCounting } from "./switches.mjs";
import { loadPackages, TestFile } from "./testFile.mjs";

/**
 * What can be run alone to see a mutant: a whole file where loading it passes the mutant, an outermost `describe` where its body does, or
 * one test.
 *
 * @typedef {{ file: number, kind: "file" | "suite" | "test", index: number, ms: number, passes: number }} Check
 */

/**
 * @param {{ files: readonly { test: string, bundle: string, packages: string[] }[], slowMs: number, mutantMs: number }}
 *   plan a test that takes longer than `slowMs` is left out; a mutant gets checks of `mutantMs` at most.
 * @returns {Promise<{ checks: Map<number, Check[]>, leftOut: string[], leftOutTests: Record<number, number[]>,
 *   tests: number, ms: number, fileMs: Record<string, number> }>} by mutant, the
 *   checks that pass it, quickest first.
 */
export async function dryRun({ files, slowMs, mutantMs }) {
  const counting = startCounting();
  const checks = new Map();
  const leftOut = [];
  const leftOutTests = {};
  const fileMs = {};
  let tests = 0;
  const from = now();
  for (const [file, { test, bundle, packages }] of files.entries()) {
    const before = now();
    try {
      await loadPackages(packages);
      const run = await runFile(new TestFile(bundle), counting, slowMs);
      leftOut.push(...run.leftOut.map(({ why }) => `${test}: ${why}`));
      leftOutTests[file] = run.leftOut.map(({ index }) => index);
      tests += run.tests;
      for (const [id, found] of checksOf(run)) {
        checks.set(id, [...(checks.get(id) ?? []), ...found.map((check) => ({ file, ...check }))]);
      }
    } catch (error) {
      leftOut.push(`${test}: ${firstLine(error)}`);
    }
    fileMs[test] = Math.round(now() - before);
  }
  for (const [id, found] of checks) checks.set(id, quickest(found, mutantMs));
  return { checks, leftOut, leftOutTests, tests, ms: now() - from, fileMs };
}

/** The quickest checks, as many as a mutant is worth. */
function quickest(checks, mostMs) {
  let ms = 0;
  return checks
    .sort((one, other) => one.ms - other.ms)
    .filter((check, index) => {
      ms += check.ms;
      return index === 0 || ms < mostMs;
    });
}

async function runFile(testFile, { countFor }, slowMs) {
  const load = { kind: "file", index: 0, ms: 0, counts: new Map() };
  const suites = [];
  countFor(load.counts);
  watch.outermost = (index, collectIt) => {
    suites[index] = { kind: "suite", index, ms: 0, counts: new Map() };
    countFor(suites[index].counts);
    const suite = timed(suites[index], collectIt);
    countFor(load.counts);
    return suite;
  };
  const { root, tests } = timed(load, () => testFile.fresh());
  watch.outermost = (_index, collectIt) => collectIt();
  await timedAsync(load, () => makeReady(root));

  const done = [];
  const leftOut = [];
  for (const test of tests) {
    const suite = suites[root.suites.findIndex((suite) => testsOf(suite).includes(test))];
    const own = { kind: "test", index: test.index, suite, ms: 0, counts: new Map() };
    try {
      countFor(suite?.counts ?? load.counts);
      await timedAsync(suite ?? load, () => makeReady(test.suite));
      countFor(own.counts);
      await timedAsync(own, () => runTest(test));
      if (own.ms <= slowMs) done.push(own);
      else leftOut.push({ index: test.index, why: `${test.name}: took ${Math.round(own.ms)} ms` });
    } catch (error) {
      leftOut.push({ index: test.index, why: `${test.name}: ${firstLine(error)}` });
    }
  }
  countFor(new Map());
  return { load, suites, done, leftOut, tests: done.length };
}

/** By mutant, what to run of a file: the smallest parts that hold everything that passes it. */
function checksOf({ load, suites, done }) {
  const found = new Map();
  const add = (id, { kind, index }, ms, passes, within) => {
    const checks = found.get(id) ?? [];
    const isHeld = checks.some((check) => check.kind === "file" || (check.kind === "suite" && check.index === within));
    if (!isHeld) found.set(id, [...checks, { kind, index, ms, passes }]);
  };
  const sum = (tests) => tests.reduce((ms, test) => ms + test.ms, 0);
  for (const [id, passes] of load.counts) add(id, load, load.ms + sum(done), passes + passesOf(id, done));
  for (const suite of suites) {
    const inside = done.filter((test) => test.suite === suite);
    for (const [id, passes] of suite.counts) add(id, suite, suite.ms + sum(inside), passes + passesOf(id, inside));
  }
  for (const test of done) {
    for (const [id, passes] of test.counts) add(id, test, test.ms, passes, test.suite?.index);
  }
  return found;
}

const passesOf = (id, tests) => Math.max(0, ...tests.map(({ counts }) => counts.get(id) ?? 0));

/** Processor time, which means the same on a busy machine. */
function now() {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

function timed(note, run) {
  const from = now();
  const given = run();
  note.ms += now() - from;
  return given;
}

async function timedAsync(note, run) {
  const from = now();
  await run();
  note.ms += now() - from;
}

const firstLine = (error) =>
  String(error?.message ?? error)
    .split("\n")[0]
    .slice(0, 160);
