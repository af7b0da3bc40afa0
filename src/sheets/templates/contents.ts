import { must } from "../../quantities/must";
import { readTape } from "../../quantities/tape";
import { ownFunction } from "../plain/formula";
import { areaOf, cellsOf } from "./area";
import { plainName } from "./callFault";
import { canonical } from "./reference";
import { isOfRatesSheet, isWhose, type Template, type TemplateCell, type TemplateOutside } from "./template";
import { tokensOf } from "./tokens";

/** Something typed that is in a template. */
export interface TypedIn {
  readonly at: string;
  /** What the cells beside or above call it; "" where they say nothing. */
  readonly label: string;
  readonly shows: string;
}

/** What a template holds, to be looked at before it is opened. */
export interface Contents {
  readonly formulas: number;
  readonly inputs: readonly TypedIn[];
  /** Prices, markups and other money matters that are in it. */
  readonly prices: readonly TypedIn[];
  /** Functions that it calls, in alphabetical order. */
  readonly functions: readonly string[];
  /** Names of the office's rates that it reads, and in how many formulas. */
  readonly rates: readonly { readonly name: string; readonly formulas: number }[];
  readonly outside: readonly (TemplateOutside & { readonly formulas: number })[];
}

const MONEY = /price|cost|markup|margin|overhead|charge|\brate\b|tax|\bfee\b|per hour|wage/i;
const MONEY_FORMAT = /[$€£¥]/;

/** All that the person should know of a template before it is written. */
export function contentsOf(template: Template): Contents {
  const cells = new Map(template.cells.map((cell) => [cell.at, cell]));
  const chosen = new Set((template.choices ?? []).flatMap(({ at }) => [...cellsOf(must(areaOf(at)))].map(key)));
  const formats = formatsOf(template);
  const byPlace = new Map([...cells.values()].map((cell) => [key(must(areaOf(cell.at))), cell]));
  const typed = template.cells
    .filter((cell) => isInput(cell, chosen))
    .map((cell) => {
      const { row, column } = must(areaOf(cell.at));
      const format = formats.get(key({ row, column })) ?? "";
      const beside = textBeside(byPlace, row, column);
      const above = textAbove(byPlace, row, column);
      const label = beside?.isNext ? beside.text : [beside?.text, above].filter(Boolean).join(", ");
      const words = `${beside?.text ?? ""} ${above}`;
      const isMoney = MONEY.test(words) || MONEY_FORMAT.test(format);
      return { at: cell.at, label, shows: shownAs(cell, format), isMoney: isMoney && cell.number !== undefined };
    });
  const plain = ({ at, label, shows }: TypedIn): TypedIn => ({ at, label, shows });
  return {
    formulas: template.cells.filter(({ formula }) => formula !== undefined).length,
    inputs: typed.filter(({ isMoney }) => !isMoney).map(plain),
    prices: typed.filter(({ isMoney }) => isMoney).map(plain),
    ...readBy(template),
  };
}

const key = ({ row, column }: { readonly row: number; readonly column: number }) => `${row},${column}`;

function isInput({ at, number, text }: TemplateCell, chosen: ReadonlySet<string>): boolean {
  return number !== undefined || (text !== undefined && (chosen.has(key(must(areaOf(at)))) || isTaped(text)));
}

function isTaped(text: string): boolean {
  if (!/\d/.test(text) || text.length > 40) return false;
  try {
    readTape(text, "ft");
    return true;
  } catch {
    return false;
  }
}

type Cells = ReadonlyMap<string, TemplateCell>;

/** The first text of the row, which says what the row is, and whether the cell is right beside it. */
function textBeside(cells: Cells, row: number, column: number) {
  for (let left = 0; left < column; left += 1) {
    const text = cells.get(key({ row, column: left }))?.text;
    if (text !== undefined && !isTaped(text)) return { text: text.slice(0, 60), isNext: left === column - 1 };
  }
  return undefined;
}

/** The nearest text above, which heads its column. */
function textAbove(cells: Cells, row: number, column: number): string {
  for (let up = row - 1; up >= 0; up -= 1) {
    const text = cells.get(key({ row: up, column }))?.text;
    if (text !== undefined && !isTaped(text)) return text.slice(0, 80);
  }
  return "";
}

function formatsOf({ looks = [] }: Template): ReadonlyMap<string, string> {
  const formats = new Map<string, string>();
  for (const { at, numberFormat } of looks) {
    if (numberFormat === undefined) continue;
    for (const place of at) for (const cell of cellsOf(must(areaOf(place)))) formats.set(key(cell), numberFormat);
  }
  return formats;
}

function shownAs({ number, text = "" }: TemplateCell, format: string): string {
  if (number === undefined) return text;
  const share = format.includes("%");
  const rounded = Number((share ? number * 100 : number).toPrecision(12));
  return `${rounded.toLocaleString("en-US", { maximumFractionDigits: 6 })}${share ? "%" : ""}`;
}

function readBy(template: Template) {
  const functions = new Set<string>();
  const counts = new Map<string, number>();
  const rates = new Map<string, string>();
  const rules = (template.warnings ?? []).map(({ when }) => when);
  for (const formula of [...template.cells.flatMap(({ formula = [] }) => formula), ...rules]) {
    const reads = new Set<string>();
    for (const { type, value } of tokensOf(formula)) {
      if (type === "func") functions.add(ownFunction(value) === undefined ? plainName(value) : value.toUpperCase());
      if (type === "range" || type === "range_beam" || type === "range_named") {
        reads.add((canonical(value) ?? value).toLowerCase());
        // Whose a rate is is on the sheet of rates beside it, so that the rate alone is named.
        if (type === "range_named" && isOfRatesSheet(value) && !isWhose(value) && !rates.has(value.toLowerCase())) {
          rates.set(value.toLowerCase(), value);
        }
      }
    }
    for (const one of reads) counts.set(one, (counts.get(one) ?? 0) + 1);
  }
  const formulas = (reads: string) => counts.get(reads.toLowerCase()) ?? 0;
  return {
    functions: [...functions].sort(),
    rates: [...rates.values()].map((name) => ({ name, formulas: formulas(name) })),
    outside: (template.outside ?? []).map((one) => ({ ...one, formulas: formulas(one.reads) })),
  };
}
