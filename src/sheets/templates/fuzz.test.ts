import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { contentsOf } from "./contents";
import { readKept } from "./keptTemplates";
import { readOfficeIndex } from "./officeIndex";
import { templatePlan } from "./openTemplate";
import { readTemplate } from "./readTemplate";
import { templateText } from "./templateText";

/*
 * Whatever a file holds: it is read rightly, or refused in words. Nothing else may come of it.
 */
const RUNS = { numRuns: 400 };

const cell = fc.oneof(fc.constantFrom("A1", "B2", "C3", "D4", "XFD1", "A0", "a1", "A1:B2"), fc.string());
const formula = fc
  .array(
    fc.constantFrom(
      ..."= + - * / ( ) , : ! $ # @ { } [ ] | ' \" A1 B2 $C$3 Rates!$B$2 SUM( IF( BED.FEET( CALL( LET( x 1 2% TRUE Rate_waste".split(
        " ",
      ),
    ),
    { maxLength: 14 },
  )
  .map((parts) => `=${parts.join("")}`);
const content = fc.oneof(
  fc.record({ at: cell, formula: fc.oneof(formula, fc.string()) }),
  fc.record({ at: cell, text: fc.string({ unit: "binary" }) }),
  fc.record({ at: cell, number: fc.double() }),
  fc.record({ at: cell, truth: fc.boolean() }),
  fc.anything(),
);
const colour = fc.oneof(fc.constantFrom("#24413A", "#FFFFFF", "#000000", "red"), fc.string());
const look = fc.record(
  {
    at: fc.array(cell, { maxLength: 3 }),
    numberFormat: fc.oneof(fc.constantFrom("0.00", "0%", ";;;", "General", "@", `"a"0`), fc.string()),
    fill: colour,
    color: colour,
    size: fc.double(),
    wrap: fc.boolean(),
  },
  { requiredKeys: ["at"] },
);
const template = fc.record(
  {
    format: fc.constantFrom("bedrow-template", "bedrow-template", "bedrow-template", "other"),
    version: fc.constantFrom(1, 1, 1, 1, 2, "1"),
    name: fc.oneof(fc.constant("Front bed"), fc.string({ unit: "binary" })),
    note: fc.string({ unit: "binary" }),
    rows: fc.oneof(fc.constant(4), fc.integer(), fc.anything()),
    columns: fc.constantFrom(4, 4, 4, 0, 1e9),
    widths: fc.constantFrom([10, 10, 10, 10], [10, 10, 10, 10], [0, 1, 2, 3], []),
    cells: fc.array(content, { maxLength: 4 }),
    looks: fc.array(look, { maxLength: 3 }),
    merged: fc.array(cell, { maxLength: 2 }),
    choices: fc.array(fc.record({ at: cell, names: fc.array(fc.string(), { maxLength: 3 }) }), { maxLength: 2 }),
    warnings: fc.array(fc.record({ at: cell, when: formula }), { maxLength: 2 }),
    outside: fc.array(
      fc.record({ reads: fc.oneof(fc.constantFrom("Rates!$B$2", "Waste"), fc.string()), opened: fc.constant("keep") }),
      { maxLength: 2 },
    ),
  },
  { requiredKeys: ["format", "version", "name", "rows", "columns", "widths", "cells"] },
);

/** What a file gives: words, or a template that can be shown, written as a plan, saved and read again. */
function judge(text: string): "refused" | "read" {
  const read = readTemplate(text);
  if (!read.ok) {
    expect(read.why.length).toBeGreaterThan(0);
    for (const why of read.why) {
      expect(why.trim()).not.toBe("");
      expect(why).not.toMatch(/undefined|\[object|[\u202A-\u202E\u2066-\u2069]/);
    }
    return "refused";
  }
  contentsOf(read.template);
  const plan = templatePlan(read.template, new Map(), { row: 3, column: 2 });
  expect(plan.formulas).toHaveLength(read.template.rows);
  for (const one of plan.formulas.flat()) {
    // What is no formula in the template becomes none.
    if (String(one).startsWith("=")) expect(read.template.cells.some((cell) => cell.formula !== undefined)).toBe(true);
  }
  expect(readTemplate(templateText(read.template))).toEqual(read);
  return "read";
}

describe("whatever a file holds, it is a template or refused in words", () => {
  test("for files that are nearly templates, of which some are", () => {
    const seen = { refused: 0, read: 0 };
    fc.assert(
      fc.property(template, (value) => {
        seen[judge(JSON.stringify(value))] += 1;
      }),
      { numRuns: 2000 },
    );
    expect(seen.refused).toBeGreaterThan(0);
  });

  test("for right templates with any formula of a cell", () => {
    const seen = { refused: 0, read: 0 };
    fc.assert(
      fc.property(formula, (one) => {
        const right = { format: "bedrow-template", version: 1, name: "a", rows: 4, columns: 4, widths: [9, 9, 9, 9] };
        seen[judge(JSON.stringify({ ...right, cells: [{ at: "B2", formula: one }] }))] += 1;
      }),
      { numRuns: 2000 },
    );
    expect(seen.refused).toBeGreaterThan(100);
    expect(seen.read).toBeGreaterThan(10);
  });

  test("for any JSON, and for any text", () => {
    fc.assert(
      fc.property(fc.json(), (text) => void judge(text)),
      RUNS,
    );
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (text) => void judge(text)),
      RUNS,
    );
  });

  test("and for a workbook's setting and the office's list", () => {
    fc.assert(
      fc.property(fc.oneof(fc.json(), fc.string()), fc.anything(), (text, entry) => {
        for (const one of [text, JSON.stringify({ format: "bedrow-templates", version: 1, templates: [entry] })]) {
          const kept = readKept(one);
          if (!kept.ok) expect(kept.why).toMatch(/weren't changed/);
          else for (const { template: read, why } of kept.templates) expect(read ?? why).toBeDefined();
        }
        const index = readOfficeIndex(text);
        if (!index.ok) expect(index.why).toMatch(/^The office's list of templates/);
      }),
      RUNS,
    );
  });
});
