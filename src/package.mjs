import { spawnSync } from "node:child_process";
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join, resolve } from "node:path";
import { STAMP } from "./building/inputs.mjs";
import { adaptManifest, PLACEHOLDER_ORIGIN } from "./manifest.mjs";
import { isHigher, readOptions } from "./packaging/cliOptions.mjs";
import { installGuide } from "./packaging/installGuide.mjs";

/*
 * Makes package/, the folder that an office puts on its own https host:
 * npm run package -- --origin https://tools.example [--version 1.4.0] [--from a build] [--to another folder]
 */

const ROOT = resolve(import.meta.dirname, "..");
/** The practice workbook is for trying things out, and ten times as large as all the rest. */
const LEFT_OUT = /^(practice.*|grid(-packages)?\.js|univer\.css|manifest\.dev\.xml)$/;
const isLeftOut = (/** @type {string} */ name) => LEFT_OUT.test(name) || name === STAMP;
/** A folder is only ever replaced where it holds these. */
const PACKAGED = ["manifest.xml", "install.html", "functions.json"];
const VERSION = /<Version>([^<]*)<\/Version>/;

function make() {
  const { version: usual } = JSON.parse(readFileSync(join(ROOT, "package.json"), "utf8"));
  const { origin, version, from, to } = readOptions(process.argv.slice(2), usual);
  const target = resolve(ROOT, to);
  const earlier = existsSync(join(target, "manifest.xml"))
    ? VERSION.exec(readFileSync(join(target, "manifest.xml"), "utf8"))?.[1]
    : undefined;
  if (earlier && !isHigher(version, earlier)) {
    throw new Error(`${to}/ holds version ${earlier} already. Give a higher --version, or delete ${to}/.`);
  }
  if (existsSync(target) && !PACKAGED.every((name) => existsSync(join(target, name)))) {
    throw new Error(`${to}/ holds something else than a package, and is left as it is. Name another folder.`);
  }
  const scratch = mkdtempSync(join(tmpdir(), "package-"));
  try {
    const built = from ? resolve(from) : build(join(scratch, "built"));
    const folder = join(scratch, "package");
    mkdirSync(folder);
    cpSync(built, folder, { recursive: true, filter: (path) => path === built || !isLeftOut(basename(path)) });
    const manifest = adaptManifest(readFileSync(join(ROOT, "manifest.xml"), "utf8"), { origin });
    writeFileSync(join(folder, "manifest.xml"), manifest.replace(VERSION, `<Version>${version}</Version>`));
    const functions = readFileSync(join(folder, "functions.json"), "utf8");
    writeFileSync(join(folder, "functions.json"), functions.replaceAll(PLACEHOLDER_ORIGIN, origin));
    writeFileSync(join(folder, "install.html"), installGuide({ origin, version }));
    // The folder of before stays until the new one is whole.
    rmSync(target, { recursive: true, force: true });
    move(folder, target);
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
  console.log(`${to}/ holds version ${version} for ${origin}. Open ${to}/install.html for what to do with it.`);
}

/** Builds into a folder; the package's own files are adapted to the origin afterwards. */
function build(folder) {
  const { status } = spawnSync(process.execPath, [join(ROOT, "src/build.mjs"), "--to", folder], {
    cwd: ROOT,
    stdio: ["ignore", "inherit", "inherit"],
  });
  if (status !== 0) throw new Error("The build failed, so nothing was packaged.");
  return folder;
}

function move(from, to) {
  try {
    renameSync(from, to);
  } catch {
    // Scratch space and project may lie on different disks.
    cpSync(from, to, { recursive: true });
  }
}

try {
  make();
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
