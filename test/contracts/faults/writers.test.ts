import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import ts from "typescript";
import { expect, test } from "vitest";
import { operations } from "./operations";

const WORKBOOK = resolve(import.meta.dirname, "../../../src/workbook");

/** Functions for the other rooms that only read, watch, or show: they change nothing that is saved. */
const READERS = [
  "belowUsed",
  "canOpenWorkbooks",
  "goTo",
  "lastInsert",
  "namedCell",
  "readForCheck",
  "readKeptTemplates",
  "readListSheet",
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
  "whatIsThere",
];

/** Opens a workbook beside this one, which it does not touch. */
const ELSEWHERE = ["openAsWorkbook"];

/** What the files of the room export that talks to the host by itself: each function whose text runs a batch. */
function talking(): string[] {
  return readdirSync(WORKBOOK)
    .filter((file) => file.endsWith(".ts") && !file.endsWith(".test.ts"))
    .flatMap((file) => {
      const source = ts.createSourceFile(
        file,
        readFileSync(join(WORKBOOK, file), "utf8"),
        ts.ScriptTarget.ES2022,
        true,
      );
      return source.statements.filter(ts.isFunctionDeclaration).flatMap((one) => {
        const isExported = one.modifiers?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword);
        const takesContext = one.parameters.some(({ type }) => type?.getText().includes("RequestContext"));
        const talks = /\binWorkbook\(|\bExcel\.(run|createWorkbook)\b|\bwriteChanges\(|\btakeBackChanges\(/.test(
          one.body?.getText() ?? "",
        );
        // What takes a context is a part of what another one of them does.
        return isExported && talks && !takesContext ? [one.name!.text] : [];
      });
    });
}

test("every function that writes to the workbook stands in the table of faults", () => {
  const tried = new Set(operations.flatMap(({ writers }) => writers));
  const told = [...READERS, ...ELSEWHERE, ...tried];
  const missing = talking().filter((name) => name !== "inWorkbook" && !told.includes(name));
  expect(missing, "Add each to the operations beside this test, or to the readers where it changes nothing").toEqual(
    [],
  );
});

test("none stands there that is gone", () => {
  const there = talking();
  const tried = operations.flatMap(({ writers }) => writers);
  expect([...READERS, ...ELSEWHERE, ...tried].filter((name) => !there.includes(name))).toEqual([]);
});
