import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { writeZip } from "../../src/xlsx/zip";
import { readFile, savedFile } from "../files";
import { Chance } from "../fuzz/random";
import type { HeadlessHost } from "../headlessHost";
import { createProductHost } from "../productHost";
import { unzip } from "../unzip";

/*
 * Files that are nearly right: with bytes changed or cut off, and with parts that are spoilt inside a sound package. They
 * are opened, or refused in words; and what failed is the file, or the library that reads it, and not our own code.
 */
const FILES = 150;

let host: HeadlessHost;
let sound: Uint8Array;
beforeAll(async () => {
  host = await createProductHost({
    sheets: [
      {
        name: "Jobs & beds",
        cells: { A1: "Bed", B1: "Length", A2: "Front <walk>", B2: 20, B3: "=B2*2", C2: true, D2: "'=cmd", E2: "=B2/0" },
        columnWidths: { A: 120 },
        looks: [{ range: "A1:B1", bold: true, fill: "#EEF3E6", numberFormat: "0.0" }],
        frozenRows: 1,
      },
      { name: "Rates", cells: { A1: "Waste", B1: 0.08 } },
    ],
  });
  await Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItem("Rates");
    context.workbook.names.add("Rate_waste", sheet.getRange("B1"));
    sheet.tables.add(sheet.getRange("D1:E3"), true).name = "Stones";
    sheet.getRange("A5:B5").merge();
    sheet.getRange("B1").dataValidation.rule = { list: { inCellDropDown: true, source: "a,b" } };
    const { custom } = sheet.getRange("B1").conditionalFormats.add(Excel.ConditionalFormatType.custom);
    custom.rule.formula = "=B1>1";
    custom.format.fill.color = "#FBF0D9";
    await context.sync();
  });
  sound = (await savedFile(host)).bytes;
});
afterAll(() => host.dispose());

/** Bytes changed, left out, or cut off. */
function spoiltBytes(chance: Chance): Uint8Array {
  const bytes = Uint8Array.from(sound);
  if (chance.onceIn(4)) return bytes.slice(0, chance.whole(0, bytes.length));
  const changes = chance.whole(1, 6);
  for (let change = 0; change < changes; change++) bytes[chance.whole(0, bytes.length - 1)] = chance.whole(0, 255);
  return bytes;
}

const PIECES = [
  "",
  "<",
  "&",
  "\u0000",
  "-1",
  "99999999999",
  "NaN",
  "__proto__",
  "#REF!",
  "XFE1048577",
  "&#xFFFF;",
  "<c/>",
  "true",
] as const;

/** One part of the package with something else in one of its values or tags, cut off, doubled, or gone. */
async function spoiltPart(chance: Chance): Promise<Uint8Array> {
  const parts = unzip(sound);
  const times = chance.whole(1, 3);
  for (let time = 0; time < times; time++) {
    const name = chance.oneOf([...parts.keys()]);
    const text = parts.get(name)!;
    const kind = chance.whole(0, 6);
    if (kind === 0) parts.delete(name);
    else if (kind === 1) parts.set(name, text.slice(0, chance.whole(0, text.length)));
    else if (kind === 2) parts.set(name, chance.oneOf([...parts.values()]));
    else {
      const values = [...text.matchAll(/"[^"]*"|>[^<]+<|<[^>]+>/g)];
      if (values.length === 0) continue;
      const { index, 0: value } = chance.oneOf(values);
      const inside = /^["><].*["><]$/s.test(value) ? `${value[0]}${chance.oneOf(PIECES)}${value.at(-1)}` : "";
      const put = value.startsWith("<") ? chance.oneOf(["", value + value]) : inside;
      parts.set(name, text.slice(0, index) + put + text.slice(index + value.length));
    }
  }
  const encoder = new TextEncoder();
  return writeZip(new Map([...parts].map(([name, text]) => [name, encoder.encode(text)])));
}

/** The first place in the calls that is neither Node's nor the test's; a library's is that of the library. */
const failedIn = (error: Error) =>
  /^ +at .*$/gm.exec((error.stack ?? "").replace(/^ +at .*(?:node:|<anonymous>).*$/gm, ""))?.[0] ?? "";

/** What a file gives, or what is wrong with how it was refused. */
async function judge(file: Uint8Array): Promise<{ outcome: "opened" | "refused"; fault?: string }> {
  try {
    const { book } = await readFile(host, file);
    if (!book.sheetOrder.every((id) => book.sheets[id])) return { outcome: "opened", fault: "A sheet is missing." };
    return { outcome: "opened" };
  } catch (error) {
    const { name, message, cause } = error as Error;
    const isWorded = name === "FileRefusal" && /^[A-Z“].*[.!]$/s.test(message);
    if (!isWorded || /undefined|\[object|null|Error/.test(message)) return { outcome: "refused", fault: message };
    const where = cause instanceof Error ? failedIn(cause) : "";
    // A crash of our own code is a fault, also where words are put over it.
    const isOwn =
      cause instanceof Error && cause.name !== "FileRefusal" && /[\\/]src[\\/](?:practice|xlsx)[\\/]/.test(where);
    return { outcome: "refused", ...(isOwn && { fault: `${String(cause)}${where}` }) };
  }
}

describe("whatever is in a file, it is opened or refused in words", () => {
  test.each([
    ["bytes that were changed or cut off", 11, (chance: Chance) => Promise.resolve(spoiltBytes(chance))],
    ["parts that are spoilt, cut off, taken from elsewhere or gone", 12, spoiltPart],
  ] as const)(
    "%s",
    async (_, seed, spoil) => {
      expect((await judge(sound)).outcome).toBe("opened");
      const chance = new Chance(seed);
      const faults = new Set<string>();
      const came = { opened: 0, refused: 0 };
      for (let count = 0; count < FILES; count++) {
        const { outcome, fault } = await judge(await spoil(chance));
        came[outcome]++;
        if (fault) faults.add(fault);
      }
      expect([...faults]).toEqual([]);
      expect(came.opened).toBeGreaterThan(5);
      expect(came.refused).toBeGreaterThan(5);
    },
    60_000,
  );
});
