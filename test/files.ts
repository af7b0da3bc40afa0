import * as functions from "../src/functions/index";
import { FunctionNames } from "../src/practice/xlsx/formulas";
import { type OpenedBook, openBook } from "../src/practice/xlsx/open/openBook";
import { noteDiffering } from "../src/practice/xlsx/save/differing";
import { saveBook } from "../src/practice/xlsx/save/saveBook";
import { writeZip } from "../src/xlsx/zip";
import type { HeadlessHost } from "./headlessHost";
import { createProductHost } from "./productHost";
import { unzip } from "./unzip";

/** The add-in's functions, as the practice page knows them. */
export const functionNames = new FunctionNames(Object.keys(functions).map((id) => `BED.${id}`));

/** A picture of one pixel, as the grid takes pictures. */
export const DOT =
  "data:image/png;base64,iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAQAAAC1HAwCAAAAC0lEQVR42mP8/x8AAwMCAO+ip1sAAAAASUVORK5CYII=";

/** The files that hosts were opened from, as the practice page keeps them. */
const files = new WeakMap<HeadlessHost, Uint8Array>();

/** The file that the practice page makes of a workbook, and what it does not hold. */
export async function savedFile(host: HeadlessHost) {
  await host.grid.settled();
  const bytes = files.get(host);
  const before = bytes && { bytes, opened: openBook(host.open.library, bytes, "", functionNames) };
  return saveBook(host.open, host.grid.cells, functionNames, before);
}

/** A file as the practice page reads it. */
export async function readFile(host: HeadlessHost, file: Uint8Array): Promise<OpenedBook> {
  return openBook(host.open.library, new Uint8Array(file), "opened", functionNames);
}

/** A host with the workbook of a file in it, and what was read. */
export async function openFile(
  reader: HeadlessHost,
  file: Uint8Array,
): Promise<{ host: HeadlessHost; opened: OpenedBook }> {
  const opened = await readFile(reader, file);
  const host = await createProductHost(undefined, opened.book);
  host.grid.sheets.activate(opened.front);
  await host.grid.settled();
  noteDiffering(host.open, host.grid.cells, opened.shown);
  files.set(host, new Uint8Array(file));
  return { host, opened };
}

/** A file in which some parts have another text, or are new. Only for files without pictures. */
export async function withParts(
  file: Uint8Array,
  changes: Readonly<Record<string, (before: string) => string>>,
): Promise<Uint8Array> {
  const parts = unzip(file);
  for (const [name, change] of Object.entries(changes)) parts.set(name, change(parts.get(name) ?? ""));
  return writeZip(new Map([...parts].map(([name, text]) => [name, new TextEncoder().encode(text)])));
}
