import type { BedForm } from "../../quantities/bed/form";
import { lineCalled } from "../../quantities/bed/lines";
import { currentText } from "../../quantities/bed/olderTexts";
import { toCents } from "../../quantities/cents";
import type { Anchor, Area } from "../../spreadsheet/areas";
import { headings } from "../estimate/headings";
import { findBlocks } from "../estimate/readBlock";

/** A priced line of a block, as its cells show it now. */
export interface BedLine {
  /** Which line of the estimate it is; undefined for one that the estimator added. */
  readonly key: string | undefined;
  readonly label: string;
  readonly quantity: number;
  readonly unit: string;
  /** Before markup; undefined where the cell holds no number. */
  readonly unitCost: number | undefined;
  readonly kind: string;
  /** Whether someone typed the quantity over its formula. */
  readonly typed: boolean;
  /** A markup that was typed over its formula, as a share. */
  readonly typedMarkup?: number;
}

/** A bed of a job: an estimate block with what its cells show. */
export interface JobBed {
  readonly sheet: string;
  readonly area: Area;
  readonly name: string;
  readonly form: BedForm;
  readonly lines: readonly BedLine[];
  /** Before sales tax, to the cent; undefined where the block has no price, such as for a rate that is missing. */
  readonly price: number | undefined;
  /** Sales tax on it in money, to the cent; 0 for none. */
  readonly salesTax: number;
  /** Labels of the lines and rates behind the price that hold sample prices, as the block says. */
  readonly samples?: readonly string[];
}

/** What is read of a sheet's used range. */
interface UsedCells extends Anchor {
  readonly values: readonly (readonly unknown[])[];
  readonly formulas: readonly (readonly unknown[])[];
}

type Row = readonly unknown[];

/**
 * The beds whose estimate blocks are on a sheet, with the quantities and prices that the blocks show: what was typed
 * over counts as typed.
 *
 * @param sheet the sheet's name.
 * @param used what is used of it; @param blocks those of it, where they were found already.
 */
export function findJobBeds(sheet: string, used: UsedCells, blocks = findBlocks(used.values, used)): JobBed[] {
  return blocks.map(({ area, form }) => {
    const part = (cells: readonly Row[]) =>
      cells
        .slice(area.row - used.row, area.row - used.row + area.rows)
        .map((row) => row.slice(area.column - used.column, area.column - used.column + area.columns));
    const [values, formulas] = [part(used.values), part(used.formulas)];
    return {
      sheet,
      area,
      name: form.name.trim(),
      form,
      lines: linesOf(values, formulas),
      price: money(resultBelow(values, headings.price, "Price")),
      salesTax: money(resultBelow(values, headings.price, "Sales tax")) ?? 0,
      samples: samplesOf(values),
    };
  });
}

function linesOf(values: readonly Row[], formulas: readonly Row[]): BedLine[] {
  const first = values.findIndex(([label]) => label === headings.lines) + 1;
  const last = values.findIndex(([label], row) => row >= first && currentText(label) === "Totals");
  if (first === 0 || last < 0) return [];
  return values.slice(first, last).flatMap((cells, index) => {
    const [label, quantity, unit, unitCost, , markup, , kind] = cells;
    const known = lineCalled(currentText(label), currentText(unit));
    // A spare line is blank; a line of the estimate of which nothing is needed still says so.
    if (typeof quantity !== "number" || (quantity === 0 && !known)) return [];
    const isFormula = (column: number) => String(formulas[first + index]?.[column] ?? "").startsWith("=");
    const isTypedMarkup = typeof markup === "number" && !isFormula(5);
    return [
      {
        key: known?.key,
        label: String(label ?? ""),
        quantity,
        unit: String(unit ?? ""),
        unitCost: typeof unitCost === "number" ? unitCost : undefined,
        kind: String(kind ?? ""),
        typed: known === undefined || !isFormula(1),
        ...(isTypedMarkup && { typedMarkup: markup }),
      },
    ];
  });
}

/** A remark of a line, or a note of a rate, that says that its price is a sample. */
const SAYS_SAMPLE = /^(?:example|sample)\b/;
const [QUANTITY, NOTE, REMARK] = [1, 4, 8];

/** A line of which nothing is needed doesn't bear on the price, whatever its unit costs. */
function samplesOf(values: readonly Row[]): string[] {
  const says = (cell: unknown) => typeof cell === "string" && SAYS_SAMPLE.test(cell);
  const linesEnd = values.findIndex(([label]) => currentText(label) === "Totals");
  return values.flatMap((cells, row) => {
    const isLine = row < linesEnd && says(cells[REMARK]) && cells[QUANTITY] !== 0;
    const isRate = row > linesEnd && says(cells[NOTE]);
    return isLine || isRate ? [String(cells[0])] : [];
  });
}

/** What a label's last row below a heading shows: an input and a result may share a label, and results are below. */
function resultBelow(values: readonly Row[], heading: string, label: string): unknown {
  // The head of a block says "Price", too.
  const start = values.findIndex(([first], row) => first === heading && row > 2);
  const rows = start < 0 ? [] : values.slice(start + 1);
  const end = rows.findIndex(([first]) => currentText(first) === headings.cautions);
  return rows.slice(0, end < 0 ? undefined : end).findLast(([first]) => first === label)?.[1];
}

function money(value: unknown): number | undefined {
  return typeof value === "number" && Number.isFinite(value) ? toCents(value) / 100 : undefined;
}
