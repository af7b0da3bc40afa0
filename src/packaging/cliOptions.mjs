import { adaptManifest } from "../manifest.mjs";

const VERSION = /^\d{1,5}(\.\d{1,5}){1,3}$/;
const PARTS = 4;

/**
 * What was asked for on the command line.
 *
 * @param {readonly string[]} given such as `["--origin", "https://tools.example", "--version", "1.4.0"]`.
 * @param {string} usualVersion the project's own version.
 * @returns {{ origin: string, version: string, from: string | undefined, to: string }} the origin without a path, the
 *   version in the four parts that a manifest wants, a build to use instead of making one, and the folder to make.
 * @throws {Error} in words for the person, before anything is written.
 */
export function readOptions(given, usualVersion) {
  const options = new Map();
  for (let index = 0; index < given.length; index += 2) {
    const [name, value] = [given[index], given[index + 1]];
    if (!NAMES.includes(name)) throw new Error(`"${name}" isn't an option. ${HOW}`);
    if (value === undefined || value.startsWith("--")) throw new Error(`${name} needs a value. ${HOW}`);
    options.set(name, value);
  }
  const origin = options.get("--origin");
  if (origin === undefined) throw new Error(`Say where you'll host the folder. ${HOW}`);
  // Refuses what is no https origin.
  adaptManifest("", { origin });
  const { hostname, origin: plain } = new URL(origin);
  if (/^(localhost|127\.\d+\.\d+\.\d+|\[::1\])$/.test(hostname)) {
    throw new Error(`"${origin}" only works on this computer. Give the https address your office will use.`);
  }
  return {
    origin: plain,
    version: fourParts(options.get("--version") ?? usualVersion),
    from: options.get("--from"),
    to: options.get("--to") ?? "package",
  };
}

const NAMES = ["--origin", "--version", "--from", "--to"];
const HOW =
  "Use: npm run package -- --origin https://tools.example [--version 1.4.0] [--from a build] [--to another folder].";

/** @param {string} version `1.4` or up to four parts. */
export function fourParts(version) {
  if (!VERSION.test(version)) throw new Error(`"${version}" isn't a version. Try 1.4.0.`);
  const parts = version.split(".").map(Number);
  return [...parts, ...Array(PARTS - parts.length).fill(0)].join(".");
}

/** Whether a version comes after another; both in four parts. */
export function isHigher(version, other) {
  const [one, two] = [version, other].map((text) => text.split(".").map(Number));
  const differs = one.findIndex((part, index) => part !== two[index]);
  return differs >= 0 && one[differs] > two[differs];
}
