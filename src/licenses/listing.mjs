import { chosenLicense } from "./allowed.mjs";

/**
 * @typedef {object} Shipped
 * @property {string} name
 * @property {string} version "" where it is not told.
 * @property {string | undefined} license as an SPDX expression.
 * @property {string} text
 * @property {readonly string[]} parts of the add-in that hold its code.
 * @property {string | undefined} [within] the package into which it came packed.
 */

/**
 * The list of all packages whose code is shipped, as a text for people.
 *
 * @param {readonly Shipped[]} shipped
 */
export function listing(shipped) {
  const byText = new Map();
  for (const one of [...shipped].sort((first, second) => (first.name < second.name ? -1 : 1))) {
    byText.set(one.text, [...(byText.get(one.text) ?? []), one]);
  }
  const groups = [...byText].map(([text, packages]) => `${RULE}\n${packages.map(entry).join("\n")}\n\n${text}\n`);
  return [HEAD, `Packages: ${shipped.length}.`, ...groups].join("\n\n");
}

const RULE = "-".repeat(80);
const HEAD =
  "Code of others that is shipped with Bedrow, and the licenses under which it is. Bedrow's own license stands in\n" +
  "LICENSE.txt. What is packed into another package is told with it; its version there may be another.";

/** @param {Shipped} one */
function entry({ name, version, license, parts, within }) {
  const chosen = chosenLicense(license);
  const choice = license === chosen ? chosen : `${chosen} (offered as ${license})`;
  const packed = within ? `, packed into ${within}` : "";
  return `${name}${version && !within ? ` ${version}` : ""}: ${choice}. In: ${parts.join(", ")}${packed}.`;
}

/**
 * What forbids that a package is shipped, in words; undefined where nothing does.
 *
 * @param {Shipped} one
 */
export function licenseTrouble({ name, license, text, within }) {
  const which = within ? `${name}, which is packed into ${within},` : name;
  if (!chosenLicense(license)) {
    return (
      `${which} has ${license ? `the license ${license}` : "no license that is told"}, which is not among those in ` +
      "src/licenses/allowed.mjs. Do without it, or find out its license and put it into src/licenses/known.json."
    );
  }
  return text === ""
    ? `${which} comes without the text of its license. Put it into src/licenses/known.json.`
    : undefined;
}
