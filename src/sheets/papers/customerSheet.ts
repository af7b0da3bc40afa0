import { toCents } from "../../quantities/cents";
import type { Anchor } from "../../spreadsheet/areas";
import { compose, type DraftRow } from "../compose";
import type { Plan } from "../plan";
import { blankLine, factLine, headingLine, type Paper, pageOf, textCell, titleLine } from "./paper";

/** One bed as the customer is told about it. */
export interface QuotedBed {
  readonly name: string;
  /** What is done, in plain words: `scopeOf` makes them. */
  readonly scope: string;
  /** The bed's price to the cent, before sales tax, in the workbook's currency. */
  readonly price: number;
}

/** What a customer's sheet says. Text that is "" leaves a blank to write in. */
export interface Quote {
  readonly office: string;
  readonly customer: string;
  readonly place: string;
  /** Dates in words. */
  readonly date: string;
  readonly validUntil: string;
  readonly beds: readonly QuotedBed[];
  /** Whether each bed has its price, or the job one sum. */
  readonly byBed: boolean;
  /** Sales tax on the job in money, to the cent; 0 for none. */
  readonly salesTax: number;
  readonly notIncluded: readonly string[];
  readonly terms: string;
}

const WIDTHS = [22, 66, 14];

/**
 * The customer's sheet: what is done in plain words, the price by bed or as one sum, what is not included, how long it
 * holds, and blanks for the office's own name and terms. Text and numbers alone: nothing in it tells what a bed costs
 * the office, and no cell has a formula.
 */
export function customerSheet(quote: Quote, paper: Paper, at: Anchor): Plan {
  const { office, customer, place, date, validUntil, beds, byBed, salesTax, notIncluded, terms } = quote;
  const sum = totalOf(beds);
  const rows: DraftRow[] = [
    titleLine("Price for stone beds"),
    factLine("From", office),
    factLine("For", customer),
    factLine("Place", place),
    factLine("Date", date),
    factLine("Holds until", validUntil),
    blankLine,
    headingLine("Bed", "What is done", byBed ? "Price" : ""),
    ...beds.map(
      (bed): DraftRow => ({
        cells: [
          textCell(bed.name, "wrapped"),
          textCell(bed.scope, "wrapped"),
          byBed ? { content: bed.price, format: "money", look: "topNumber" } : undefined,
        ],
      }),
    ),
    moneyLine(salesTax > 0 ? "Price before tax" : "Price", sum),
    ...(salesTax > 0
      ? [moneyLine("Sales tax", salesTax), moneyLine("Price with tax", toCents(sum + salesTax) / 100)]
      : []),
    blankLine,
    headingLine("Not included", "", ""),
    ...notIncluded.map((text): DraftRow => ({ cells: [undefined, textCell(text, "wrapped")] })),
    blankLine,
    headingLine("Terms", "", ""),
    factLine("", terms),
    blankLine,
    factLine("Accepted, name", ""),
    factLine("Signed, date", ""),
  ];
  return { ...compose("customer's sheet", rows, WIDTHS, at), page: pageOf(paper) };
}

/** The sum of the beds' prices, added in whole cents. */
export function totalOf(beds: readonly { readonly price: number }[]): number {
  return beds.reduce((cents, { price }) => cents + toCents(price), 0) / 100;
}

function moneyLine(label: string, amount: number): DraftRow {
  return {
    look: "total",
    cells: [textCell(label, "total"), undefined, { content: amount, format: "money", look: "total" }],
  };
}
