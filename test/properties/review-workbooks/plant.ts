import { fromCol, parseA1Ref, toCol, translateFormulaToR1C1 } from "@borgar/fx";
import type { CellValue, WorkbookFacts } from "../../../src/review/facts";
import { type CellText, contentOf, type SheetInput, type WorkbookInput } from "../../reviewWorkbook";

/** A cell of a workbook that is written down, from 0. */
export interface Spot {
  readonly sheet: number;
  readonly row: number;
  readonly column: number;
}

/** A workbook with one mistake in it, and where. */
export interface Planted {
  readonly input: WorkbookInput;
  readonly at: readonly Spot[];
}

/** A workbook to plant in: as written, and as worked out. */
export interface Field {
  readonly input: WorkbookInput;
  readonly facts: WorkbookFacts;
}

/** Numbers from 0 up to 1, the same on every run (mulberry32). */
export function randomFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

type Random = () => number;
const pick = <Item>(items: readonly Item[], random: Random): Item | undefined =>
  items[Math.floor(random() * items.length)];

const isFormula = (content: CellText | undefined): content is string =>
  typeof content === "string" && content.startsWith("=");
const contentAt = ({ input }: Field, { sheet, row, column }: Spot) =>
  contentOf(input.sheets[sheet]?.rows[row]?.[column]);
const valueAt = ({ facts }: Field, { sheet, row, column }: Spot): CellValue =>
  facts.sheets[sheet]?.used?.values[row]?.[column] ?? "";
const numberAt = (field: Field, spot: Spot): number | undefined => {
  const value = valueAt(field, spot);
  return typeof value === "number" ? value : undefined;
};
const addressOf = ({ row, column }: Spot) => `${toCol(column)}${row + 1}`;

function* spots({ input }: Field): Generator<Spot> {
  for (const [sheet, { rows }] of input.sheets.entries()) {
    for (const [row, cells] of rows.entries()) for (const column of cells.keys()) yield { sheet, row, column };
  }
}

function withCells(input: WorkbookInput, cells: readonly (readonly [Spot, CellValue])[]): WorkbookInput {
  const sheets = input.sheets.map((sheet, index): SheetInput => {
    const mine = cells.filter(([spot]) => spot.sheet === index);
    if (mine.length === 0) return sheet;
    const rows = sheet.rows.map((row) => [...row]);
    for (const [{ row, column }, content] of mine) {
      while (rows.length <= row) rows.push([]);
      rows[row]![column] = content;
    }
    return { ...sheet, rows };
  });
  return { ...input, sheets };
}

/** Formula cells that share their R1C1 text with two more, below or beside one another, with a blank or a note between at most. */
function filled(field: Field): readonly Spot[] {
  const before = filledOf.get(field);
  if (before) return before;
  const spots = findFilled(field);
  filledOf.set(field, spots);
  return spots;
}

const filledOf = new WeakMap<Field, readonly Spot[]>();

function findFilled(field: Field): Spot[] {
  const byLine = new Map<string, Spot[]>();
  for (const spot of spots(field)) {
    const content = contentAt(field, spot);
    if (!isFormula(content) || !/[A-Z]\d/.test(content)) continue;
    const relative = translateFormulaToR1C1(content, addressOf(spot));
    for (const [line, at] of [
      [`c${spot.column}`, spot.row],
      [`r${spot.row}`, spot.column],
    ] as const) {
      const key = `${spot.sheet} ${line} ${relative}`;
      const list = byLine.get(key);
      if (!list) byLine.set(key, [spot]);
      else if (at - (line.startsWith("c") ? list.at(-1)!.row : list.at(-1)!.column) <= 2) list.push(spot);
    }
  }
  const found = new Map<string, Spot>();
  for (const line of byLine.values()) {
    // A row of sums under columns that hold different things is not one formula filled along.
    const isSums = line.every((spot) => /^=(SUM|AVERAGE)\([^()]*\)$/.test(String(contentAt(field, spot))));
    if (line.length >= 3 && !isSums) for (const spot of line) found.set(JSON.stringify(spot), spot);
  }
  // What reads nothing but blanks cannot be wrong.
  return [...found.values()].filter((spot) => valueAt(field, spot) !== "" && valueAt(field, spot) !== 0);
}

