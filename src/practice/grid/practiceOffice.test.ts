import { createRequire } from "node:module";
import { expect, test } from "vitest";
import type { GridLibrary } from "./library";
import { workbookOf } from "./practiceOffice";

const require = createRequire(import.meta.url);
const core = require("@univerjs/core") as GridLibrary["core"];
const sheets = require("@univerjs/preset-sheets-node-core") as GridLibrary["sheets"] & GridLibrary["drawing"];
const library: GridLibrary = { core, drawing: sheets, sheets };

test("an office becomes sheets with their cells, looks, widths and frozen rows", () => {
  const book = workbookOf(
    library,
    {
      sheets: [
        {
          name: "Jobs",
          cells: { A1: "Length", A2: "18' 6\"", B2: 5, C2: "=B2*2", D2: "8%" },
          columnWidths: { B: 60 },
          looks: [
            { range: "A1:B1", bold: true, fill: "#DCE7E1" },
            { range: "B2", numberFormat: "0.00" },
          ],
          frozenRows: 1,
        },
      ],
    },
    "book",
  );
  const sheet = book.sheets?.["sheet-1"];
  expect(sheet?.name).toBe("Jobs");
  const row = sheet?.cellData?.[1];
  expect([row?.[0]?.v, row?.[1]?.v, row?.[2]?.f, row?.[3]?.v]).toEqual(["18' 6\"", 5, "=B2*2", 0.08]);
  expect(row?.[1]?.s).toEqual({ n: { pattern: "0.00" } });
  expect(sheet?.cellData?.[0]?.[1]?.s).toEqual({ bl: 1, bg: { rgb: "#DCE7E1" } });
  // 60 points are 80 pixels at 96 to the inch.
  expect(sheet?.columnData?.[1]).toEqual({ w: 80 });
  expect(sheet?.freeze?.ySplit).toBe(1);
});

test("an office that names a place which is none is refused", () => {
  const office = { sheets: [{ name: "Jobs", cells: { "front walk": 1 } }] };
  expect(() => workbookOf(library, office, "book")).toThrow(/front walk/);
});
