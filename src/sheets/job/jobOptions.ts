import { type Anchor, cellAddress } from "../../spreadsheet/areas";
import type { DraftCell, DraftRow } from "../compose";
import { blankRow, sectionRow } from "../estimate/rows";
import { inSheet } from "./bedCells";
import { jobHeadings } from "./jobHeadings";

/** Another version of a job, by the first cell of its estimate. */
export interface OptionBlock {
  readonly sheet: string;
  readonly at: Anchor;
}

/** Rows of the head of a job's block, counted from its first. */
const HEAD = { price: 1, total: 2, option: 3, chosen: 4 } as const;

/**
 * The versions of a job side by side, on the sheet of the first: what each comes to, by how much it differs from the first,
 * and which one is chosen. Nothing of it goes into a price.
 *
 * @param options the other versions; without any there is no table.
 */
export function optionRows(options: readonly OptionBlock[]): DraftRow[] {
  if (options.length === 0) return [];
  const result = (content: string, format?: DraftCell["format"]): DraftCell => ({
    content,
    look: "result",
    ...(format && { format }),
  });
  return [
    sectionRow(jobHeadings.options, "Price", "Total due", "Difference", "Chosen"),
    {
      id: "option first",
      cells: [
        { content: "={option}", look: "label" },
        result("={price}", "dollars"),
        result("={priceWithTax}", "dollars"),
        undefined,
        { content: "={chosen}", look: "note" },
      ],
    },
    ...options.map(({ sheet, at }): DraftRow => {
      const cell = (row: keyof typeof HEAD) =>
        inSheet(sheet) + cellAddress({ row: at.row + HEAD[row], column: at.column + 1 });
      return {
        id: `option on ${sheet}`,
        cells: [
          { content: `=${cell("option")}`, look: "label" },
          result(`=${cell("price")}`, "dollars"),
          result(`=${cell("total")}`, "dollars"),
          result(`=${cell("total")}-{priceWithTax}`, "dollarsMore"),
          { content: `=${cell("chosen")}`, look: "note" },
          // By these words an update finds the row when its sheet is gone.
          { content: "on a sheet of its own", look: "note" },
        ],
      };
    }),
    blankRow,
  ];
}

/** The first cell of a version's block, from the cell of its option in the table. */
export function optionAt(sheet: string, cell: Anchor): OptionBlock {
  return { sheet, at: { row: cell.row - HEAD.option, column: cell.column - 1 } };
}