/** Whether any formula of its sheet reads the cell. */
function feeds(field: Field, { sheet, row, column }: Spot): boolean {
  const before = fedOf.get(field) ?? findFed(field);
  fedOf.set(field, before);
  return before.has(`${sheet} ${toCol(column)}${row + 1}`);
}

const fedOf = new WeakMap<Field, ReadonlySet<string>>();

function findFed(field: Field): Set<string> {
  const fed = new Set<string>();
  for (const spot of spots(field)) {
    const content = contentAt(field, spot);
    if (!isFormula(content)) continue;
    for (const [, column, row] of content.matchAll(/(?<![A-Z$!\d.])\$?([A-Z]{1,2})\$?(\d+)(?!\d)/g))
      fed.add(`${spot.sheet} ${column}${row}`);
    for (const { area } of sumRanges(content)) {
      for (let row = area.top; row <= area.bottom; row++) {
        for (let column = area.left; column <= area.right; column++)
          fed.add(`${spot.sheet} ${toCol(column)}${row + 1}`);
      }
    }
  }
  return fed;
}

/** The ranges of the sums in a formula, each with where it is in the text. */
function sumRanges(content: string): {
  text: string;
  start: number;
  rows: number;
  columns: number;
  area: { top: number; left: number; bottom: number; right: number };
}[] {
  return [...content.matchAll(/(?<=\b(?:SUM|AVERAGE)\()(\$?[A-Z]+\$?\d+:\$?[A-Z]+\$?\d+)(?=\))/g)].flatMap((match) => {
    const read = parseA1Ref(match[0]);
    if (!read || !("range" in read)) return [];
    const { top, left, bottom, right } = read.range;
    const area = { top: top!, left: left!, bottom: bottom!, right: right! };
    return [
      {
        text: match[0],
        start: match.index,
        rows: area.bottom - area.top + 1,
        columns: area.right - area.left + 1,
        area,
      },
    ];
  });
}

const summing = (field: Field) =>
  [...spots(field)].filter(
    (spot) => isFormula(contentAt(field, spot)) && sumRanges(String(contentAt(field, spot))).length === 1,
  );

/** The mistakes, each by its name; undefined where a workbook has no place for it. */
export const slips: Readonly<
  Record<
    string,
    { readonly rules: readonly string[]; readonly plant: (field: Field, random: Random) => Planted | undefined }
  >
