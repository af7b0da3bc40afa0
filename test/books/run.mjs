// Opens, checks, and saves each workbook of a folder as the practice page would:
// `npm run files -- FOLDER`, with `--json` for one JSON object a line, and `--to FOLDER` to keep the saved copies.
// With `--compare` it lists instead, as JSON, which parts of each file are other in a copy that no one touched, and in one
// with one cell changed, and what a second program finds other in that one.

import { fork } from "node:child_process";
import { mkdir, readdir } from "node:fs/promises";
import { basename, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";

/** A workbook that takes longer than this is stopped, and the next one is opened. */
const MOST_SECONDS = 60;
/** One that needs more memory ends its process, and only that one. */
const MOST_MEGABYTES = 2048;

const given = process.argv.slice(2);
const compares = given.includes("--compare");
const asJson = given.includes("--json") || compares;
const toFlag = given.indexOf("--to");
const to = toFlag < 0 ? undefined : resolve(given[toFlag + 1] ?? "");
const [folder] = given.filter((word, place) => !word.startsWith("--") && (toFlag < 0 || place !== toFlag + 1));
if (folder === undefined) {
  console.error("Which folder? Type npm run files -- FOLDER, such as npm run files -- ~/estimates.");
  process.exit(2);
}
const names = await readdir(resolve(folder), { recursive: true }).catch((error) => {
  console.error(`${folder}: can't be read (${error.code}). Type the path of a folder with workbooks.`);
  process.exit(2);
});
const paths = names
  .filter((name) => /\.xls[xm]$/i.test(name) && !basename(name).startsWith("~$"))
  .sort()
  .map((name) => join(resolve(folder), name));
if (to) await mkdir(to, { recursive: true });

/** The process that opens the workbooks, until one of them has to be stopped. */
let child;

for (const path of paths) {
  const report = await read(path);
  console.log(asJson ? JSON.stringify(report) : inWords(report));
}
child?.kill();

function read(path) {
  child ??= fork(fileURLToPath(new URL("child.mjs", import.meta.url)), {
    execArgv: [`--max-old-space-size=${MOST_MEGABYTES}`],
    stdio: ["ignore", "ignore", "ignore", "ipc"],
  });
  const reader = child;
  return new Promise((done) => {
    const stopped = (words) => {
      reader.removeAllListeners();
      reader.kill("SIGKILL");
      child = undefined;
      done({
        name: basename(path),
        status: "stopped",
        words,
        unseen: [],
        lost: [],
        differs: [],
        findings: [],
        milliseconds: {},
      });
    };
    const timer = setTimeout(() => stopped(`Took longer than ${MOST_SECONDS} seconds.`), MOST_SECONDS * 1000);
    reader.once("exit", () => {
      clearTimeout(timer);
      stopped("Ended its process, most likely for lack of memory.");
    });
    reader.once("message", (report) => {
      clearTimeout(timer);
      reader.removeAllListeners();
      done(report);
    });
    reader.send({ path, compares, copy: to && join(to, basename(path).replace(/\.xlsm$/i, ".xlsx")) });
  });
}

function inWords({ name, status, words, unseen, lost, differs, findings, milliseconds }) {
  const { open = 0, check = 0, save = 0 } = milliseconds;
  const indented = (title, lines) => lines.map((line) => `    ${title}: ${line}`);
  return [
    `${name}: ${status}, ${open + check + save} ms${words ? `. ${words}` : ""}`,
    ...indented("not shown", unseen),
    ...indented("lost", lost),
    ...indented("differs", differs.slice(0, 5)),
    ...indented(
      "found",
      findings.map(({ level, sheet, cells, seen }) => `${level}, ${sheet}!${cells[0]}: ${seen}`),
    ),
  ].join("\n");
}
