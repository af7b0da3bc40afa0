import { readdirSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { declaredSets, hostUses, includes, newness, type Use } from "../hostMembers";

/*
 * What the product asks of the host is held against the requirement sets that the manifest declares, as the host's own
 * type package (@types/office-js) annotates each member: nothing newer without a guard.
 */
const ROOT = resolve(import.meta.dirname, "../..");

/** The rooms that talk to the host. */
const sources = ["src/workbook", "src/pane"].flatMap((room) =>
  readdirSync(join(ROOT, room), { recursive: true, encoding: "utf8" })
    .filter((name) => /\.tsx?$/.test(name) && !/\.test\.tsx?$/.test(name))
    .map((name) => `${room}/${name}`),
);

/** What must be found, and what must not: the test can fail. */
const PLANTED = {
  "src/workbook/planted.ts": `
    export async function planted(context: Excel.RequestContext): Promise<void> {
      const sheet = context.workbook.worksheets.getFirst();
      const range = sheet.getRange("A1");
      range.load("address,format/fill/color,noSuchThing");
      const { valuesAsJson } = range;
      Excel.Range.prototype.clearOrResetContents;
      if (Office.context.requirements.isSetSupported("ExcelApi", "1.16")) range.load("valuesAsJsonLocal");
      if (Office.context.requirements.isSetSupported("ExcelApi", "1.15")) range.load("valuesAsJsonLocal");
      range.set({ format: { fill: { tintAndShade: 0.5 } } });
      void valuesAsJson;
    }
    export function guarded(range: Excel.Range): void {
      if (!Office.context.requirements.isSetSupported("ExcelApi", "1.16")) return;
      range.load("valueTypes,valuesAsJson");
    }
  `,
};

const { uses: all, unread } = hostUses(sources, PLANTED);
const isPlanted = ({ at }: Use) => at.startsWith("src/workbook/planted.ts");
const uses = all.filter((use) => !isPlanted(use));
const declared = declaredSets();

const fault = ({ member, set, at, guards }: Use): string | undefined =>
  !set || includes([...declared, ...guards], set)
    ? undefined
    : `${member} (${at}) is of ${set.name} ${set.version}: ask isSetSupported("${set.name}", "${set.version}") before.`;
const faults = (some: readonly Use[]) => [...new Set(some.map(fault).filter((text) => text !== undefined))];

describe("what is asked of the host", () => {
  test("is in the requirement sets of the manifest, or asked for before", () => {
    expect(declared.map(({ name }) => name)).toContain("ExcelApi");
    expect(faults(uses)).toEqual([]);
    const members = new Map<string, Set<string>>();
    for (const { member, set } of uses) {
      const key = set ? `${set.name} ${set.version}` : "in every host";
      members.set(key, (members.get(key) ?? new Set()).add(member));
    }
    const rows = [...members].sort(([one], [other]) => newness(one.split(" ")[1]!) - newness(other.split(" ")[1]!));
    const floor = declared.map(({ name, version }) => `${name} ${version}`).join(", ");
    console.log(
      [
        `Members of the host in use, by requirement set (the manifest asks for ${floor}):`,
        ...rows.map(
          ([key, names]) => `${key.padEnd(16)} ${String(names.size).padStart(3)}  ${[...names].sort().join(", ")}`,
        ),
      ].join("\n"),
    );
    expect(members.size).toBeGreaterThan(5);
    expect(uses.length).toBeGreaterThan(200);
  });

  test("is loaded by names that the host has", () => {
    expect(unread.filter((text) => !text.startsWith("src/workbook/planted.ts"))).toEqual([]);
  });
});

describe("the search finds what is planted", () => {
  const planted = all.filter(isPlanted);

  test("newer members without a guard: taken apart, reached by name, and with a guard that is too old", () => {
    const found = faults(planted).map((text) => text.replace(/:\d+\)/, ")"));
    expect(found).toEqual(
      expect.arrayContaining([
        expect.stringMatching(/^Range\.valuesAsJson .* ExcelApi 1\.16/),
        expect.stringMatching(/^Range\.valuesAsJsonLocal .* ExcelApi 1\.16/),
        expect.stringMatching(/^Range\.clearOrResetContents .* ExcelApi 1\.18/),
      ]),
    );
  });

  test("a guard around, or before with a way out, is taken for one", () => {
    const lines = PLANTED["src/workbook/planted.ts"].split("\n");
    const line = (text: string) => lines.findIndex((one) => one.includes(text)) + 1;
    const faultyLines = planted.filter((use) => fault(use)).map(({ at }) => Number(at.split(":")[1]));
    expect(faultyLines).toContain(line('"1.15"'));
    expect(faultyLines).not.toContain(line('"1.16")) range'));
    expect(faultyLines).not.toContain(line("valueTypes,valuesAsJson"));
  });

  test("what is loaded by name, and the keys of what is handed over", () => {
    const members = planted.map(({ member }) => member);
    expect(members).toEqual(expect.arrayContaining(["Range.address", "RangeFill.color", "RangeFill.tintAndShade"]));
    expect(unread.filter((text) => text.startsWith("src/workbook/planted.ts"))).toEqual([
      expect.stringContaining("noSuchThing, which the host does not have"),
    ]);
  });
});
