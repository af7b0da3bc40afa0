import { usualUnit } from "../../headings/roles";
import { units } from "../../headings/units";
import { isoDate } from "../../quantities/calendar/calendarDay";
import { must } from "../../quantities/must";
import { INCHES_PER_FOOT } from "../../quantities/units";
import type { Cell } from "../book";
import { usesOf } from "../formula/readers";
import { calledName, isCall } from "../formula/tree";
import { knownFunction } from "../knowledge";
import type { Study } from "../study";
import { change, eachCell, type Observation, type Rule } from "./rule";

/** No one dates a bed earlier, and a length in feet is never as much as its day number. */
const FIRST_YEAR = "1930";

export const dateAsLength: Rule = {
  id: "date-as-length",
  title: "A length turned into a date",
  level: "error",
  rank: 100,
  matters: "Spreadsheets turn 4-6 and 3/4 into dates, which count as tens of thousands of feet.",
  covers: ["depth-sense"],
  look: (study) =>
    eachCell(study, (cell, grid) => {
      if (!grid.isTypedNumber(cell.row, cell.column)) return undefined;
      const format = grid.format(cell.row, cell.column);
      return isDateFormat(format) ? observe(study, cell, format) : undefined;
    }),
};

/** Words of headings that hold dates. */
const DATED = /\b(?:dates?|days?|when|due|since|until|start\w*|end\w*|finish\w*|established|year|month)\b/i;

/** Whether a number format shows a day: day and month, or month and year, and no time of day. */
function isDateFormat(format: string): boolean {
  const bare = format.replace(/"[^"]*"|\\.|\[[^\]]*\]/g, "");
  return /m/i.test(bare) && /[dy]/i.test(bare) && !/[hs]/i.test(bare);
}

function observe(study: Study, cell: Cell, format: string): Observation | undefined {
  const { book } = study;
  const grid = must(book.grids[cell.sheet]);
  const number = must(grid.number(cell.row, cell.column));
  const [year = "", month, day] = number >= 1 && number < 1e6 ? isoDate(number).split("-") : [];
  if (year < FIRST_YEAR || !holdsLength(study, cell)) return undefined;
  const { role, unit, heading, label } = must(book.places[cell.sheet]).describe(cell.row, cell.column);
  // A column of dates is one, whatever the label of a row sounds like.
  if (DATED.test(heading) || (heading === "" && DATED.test(label))) return undefined;
  const [feet, inches] = [Number(month), Number(day)];
  // In a column of inches 4-6 may have been a range, and a fraction such as 3/4 was none of feet and inches.
  const isInches = (unit ?? (role && usualUnit(role))) === "in";
  const meant = `${feet}' ${inches}"`;
  const isLikely = !isInches && inches < INCHES_PER_FOOT && /d/i.test(format) && !format.includes("/");
  return {
    cell,
    group: `${cell.sheet}:${cell.column}:${isLikely}`,
    about: String(number),
    seen: `holds the date ${feet}/${inches}/${year}, not a length.`,
    todo: isLikely
      ? `If you typed ${feet}-${inches}, change it to ${meant}.`
      : `Type the length with its marks, like 4' 6".`,
    ...(isLikely && { fix: [change(study, cell, meant, "General")] }),
  };
}

/** Whether a cell's heading or label names a length, or a formula takes it for one. */
function holdsLength(study: Study, cell: Cell): boolean {
  const { role, unit } = must(study.book.places[cell.sheet]).describe(cell.row, cell.column);
  const named = unit ?? (role && usualUnit(role));
  if (named) return units[named].measures === "length";
  const asLength = study.once("patterns that take lengths", () => {
    const found = new Set<string>();
    for (const pattern of study.book.patterns) {
      for (const { tree, around, reference } of usesOf(pattern)) {
        const call = around.at(-1) ?? null;
        if (!isCall(call)) continue;
        const { arguments: known } = knownFunction(study.knowledge, calledName(call)) ?? { arguments: [] };
        const kind = known[call.arguments.indexOf(tree as never)]?.kind;
        if (kind === "ft" || kind === "in") found.add(`${pattern.id}:${reference.start}`);
      }
    }
    return found;
  });
  return study.readers.mayBeReadBy(cell, ({ id }, { start }) => asLength.has(`${id}:${start}`));
}
