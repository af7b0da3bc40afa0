import { type Given, NoNative } from "../../functions/native/given";
import { isUnusualName, numberRead, type Reading } from "../../functions/native/textReading";
import { must } from "../../quantities/must";
import { plainName } from "../../quantities/nearestName";
import { cellAddress } from "../../spreadsheet/areas";
import type { Found } from "./references";
import type { CellContent, Region, SheetArea, Surroundings } from "./region";

/** How the calls of our functions see the cells that are given to them. */
export interface CellReader {
  /** What one cell is for an argument. */
  cell(found: Found, reading: Reading): Given;
  /** Makes sure that an argument can be given these cells. */
  range(found: Found, reading: Reading): void;
  /** Refuses cells whose text would reach an argument through a calculation, where it cannot be replaced. */
  through(found: Found, reading: Reading): void;
}

/** What takes the place of a cell's text in the copy. */
export interface Replacement {
  readonly was: string;
  readonly content: number | string;
  /** How the number was read; undefined where the content is a name or blank. */
  readonly reading?: Reading;
}

type Readings = { readonly alone: Set<Reading>; readonly inRange: Set<Reading> };

/** Texts longer than this many cells outside the copy are not looked at one by one. */
const MOST_CELLS_OUTSIDE = 10_000;
const ORDER: readonly Reading[] = ["ft", "in", "number", "share", "date", "stone", "soil"];

/** The texts of a region that our functions read, and what takes their place. */
export class TapedCells {
  private readonly uses = new Map<string, Readings>();
  private readonly replaced = new Map<string, Replacement>();

  constructor(
    private readonly region: Region,
    private readonly around: Surroundings,
  ) {}

  /** A reader that notes what is read, to be kept once the whole formula could be converted. */
  asking(): CellReader & { keep(): void } {
    const asked: { found: Found; reading: Reading; inRange: boolean }[] = [];
    return {
      cell: (found, reading) => {
        asked.push({ found, reading, inRange: false });
        return { kind: "cell", text: found.range.text };
      },
      range: (found, reading) => {
        asked.push({ found, reading, inRange: true });
      },
      through: () => {},
      keep: () => {
        for (const { found, reading, inRange } of asked)
          this.eachText(found, (_, key) => {
            const use = this.uses.get(key) ?? { alone: new Set(), inRange: new Set() };
            this.uses.set(key, use);
            (inRange ? use.inRange : use.alone).add(reading);
          });
      },
    };
  }

  /** Settles what takes the place of each text, once all formulas have asked. */
  settle(): ReadonlyMap<string, Replacement> {
    for (const [key, { alone, inRange }] of this.uses) {
      const [row, column] = key.split(",").map(Number);
      const was = must(this.region.values[must(row)])[must(column)] as string;
      const order = [...inRange, ...ORDER.filter((reading) => alone.has(reading))];
      const reading = order.find((one) => numberRead(was, one) !== undefined);
      if (reading) this.replaced.set(key, { was, content: must(numberRead(was, reading)), reading });
      else if (was !== "" && was.trim() === "") this.replaced.set(key, { was, content: "" });
      else if (order.some(isName) && isUnusualName(was)) this.replaced.set(key, { was, content: plainName(was) });
    }
    return this.replaced;
  }

  /** A reader that sees what takes the place of each text. */
  readonly settled: CellReader = {
    cell: (found, reading) => {
      this.refuseOutside(found, reading);
      const plain: Given = { kind: "cell", text: found.range.text };
      const replacement = found.isInside ? this.replaced.get(this.keyOf(found.row, found.column)) : undefined;
      return typeof replacement?.content === "number" ? givenFor(plain, replacement, reading) : plain;
    },
    range: (found, reading) => {
      this.refuseOutside(found, reading);
      this.eachText(found, (was, key) => {
        const content = this.replaced.get(key)?.content;
        if (typeof content === "number" && numberRead(was, reading) !== content)
          throw new NoNative(`${found.range.text} holds “${was}”, which is read another way elsewhere`);
      });
    },
    through: (found, reading) => {
      this.refuseOutside(found, reading);
      this.eachText(found, (was, key) => {
        const number = numberRead(was, reading);
        const isReplaced = number !== undefined && this.replaced.get(key)?.content === number;
        if (isUnreadable(was, reading) && !isReplaced)
          throw new NoNative(`“${was}” in ${found.range.text} reaches it through a calculation, as text`);
      });
    },
  };

  private keyOf(row: number, column: number): string {
    return `${row - this.region.row},${column - this.region.column}`;
  }

  /** Visits the texts of those cells that are copied. */
  private eachText(found: Found, visit: (text: string, key: string) => void): void {
    if (!found.isInside) return;
    const { row, column, values } = this.region;
    const last = Math.min(found.row + found.rows, row + values.length);
    for (let down = Math.max(found.row, row); down < last; down++) {
      for (let across = found.column; across < found.column + found.columns; across++) {
        const value = must(values[down - row])[across - column];
        if (typeof value === "string" && value !== "") visit(value, this.keyOf(down, across));
      }
    }
  }

  private refuseOutside(found: Found, reading: Reading): void {
    const { valueAt } = this.around;
    if (found.isInside || !valueAt || found.rows * found.columns > MOST_CELLS_OUTSIDE) return;
    for (const [row, column] of cellsOf(found)) {
      const value: CellContent | undefined = valueAt(found.sheetName, row, column);
      if (typeof value === "string" && isUnreadable(value, reading))
        throw new NoNative(
          `${cellAddress({ row, column })} on ${found.sheetName} is not copied, and holds “${value}” as text`,
        );
    }
  }
}

function givenFor(
  plain: Given & { kind: "cell" },
  { was, content, reading: stored }: Replacement,
  reading: Reading,
): Given {
  const own = numberRead(was, reading);
  if (own === content) return { ...plain, tapedZero: own === 0 };
  const isLength = (one: Reading | undefined) => one === "ft" || one === "in";
  if (own !== undefined && isLength(reading) && isLength(stored))
    return { ...plain, holds: stored === "ft" ? "ft" : "in" };
  // Read in another way here than what the cell holds now, so that it is in the formula itself.
  return { kind: "constant", value: own ?? was };
}

function isName(reading: Reading): boolean {
  return reading === "stone" || reading === "soil";
}

/** Whether one of our functions reads a text that ordinary arithmetic does not. */
function isUnreadable(text: string, reading: Reading): boolean {
  if (text.trim() === "") return text !== "";
  return numberRead(text, reading) !== undefined || (isName(reading) && isUnusualName(text));
}

function* cellsOf({ row, column, rows, columns }: SheetArea): Generator<[row: number, column: number]> {
  for (let down = row; down < row + rows; down++)
    for (let across = column; across < column + columns; across++) yield [down, across];
}
