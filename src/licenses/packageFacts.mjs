import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

const KNOWN = JSON.parse(readFileSync(new URL("./known.json", import.meta.url), "utf8"));
const FOLDER = /^(.*[\\/]node_modules[\\/](?:@[^\\/]+[\\/])?[^\\/]+)[\\/]/;
const TEXTS = /licen[sc]e|copying|notice/i;

/**
 * The folder of the package to which a file belongs; undefined where it is one of ours.
 *
 * @param {string | undefined} file with its whole path.
 */
export function packageFolder(file) {
  return FOLDER.exec(file ?? "")?.[1];
}

/**
 * What a package says of its license; where `known.json` names the package, what is there.
 *
 * @param {string} name such as "jszip".
 * @param {string} folder where it lies, if it does.
 * @returns {{ name: string, version: string, license: string | undefined, text: string }} the license as an SPDX
 *   expression; the text is "" where none is found.
 */
export function packageFacts(name, folder) {
  const told = existsSync(join(folder, "package.json"))
    ? JSON.parse(readFileSync(join(folder, "package.json"), "utf8"))
    : {};
  const known = KNOWN[name];
  const own = existsSync(folder) ? textsIn(folder) : "";
  return {
    name,
    version: told.version ?? "",
    license: known?.license ?? toldLicense(told.license),
    text: own || (known ? standardText(known) : ""),
  };
}

/** Before licenses had names in common, a package.json told the license as an object with its type. */
function toldLicense(told) {
  const license = told?.type ?? told;
  return typeof license === "string" ? license : undefined;
}

function textsIn(folder) {
  return readdirSync(folder)
    .filter((file) => TEXTS.test(file))
    .sort()
    .map((file) => readFileSync(join(folder, file), "utf8").trim())
    .join("\n\n");
}

/** Some packages only name their license: its standard text, with whom it is from. */
function standardText({ license, copyright, told }) {
  const texts = license
    .split(" AND ")
    .map((one) => readFileSync(new URL(`./texts/${one}.txt`, import.meta.url), "utf8").trim());
  return [`${copyright} (${told})`, ...texts].join("\n\n");
}
