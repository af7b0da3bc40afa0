import { existsSync, readFileSync } from "node:fs";

const PACKAGE = /.*node_modules\/((?:@[^/]+\/)?[^/]+)\//;

/**
 * The packages that a file which came ready-made holds in itself, as its source map tells.
 *
 * @param {string} file such as …/exceljs/dist/exceljs.min.js.
 * @returns {string[]} their names; none where it has no source map beside it.
 */
export function packagesInside(file) {
  if (!existsSync(`${file}.map`)) return [];
  const { sources } = JSON.parse(readFileSync(`${file}.map`, "utf8"));
  return [...new Set(sources.flatMap((source) => PACKAGE.exec(source)?.[1] ?? []))].sort();
}