> = {
  "a number typed over a formula": {
    rules: ["typed-over"],
    plant(field, random) {
      const spot = pick(
        filled(field).filter((one) => numberAt(field, one) !== undefined),
        random,
      );
      if (!spot) return undefined;
      const value = Number((numberAt(field, spot)! * (0.6 + random() * 0.8)).toPrecision(3));
      return { input: withCells(field.input, [[spot, value]]), at: [spot] };
    },
  },
  "a formula unlike its neighbors": {
    rules: ["unlike-neighbors", "buried-rate", "argument-unit", "unit-factor"],
    plant(field, random) {
      const spot = pick(
        filled(field).filter((one) => numberAt(field, one) !== undefined),
        random,
      );
      if (!spot) return undefined;
      const content = String(contentAt(field, spot));
      const changes = [
        () => `${content}*1.1`,
        () =>
          content.replace(
            /(?<![$A-Z])([A-Z]{1,2})(\d+)/,
            (_, letters: string, row: string) => `${letters}${Number(row) + 1}`,
          ),
        () =>
          content.replace(
            /(?<![$A-Z.])([A-Z]{1,2})(\d+)/,
            (_, letters: string, row: string) => `${toCol(fromCol(letters) + 1)}${row}`,
          ),
        () =>
          content.replace(
            /(?<![$A-Z.])([A-Z]{1,2})(\d+)/,
            (_, letters: string, row: string) => `$${letters}$${Number(row) - 1}`,
          ),
        () => (content.includes("*") ? content.replace("*", "/") : `${content}+25`),
      ];
      const changed = pick(changes, random)!();
      return changed === content ? undefined : { input: withCells(field.input, [[spot, changed]]), at: [spot] };
    },
  },
  "a sum that stops short or skips": {
    rules: ["short-sum"],
    plant(field, random) {
      const spot = pick(
        summing(field).filter((one) =>
          sumRanges(String(contentAt(field, one))).some(({ rows, columns }) => rows * columns >= 4),
        ),
        random,
      );
      if (!spot) return undefined;
      const content = String(contentAt(field, spot));
      const [range] = sumRanges(content);
      const { top, left, bottom, right } = range!.area;
      const down = range!.rows > 1;
      const along = (at: number): Spot => ({ ...spot, row: down ? at : top, column: down ? left : at });
      const [from, to] = down ? [top, bottom] : [left, right];
      const name = (start: number, end: number) => `${addressOf(along(start))}:${addressOf(along(end))}`;
      const way = Math.floor(random() * 3);
      const middle = from + 1 + Math.floor(random() * (to - from - 2));
      const [text, left_] =
        way === 0
          ? [name(from, to - 1), to]
          : way === 1
            ? [name(from + 1, to), from]
            : [`${name(from, middle - 1)},${name(middle + 1, to)}`, middle];
      if (!numberAt(field, along(left_))) return undefined;
      return { input: withCells(field.input, [[spot, content.replace(range!.text, text)]]), at: [spot] };
    },
  },
  "a subtotal counted twice": {
    rules: ["double-count"],
    plant(field, random) {
      const spot = pick(summing(field), random);
      if (!spot) return undefined;
      const content = String(contentAt(field, spot));
      const [range] = sumRanges(content);
      const { top, left, bottom, right } = range!.area;
      const inside: Spot[] = [];
      for (let row = top; row <= bottom; row++)
        for (let column = left; column <= right; column++) inside.push({ ...spot, row, column });
      // A spare line inside the range becomes a subtotal of those above it.
      const spare = inside.slice(2).find((one) => numberAt(field, one) === 0 && isFormula(contentAt(field, one)));
      if (spare && range!.rows > 1) {
        const formula = `=SUM(${addressOf(inside[0]!)}:${addressOf({ ...spare, row: spare.row - 1 })})`;
        return { input: withCells(field.input, [[spare, formula]]), at: [spare, spot] };
      }
      // A grand total of subtotals becomes one over everything.
      const chain = [...spots(field)].find(
        (one) =>
          /^=[A-Z]+\d+(\+[A-Z]+\d+)+$/.test(String(contentAt(field, one))) &&
          String(contentAt(field, one)).split("+").length > 2,
      );
      if (chain && random() < 0.7) {
        const [first, last] = [
          String(contentAt(field, chain)).slice(1).split("+")[0]!,
          addressOf({ ...chain, row: chain.row - 1 }),
        ];
        return {
          input: withCells(field.input, [
            [chain, `=SUM(${first.replace(/\d+/, (row) => String(Number(row) - 4))}:${last})`],
          ]),
          at: [chain],
        };
      }
      const again = pick(
        inside.filter((one) => numberAt(field, one)),
        random,
      );
      return again && { input: withCells(field.input, [[spot, `${content}+${addressOf(again)}`]]), at: [spot] };
    },
  },
  "a number stored as text": {
    rules: ["number-as-text"],
    plant(field, random) {
      const formulas = [...spots(field)]
        .map((one) => ({ one, content: String(contentAt(field, one)) }))
        .filter(({ content }) => isFormula(content));
      const candidates = [...spots(field)].filter((spot) => {
        if (typeof contentAt(field, spot) !== "number") return false;
        const name = new RegExp(`(?<![A-Z$!\\d])\\$?${toCol(spot.column)}\\$?${spot.row + 1}(?!\\d)`);
        if (
          formulas.some(
            ({ one, content }) => one.sheet === spot.sheet && content.includes("BED.") && name.test(content),
          )
        )
          return false;
        return formulas.some(
          ({ one, content }) =>
            one.sheet === spot.sheet &&
            ((!content.includes("BED.") && name.test(content.replaceAll(/\([^()]*:[^()]*\)/g, ""))) ||
              sumRanges(content).some(
                ({ area }) =>
                  spot.row >= area.top &&
                  spot.row <= area.bottom &&
                  spot.column >= area.left &&
                  spot.column <= area.right,
              )),
        );
      });
      const spot = pick(candidates, random);
      return spot && { input: withCells(field.input, [[spot, `'${contentAt(field, spot)}`]]), at: [spot] };
    },
  },
  "an error that runs into a total": {
    rules: ["error", "unlike-neighbors"],
    plant(field, random) {
      const spot = pick(
        filled(field).filter((one) => numberAt(field, one) !== undefined),
        random,
      );
      if (!spot) return undefined;
      const content = String(contentAt(field, spot));
      const changes = [content.replace(/\$?[A-Z]{1,2}\$?\d+/, "#REF!"), `${content}/0`, `${content}+"n/a"`];
      return { input: withCells(field.input, [[spot, pick(changes, random)!]]), at: [spot] };
    },
  },
  "a blank that feeds a total": {
    rules: ["blank", "error"],
    plant(field, random) {
      const likes = filled(field).filter((one) => feeds(field, one));
      const cleared = likes.filter((one) => numberAt(field, one) !== undefined);
      // A typed number that a filled-down formula reads in its own line.
      const read = likes.flatMap((spot) =>
        [...String(contentAt(field, spot)).matchAll(/(?<![$A-Z.!\d])([A-Z]{1,2})(\d+)(?![\d(:])/g)].flatMap(
          ([, letters, row]): Spot[] => {
            const input = { sheet: spot.sheet, row: Number(row) - 1, column: fromCol(letters!) };
            return typeof contentAt(field, input) === "number" &&
              (input.row === spot.row || input.column === spot.column)
              ? [input]
              : [];
          },
        ),
      );
      const spot = pick(
        (random() < 0.4 || read.length === 0 ? cleared : read).filter((one) => feeds(field, one)),
        random,
      );
      return spot && { input: withCells(field.input, [[spot, ""]]), at: [spot] };
    },
  },
  "rows hidden inside a total": {
    rules: ["hidden-in-total"],
    plant(field, random) {
      const spot = pick(
        summing(field).filter((one) => sumRanges(String(contentAt(field, one)))[0]!.rows >= 4),
        random,
      );
      if (!spot) return undefined;
      const { top, bottom, left } = sumRanges(String(contentAt(field, spot)))[0]!.area;
      const row = top + Math.floor(random() * (bottom - top + 1));
      if (!numberAt(field, { ...spot, row, column: left })) return undefined;
      const sheets = field.input.sheets.map((sheet, index) =>
        index === spot.sheet ? { ...sheet, hiddenRows: [row + 1] } : sheet,
      );
      return { input: { ...field.input, sheets }, at: [spot, { ...spot, row, column: left }] };
    },
  },
  "whole things rounded down": {
    rules: ["rounded-down"],
    plant(field, random) {
      const candidates = [...spots(field)].flatMap((spot) => {
        const content = String(contentAt(field, spot));
        // Square meters may be rounded either way.
        if (/m²/.test(String(contentAt(field, { ...spot, row: 0 })))) return [];
        if (/^=ROUNDUP\([^()]*(\([^()]*\)[^()]*)*,0\)$/.test(content)) {
          const inner = content.slice("=ROUNDUP(".length, -",0)".length);
          return [`=ROUNDDOWN(${inner},0)`, `=INT(${inner})`, `=ROUND(${inner},0)`, `=TRUNC(${inner})`].map(
            (changed) => ({ spot, changed }),
          );
        }
        const pieces = /^=BED\.EDGING_PIECES\((\w+\d+),(\w+\d+),/.exec(content);
        if (pieces) return [{ spot, changed: `=INT(${pieces[1]}/BED.FEET(${pieces[2]}))` }];
        const boxes = /^=BED\.ORDER_UP\((\w+\d+),(\w+\d+)\)\/\2$/.exec(content);
        return boxes ? [{ spot, changed: `=ROUNDDOWN(${boxes[1]}/${boxes[2]},0)` }] : [];
      });
      const chosen = pick(candidates, random);
      return chosen && { input: withCells(field.input, [[chosen.spot, chosen.changed]]), at: [chosen.spot] };
    },
  },
  "a length turned into a date": {
    rules: ["date-as-length"],
    plant(field, random) {
      const named = (spot: Spot) =>
        [{ ...spot, column: 0 }, ...Array.from({ length: spot.row }, (_, row) => ({ ...spot, row }))].some((at) =>
          /^(?:length|width)\b(?!.*\bin\b)/i.test(String(contentAt(field, at))),
        );
      const candidates = [...spots(field)].filter((spot) => {
        const content = contentAt(field, spot);
        return typeof content === "number" && content > 1 && content < 60 && named(spot);
      });
      const spot = pick(candidates, random);
      if (!spot) return undefined;
      // A day of 2026, as the program shows what it takes for one.
      const input = withCells(field.input, [[spot, 46_023 + Math.floor(random() * 365)]]);
      const formats = { [addressOf(spot)]: "d-mmm" };
      const sheets = input.sheets.map((sheet, at) =>
        at === spot.sheet ? { ...sheet, formats: { ...sheet.formats, ...formats } } : sheet,
      );
      return { input: { ...input, sheets }, at: [spot] };
    },
  },
  "10 typed for 10 %": {
    rules: ["whole-percent"],
    plant(field, random) {
      const candidates = [...spots(field)].filter((spot) => {
        const content = contentAt(field, spot);
        const format = field.facts.sheets[spot.sheet]?.used?.numberFormat[spot.row]?.[spot.column] ?? "";
        return (
          typeof content === "number" &&
          content > 0.015 &&
          content < 1 &&
          (format.includes("%") ||
            /share/.test(
              String(contentAt(field, { ...spot, column: spot.column + 1 })) +
                String(contentAt(field, { ...spot, column: 1 })),
            ))
        );
      });
      const spot = pick(candidates, random);
      return (
        spot && {
          input: withCells(field.input, [[spot, Number((Number(contentAt(field, spot)) * 100).toPrecision(6))]]),
          at: [spot],
        }
      );
    },
  },
  "a constant where a rate exists": {
    rules: ["buried-rate", "unlike-neighbors"],
    plant(field, random) {
      const names = Object.entries(field.input.names ?? {});
      const candidates = [...spots(field)].flatMap((spot) => {
        const content = String(contentAt(field, spot));
        if (!isFormula(content)) return [];
        const named = names.flatMap(([name, formula]) => {
          const read = parseA1Ref(formula.slice(1));
          const sheet = field.input.sheets.findIndex((one) => one.name === read?.context?.[0]);
          const value =
            read && "range" in read ? contentAt(field, { sheet, row: read.range.top!, column: read.range.left! }) : "";
          return new RegExp(`\\b${name}\\b`).test(content) && typeof value === "number" && value > 12
            ? [{ spot, changed: content.replace(new RegExp(`\\b${name}\\b`), String(value)) }]
            : [];
        });
        const fixed = [...content.matchAll(/\$([A-Z]+)\$(\d+)/g)].flatMap(([text, letters, row]) => {
          const value = contentAt(field, { ...spot, row: Number(row) - 1, column: fromCol(letters!) });
          return typeof value === "number" ? [{ spot, changed: content.replace(text, String(value)) }] : [];
        });
        return [...named, ...fixed];
      });
      const chosen = pick(candidates, random);
      return chosen && { input: withCells(field.input, [[chosen.spot, chosen.changed]]), at: [chosen.spot] };
    },
  },
  "a rate that slides away, for want of a $": {
    rules: ["sliding-reference"],
    plant(field, random) {
      const candidates = filled(field).filter((spot) => /\$[A-Z]+\$\d+/.test(String(contentAt(field, spot))));
      const spot = pick(candidates, random);
      if (!spot) return undefined;
      const content = String(contentAt(field, spot));
      const fixed = pick([...content.matchAll(/\$([A-Z]+)\$(\d+)/g)], random)!;
      const relative = translateFormulaToR1C1(content, addressOf(spot));
      const line = candidates.filter(
        (one) =>
          one.row === spot.row && translateFormulaToR1C1(String(contentAt(field, one)), addressOf(one)) === relative,
      );
      const cells = line.map((one, index): [Spot, CellValue] => [
        one,
        String(contentAt(field, one)).replace(fixed[0], `${toCol(fromCol(fixed[1]!) + index)}${fixed[2]}`),
      ]);
      return { input: withCells(field.input, cells), at: line };
    },
  },
  "the same bed twice": {
    rules: ["same-bed"],
    plant(field, random) {
      const sheet = field.input.sheets[0]!;
      const head = sheet.rows.findIndex((row) => row.filter((one) => typeof one === "string" && one !== "").length > 6);
      if (head < 0) return undefined;
      const isAcross =
        typeof sheet.rows[head + 1]?.[3] === "number" &&
        typeof sheet.rows[head + 1]?.[4] === "number" &&
        sheet.rows[head]?.[1] === "Unit";
      const isData = (row: readonly CellText[]) => row.length > 6 && row.some(isFormula) && !row.includes("Total");
      if (isAcross) {
        const columns = sheet.rows[head]!.flatMap((one, column) =>
          column > 1 && one !== "" && one !== "All beds" ? [column] : [],
        );
        const [from, to] = [pick(columns, random)!, pick(columns, random)!];
        if (from === to) return undefined;
        const rows = sheet.rows.flatMap((row, index) =>
          index >= head && index < 22 && !isFormula(row[from]) ? [index] : [],
        );
        return {
          input: withCells(
            field.input,
            rows.map((row) => [{ sheet: 0, row, column: to }, contentOf(sheet.rows[row]![from])]),
          ),
          at: rows.flatMap((row) => [
            { sheet: 0, row, column: to },
            { sheet: 0, row, column: from },
          ]),
        };
      }
      const rows = sheet.rows.flatMap((row, index) => (index > head && isData(row) ? [index] : []));
      const [from, to] = [pick(rows, random), pick(rows, random)];
      if (
        from === undefined ||
        to === undefined ||
        from === to ||
        rows.length < 6 ||
        !/bed/i.test(sheet.rows[head]!.join(" "))
      )
        return undefined;
      const columns = sheet.rows[from]!.flatMap((one, column) =>
        column > 0 && one !== "" && !isFormula(one) ? [column] : [],
      );
      return {
        input: withCells(
          field.input,
          columns.map((column) => [{ sheet: 0, row: to, column }, contentOf(sheet.rows[from]![column])]),
        ),
        at: columns.flatMap((column) => [
          { sheet: 0, row: to, column },
          { sheet: 0, row: from, column },
          { sheet: 0, row: to, column: 0 },
          { sheet: 0, row: from, column: 0 },
        ]),
      };
    },
  },
};
