import { lineKinds } from "../../quantities/bed/lines";
import { type JobLine, jobLineFormulas, jobLines, jobPrice, type Kinds } from "../../quantities/job/jobAmounts";
import { cellAddress } from "../../spreadsheet/areas";
import { type DraftCell, type DraftRow, TYPED_OVER } from "../compose";
import { withKeys } from "../estimate/printed";
import { sectionRow } from "../estimate/rows";
import { inSheet } from "./bedCells";
import { jobHeadings, OWN_AFTER, OWN_BEFORE } from "./jobHeadings";
import { printedJob } from "./jobPrinted";
import type { SheetBed } from "./sheetBed";

/** The lines of the job: blank ones for the estimator's own, the standard ones, and those that beds' blocks have. */
export function lineRows(beds: readonly SheetBed[], kinds: Kinds): DraftRow[] {
  const spare = (key: string, places: number) =>
    Array.from({ length: places }, (_, index) => ownRow(`${key}${index + 1}`));
  const added = beds.flatMap(({ sheet, own }, bed) =>
    own.map(({ row, column }, index) => {
      const cell = (at: number) => `${inSheet(sheet)}${cellAddress({ row, column: column + at })}`;
      return ownRow(`own${bed + 1}x${index + 1}`, {
        label: `=${cell(0)}&" ("&{bed${bed + 1}.name}&")"`,
        quantity: `=${cell(1)}`,
        unit: `=${cell(2)}`,
        unitCost: `=${cell(3)}`,
        kind: `=${cell(7)}`,
      });
    }),
  );
  const sum = (key: "directCost" | "linePrices"): DraftCell => ({
    content: printedJob(jobPrice[key].is, beds),
    key,
    format: "money",
  });
  return [
    sectionRow(
      jobHeadings.lines,
      ...["Quantity", "Unit", "Unit cost", "Cost", "Markup", "Discount", "Price", "Kind", "Remarks"],
    ),
    ...spare("before", OWN_BEFORE),
    ...jobLines(kinds).map((line) => lineRow(line, beds)),
    ...added,
    ...spare("after", OWN_AFTER),
    {
      look: "total",
      cells: [
        { content: "Totals" },
        undefined,
        undefined,
        undefined,
        sum("directCost"),
        undefined,
        undefined,
        sum("linePrices"),
      ],
    },
  ];
}

function lineRow(line: JobLine, beds: readonly SheetBed[]): DraftRow {
  const { key, label, unit, quantity, unitCost, kind, shows } = line;
  const isTyped = key === "setUp";
  const amount: DraftCell = isTyped
    ? { content: 0, key: "setUpHours", format: "two", look: "input" }
    : {
        content: printedJob(quantity, beds),
        key: `${key}.quantity`,
        format: shows ?? "two",
        look: "result",
        warnWhen: TYPED_OVER,
      };
  return {
    cells: [
      {
        content: label.startsWith("=") ? printedJob(label.slice(1), beds) : label,
        key: `${key}.label`,
        look: "label",
      },
      amount,
      { content: unit, look: "note" },
      {
        content: printedJob(unitCost, beds),
        key: `${key}.unitCost`,
        format: "money",
        look: "result",
        warnWhen: TYPED_OVER,
      },
      ...pricedCells(key, amount.key),
      { content: kind, key: `${key}.kind`, look: "note", choices: lineKinds },
      isTyped ? { content: "type the hours, if any", look: "note" } : remarkCell(key),
    ],
  };
}

interface Linked {
  readonly label: string;
  readonly quantity: string;
  readonly unit: string;
  readonly unitCost: string;
  readonly kind: string;
}

/** A line of the estimator's own: blank to type into, or one that follows a bed's block. */
function ownRow(key: string, linked?: Linked): DraftRow {
  const look = linked ? "result" : "input";
  const words = linked ? "label" : "inputWords";
  return {
    cells: [
      { content: linked?.label ?? "", key: `${key}.label`, look: words },
      { content: linked?.quantity ?? "", key: `${key}.quantity`, format: "two", look },
      { content: linked?.unit ?? "", look: linked ? "note" : "inputWords" },
      { content: linked?.unitCost ?? "", key: `${key}.unitCost`, format: "money", look },
      ...pricedCells(key),
      { content: linked?.kind ?? "material", key: `${key}.kind`, look: "note", choices: lineKinds },
    ],
  };
}

function pricedCells(key: string, quantity = `${key}.quantity`): DraftCell[] {
  const own = ["unitCost", "kind", "cost", "markup", "discount"];
  const formula = (part: keyof typeof jobLineFormulas) =>
    withKeys(jobLineFormulas[part], (name) =>
      name === "quantity" ? `{${quantity}}` : own.includes(name) ? `{${key}.${name}}` : undefined,
    );
  return [
    { content: formula("cost"), key: `${key}.cost`, format: "money", look: "result" },
    { content: formula("markup"), key: `${key}.markup`, format: "share", look: "result", warnWhen: TYPED_OVER },
    { content: "", key: `${key}.discount`, format: "dollarsOrShare", look: "input" },
    { content: formula("price"), key: `${key}.price`, format: "money", look: "result" },
  ];
}

/** Says in words what was typed over, and where a price is missing. */
function remarkCell(key: string): DraftCell {
  const watched = [
    ["quantity", `${key}.quantity`],
    ["price", `${key}.unitCost`],
    ["markup", `${key}.markup`],
  ] as const;
  const typedOver = watched.map(([what, cell]) => `IF(ISFORMULA({${cell}}),"","${what} typed over. ")`);
  const missing = `IF(ISNUMBER({${key}.unitCost}),"","no price")`;
  return {
    content: `=TRIM(${[...typedOver, missing].join("&")})`,
    key: `${key}.remark`,
    look: "note",
    warnWhen: "=LEN({self})>0",
  };
}

/** The lines as they were written before a line's discount could be in dollars. */
export function withDiscountsAsShares(rows: readonly DraftRow[]): DraftRow[] {
  const asShare = (content: DraftCell["content"]) =>
    typeof content === "string"
      ? content.replace(/^=IF\((\{[\w.]+\.discount\})>1,(.*)-\1,\2\*\(1-\1\)\)$/, "=$2*(1-$1)")
      : content;
  return rows.map((row) => ({
    ...row,
    cells: row.cells.map((cell) => cell && { ...cell, content: asShare(cell.content) }),
  }));
}
