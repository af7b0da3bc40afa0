import { describe, expect, test } from "vitest";
import { operations } from "./operations";
import { type Reach, reachOf, sourcesOf } from "./reach";

/** Functions for the other rooms that only read, watch, or show: they change nothing that is saved. */
const READERS = [
  "belowUsed",
  "goTo",
  "lastInsert",
  "namedCell",
  "readBlock",
  "readForCheck",
  "readKeptTemplates",
  "readListSheet",
  "readOfficeRecord",
  "readRateCells",
  "readRates",
  "readRegion",
  "readRules",
  "readSelected",
  "readWorkbook",
  "selectedAddress",
  "selectedCell",
  "selectedPlace",
  "sheetId",
  "watchSelection",
  "watchSheets",
  "sheetsAndNames",
];

/** Opens a workbook beside this one, which it does not touch. */
const ELSEWHERE = ["openAsWorkbook"];

/** What must be found, and what must not: the test can fail. */
const PLANTED = {
  "src/workbook/planted.ts": `
    import { inWorkbook } from "./failure";
    const part = (range: Excel.Range) => ({ read: () => range.values, blank: () => range.clear() });
    export const blankConst = () => inWorkbook(async (context) => part(context.workbook.getSelectedRange()).blank());
    export const readConst = () => inWorkbook(async (context) => part(context.workbook.getSelectedRange()).read());
    export async function typed(): Promise<void> {
      await inWorkbook(async (context) => {
        context.workbook.getSelectedRange().values = [[1]];
      });
    }
  `,
  "src/pane/planted.ts": `
    import { typed } from "../workbook/planted";
    export const press = () => typed();
    export const byItself = () => Excel.run(async () => undefined);
  `,
};
const isPlanted = ({ file }: Reach) => file.endsWith("/planted.ts");
const isInRoom = ({ file }: Reach) => file.startsWith("src/workbook/");

const all = reachOf(sourcesOf("src/workbook", "src/pane", "src/sheets", "src/review", "src/layout"), PLANTED);
const talking = all.filter((one) => isInRoom(one) && one.isExported && one.talks && !one.takesContext);
/** They run what they are given, which is looked for by its own name. */
const MECHANISM = ["inWorkbook", "applyChange"];
const talkingNames = talking.filter((one) => !isPlanted(one) && !MECHANISM.includes(one.name)).map(({ name }) => name);
/** What runs a batch by itself, and not through the room that talks to the host. */
const strays = (reach: readonly Reach[]) => reach.filter((one) => !isInRoom(one) && one.runs).map(({ name }) => name);

test("every function that writes to the workbook is in the table of faults", () => {
  const tried = new Set(operations.flatMap(({ writers }) => writers));
  const told = [...READERS, ...ELSEWHERE, ...tried];
  const missing = talkingNames.filter((name) => !told.includes(name));
  expect(missing, "Add each to the operations beside this test, or to the readers where it changes nothing").toEqual(
    [],
  );
});

test("what is said to read reaches nothing by which a workbook is changed, and what is said to write does", () => {
  const writing = talking.filter(({ writes }) => writes.length > 0);
  const found = writing.map(({ name, writes }) => `${name}: ${writes.join(", ")}`);
  expect(found.filter((text) => READERS.includes(text.split(":")[0] ?? ""))).toEqual([]);
  const tried = operations.flatMap(({ writers }) => writers);
  expect(tried.filter((name) => !writing.some((one) => one.name === name))).toEqual([]);
});

test("none is there that is gone", () => {
  const tried = operations.flatMap(({ writers }) => writers);
  expect([...READERS, ...ELSEWHERE, ...tried].filter((name) => !talkingNames.includes(name))).toEqual([]);
});

test("nothing but the room that talks to the host runs a batch", () => {
  expect(strays(all.filter((one) => !isPlanted(one)))).toEqual([]);
});

describe("the search finds what is planted", () => {
  const planted = all.filter(isPlanted);
  const writes = (name: string) => planted.find((one) => one.name === name)!.writes;

  test("writing by assignment and by a method, in a function and in a constant, and none where it only reads", () => {
    expect(writes("typed")).toEqual(["Range.values"]);
    expect(writes("blankConst")).toEqual(["Range.clear"]);
    expect(writes("readConst")).toEqual([]);
    expect(writes("press")).toEqual(["Range.values"]);
    expect(talking.filter(isPlanted).map(({ name }) => name)).toEqual(["blankConst", "readConst", "typed"]);
  });

  test("a batch that another room runs by itself", () => {
    expect(strays(planted)).toEqual(["byItself"]);
  });
});
