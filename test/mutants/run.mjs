// Changes the code in small ways, one at a time, and tells which changes no test notices: `npm run mutants -- src/layout`.

import { writeFileSync } from "node:fs";
import { mkdir, readdir, readFile, rm, stat, writeFile } from "node:fs/promises";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { bundle } from "./bundle.mjs";
import { instrument } from "./instrument.mjs";
import { dryRun, runAll } from "./pool.mjs";
import { reportOf } from "./report.mjs";

const root = fileURLToPath(new URL("../..", import.meta.url));
/** Of a folder for what comes out. */
const LONGEST_NAME = 100;
/** Tests that calculate whole workbooks in the grid's engine, and those that plant a thousand mistakes. */
const TOO_SLOW = /\/(native-\w+|jobRowHeadings|review-(engine|fifteen|mutations|rates))\.test\.ts$/;
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    tests: {
      type: "string",
      multiple: true,
      default: ["src/quantities", "src/layout", "src/review", "test/references", "test/properties"],
    },
    numbers: { type: "boolean", default: false },
    every: { type: "string", default: "1" },
    slow: { type: "string", default: "2" },
    seconds: { type: "string", default: "4" },
    jobs: { type: "string", default: "2" },
  },
});
const places = positionals.length > 0 ? positionals : ["src/quantities", "src/layout", "src/review/rules"];
const out = join(root, "test-output/mutants", places.join("+").replaceAll("/", "-").slice(0, LONGEST_NAME));
const planFile = join(out, "plan.json");
await rm(out, { recursive: true, force: true });
await mkdir(out, { recursive: true });

const files = (await filesIn(places)).filter((file) => /\.ts$/.test(file) && !/\.(test|d)\.ts$/.test(file));
const tests = (await filesIn(values.tests)).filter((file) => file.endsWith(".test.ts") && !TOO_SLOW.test(file));
const { mutants, ignored, code } = await instrument(root, files, values.numbers);
const bundles = await bundle(root, tests, code, join(out, "bundles"));
await writeFile(
  planFile,
  JSON.stringify({ files: bundles, slowMs: 1000 * Number(values.slow), mutantMs: 1000 * Number(values.seconds) }),
);
await dryRun(planFile);
const plan = JSON.parse(await readFile(planFile, "utf8"));
console.log(
  `${mutants.length} mutants in ${files.length} files (${ignored} of wording left out); ${plan.tests} tests in ` +
    `${bundles.length} files, ${(plan.ms / 1000).toFixed(1)} s without mutants`,
);
const slowest = Object.entries(plan.fileMs).sort(([, one], [, other]) => other - one);
for (const [test, ms] of slowest.slice(0, 5)) console.log(`slow: ${test}, ${(ms / 1000).toFixed(1)} s`);
for (const why of plan.leftOut) console.log(`left out: ${why}`);

const chosen = mutants.filter((_, index) => index % Number(values.every) === 0);
const outcomes = new Map(chosen.map(({ id }) => [id, { status: plan.checks[id] ? "waiting" : "uncovered" }]));
const jobs = chosen.map(({ id }) => id).filter((id) => plan.checks[id]);
const from = performance.now();
let done = 0;
await runAll(planFile, jobs, Number(values.jobs), (id, outcome) => {
  outcomes.set(id, outcome);
  done += 1;
  if (done % 500 !== 0) return;
  console.log(`${done} of ${jobs.length}, ${seconds()} s`);
  keepReport();
});
console.log(keepReport());
console.log(`${chosen.length} mutants in ${seconds()} s; also in ${relative(root, out)}/report.txt`);

/** Writes what is known so far. */
function keepReport() {
  const known = chosen.map((mutant) => ({ ...mutant, ...outcomes.get(mutant.id) }));
  const report = reportOf(known.filter(({ status }) => status !== "waiting"));
  writeFileSync(join(out, "report.txt"), report);
  return report;
}

function seconds() {
  return ((performance.now() - from) / 1000).toFixed(0);
}

/** The files in folders, or those named. */
async function filesIn(names) {
  const found = await Promise.all(
    names.map(async (name) => {
      if ((await stat(join(root, name))).isFile()) return [name];
      const inside = await readdir(join(root, name), { recursive: true });
      return inside.map((file) => join(name, file));
    }),
  );
  return [...new Set(found.flat())].sort();
}
