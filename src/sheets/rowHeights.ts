import { must } from "../quantities/must";
import { looks } from "./looks";
import type { Plan } from "./plan";

/** A line of text in the plain font, in points. */
export const LINE_POINTS = 15;
/** What a line takes of its font's size, so that the tails of letters are seen: common practice. */
const LINE_SPACING = 1.3;
const PLAIN_SIZE = 11;
const BOLD = 1.04;
/** Programs print text up to so much wider than the columns that they show on screen: their digits are whole pixels there. */
const TO_SPARE = 1.07;
/** What a merged cell gains between two columns, in digits. */
const BETWEEN_COLUMNS = 5 / 7;
/** How wide characters are beside a digit, by which columns count: from the metrics of Carlito, which has Calibri's. */
const CHARACTER_WIDTHS: readonly (readonly [RegExp, number])[] = [
  [/[ .,;:'’iIjl]/, 0.48],
  [/[frtJ()/!-]/, 0.67],
  [/[cszL"“”°]/, 0.82],
  [/[aegkvxyEFSTYZ]/, 0.96],
  [/[bdhnopquBCKPRX]/, 1.05],
  [/[mwMW@%&—]/, 1.6],
  [/[A-ZÀ-Þ]/, 1.25],
  [/[\u1100-\uffff]/, 2],
];
const ANY_OTHER = 1;

/** What cells show, row by row. */
type Shown = readonly (readonly unknown[])[];

/**
 * How high each row has to be so that all of its text is seen, in points. Programs don't work that out for merged cells,
 * and not all of them do for others when they open a file.
 *
 * @param shown what the cells show, where a formula gives text; left out, formulas count as one line.
 */
export function rowHeights(plan: Plan, shown?: Shown): number[] {
  const traits = traitsOf(plan);
  return plan.formulas.map((cells, row) =>
    cells.reduce((height: number, content, column) => {
      const { wraps, size = PLAIN_SIZE, isBold, width } = must(must(traits[row])[column]);
      const text = textIn(content, shown?.[row]?.[column]);
      if (text === "") return height;
      const room = (width * PLAIN_SIZE) / size / TO_SPARE / (isBold ? BOLD : 1);
      const lines = wraps && room >= 1 ? linesOf(text, room) : 1;
      return Math.max(height, lines * Math.max(LINE_POINTS, size * LINE_SPACING));
    }, LINE_POINTS),
  );
}

/**
 * The rows with text that may break into lines, with their heights. Those of one line are among them: some programs give
 * a row the height that a merged cell's text would take in the first of its columns.
 */
export function rowsThatWrap(plan: Plan, shown?: Shown): { row: number; points: number }[] {
  const traits = traitsOf(plan);
  return rowHeights(plan, shown).flatMap((points, row) => {
    const wraps = must(traits[row]).some(
      (cell, column) => cell.wraps && textIn(must(plan.formulas[row]?.[column]), shown?.[row]?.[column]) !== "",
    );
    return wraps ? [{ row, points }] : [];
  });
}

interface Traits {
  wraps: boolean;
  isBold: boolean;
  size?: number;
  /** Characters across, with those of the cells that are merged with it; 0 for a cell behind another. */
  width: number;
}

function traitsOf({ formulas, looks: placed, dress, merged = [], widths }: Plan): Traits[][] {
  const traits = formulas.map((cells, row) =>
    cells.map((_, column): Traits => {
      const { wrap = false, bold = false, size } = dress?.[row]?.[column] ?? {};
      return { wraps: wrap, isBold: bold, width: widths[column] ?? 0, ...(size && { size }) };
    }),
  );
  for (const { area, look } of placed) {
    const { wrap, bold, size } = looks[look];
    for (let row = area.row; row < area.row + area.rows; row += 1) {
      for (let column = area.column; column < area.column + area.columns; column += 1) {
        const cell = traits[row]?.[column];
        if (cell) Object.assign(cell, wrap && { wraps: true }, bold && { isBold: true }, size && { size });
      }
    }
  }
  for (const { row, column, rows, columns } of merged) {
    const cell = traits[row]?.[column];
    // Text over several rows has room that no single row tells of.
    if (!cell) continue;
    const across = widths.slice(column, column + columns);
    cell.width = rows > 1 ? 0 : across.reduce((sum, one) => sum + one + BETWEEN_COLUMNS, -BETWEEN_COLUMNS);
  }
  return traits;
}

function textIn(content: string | number, shown: unknown): string {
  if (typeof content === "number") return "";
  if (content.startsWith("=")) return typeof shown === "string" ? shown : "";
  return content.replace(/^'/, "");
}

/** How many lines a text breaks into, of so many digits' width; a word that is longer than a line is broken, too. */
function linesOf(text: string, room: number): number {
  return text.split("\n").reduce((count, part) => count + linesOfOne(part.split(" "), room), 0);
}

function linesOfOne(words: readonly string[], room: number): number {
  let lines = 1;
  let used = 0;
  for (const word of words) {
    const width = widthOf(word);
    if (used > 0 && used + widthOf(" ") + width <= room) {
      used += widthOf(" ") + width;
      continue;
    }
    if (used > 0) lines += 1;
    lines += Math.max(0, Math.ceil(width / room) - 1);
    used = width % room;
  }
  return lines;
}

function widthOf(word: string): number {
  return [...word].reduce(
    (sum, sign) => sum + (CHARACTER_WIDTHS.find(([signs]) => signs.test(sign))?.[1] ?? ANY_OTHER),
    0,
  );
}
