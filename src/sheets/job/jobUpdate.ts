import { isSame } from "../../quantities/bed/evaluate";
import { EDGING_KINDS } from "../../quantities/edgingKinds";
import type { KindOf } from "../../quantities/job/bedRows";
import { countsOf, type KindNames } from "../../quantities/job/priceJob";
import { must } from "../../quantities/must";
import { SOLD_BY, TON } from "../../quantities/soldBy";
import type { Anchor } from "../../spreadsheet/areas";
import { alignRows, type Content, isSame as isSameContent, movesOf } from "../blockRows";
import { addressesOf, type BlockCells, type BlockUpdate, blockUpdate, type CellUpdate, resolved } from "../blockUpdate";
import type { DraftCell, DraftRow } from "../compose";
import { blockAt } from "../estimate/readBlock";
import type { BedCells } from "./bedCells";
import { FIRST_BED, type JobHead, type JobToWrite, jobRows } from "./jobBlock";
import { jobHeadings } from "./jobHeadings";
import { withDiscountsAsShares } from "./jobLineRows";
import { type OptionBlock, optionAt } from "./jobOptions";
import { bedPlaces, type JobOnSheet, jobParts, type PlaceElsewhere, placeIn } from "./readJobBlock";
import { jobColumns, SECOND_EDGING, type SheetBed } from "./sheetBed";

/*
 * A job's block is updated where it is, like a bed's: the rows that it was made from are planned again from what its cells
 * say, and compared with the rows that it is to have. Beds and kinds have numbers in the keys of cells, and other numbers
 * once one is taken out, so the old rows get the new numbers first.
 */

/** What a job's block was made from, as far as its cells tell. */
export interface JobAsMade {
  readonly head: JobHead;
  /** No bed where its block is gone. */
  readonly beds: readonly (SheetBed | undefined)[];
  /** Which beds have a column for a second edging, by their places, in the order of those columns. */
  readonly seconds: readonly number[];
  /** What its lines are for; a name that begins with # is an error. */
  readonly kinds: KindNames;
  /** The other versions in its table. */
  readonly options: readonly OptionBlock[];
  readonly cells: BlockCells;
}

/** What is read of a sheet's used range. */
interface UsedCells extends Anchor {
  readonly values: readonly (readonly unknown[])[];
  readonly formulas: readonly (readonly Content[])[];
}

const KIND_ROW = /^Kind \((stone|edging|fabric|sand)(\d+)\)$/;
const BROKEN = "#REF!";

/**
 * Reads what a job's block was made from.
 *
 * @param used what is used of its sheet; @param beds every bed's block in the workbook.
 */
export function jobAsMade(job: JobOnSheet, used: UsedCells, beds: readonly SheetBed[]): JobAsMade {
  const { area, sheet, name, option, differs, isChosen } = job;
  const cut = <T>(cells: readonly (readonly T[])[]) =>
    Array.from({ length: area.rows }, (_, row) =>
      Array.from(
        { length: area.columns },
        (_, column) => cells[area.row - used.row + row]?.[area.column - used.column + column] ?? ("" as T),
      ),
    );
  const [values, contents] = [cut(used.values), cut(used.formulas)];
  const bedAt = (place: PlaceElsewhere | undefined) =>
    place && beds.find((bed) => bed.sheet === place.sheet && blockAt([bed], place.cell) !== undefined);
  const found = bedPlaces(sheet, values, contents).map(({ at }) => bedAt(at));
  const own = linkedLines(job, values, contents);
  const kindsOf = (of: KindOf) =>
    values.flatMap(([label, kind]) => (KIND_ROW.exec(String(label))?.[1] === of ? [String(kind)] : []));
  return {
    head: { name, option, differs, isChosen },
    beds: found.map((bed, index) => {
      const ownOfBed = own.flatMap((line) => (line.bed === index ? [line.at] : []));
      return bed && { ...onOwnSheet(bed, sheet), own: ownOfBed };
    }),
    kinds: {
      stone: kindsOf("stone"),
      edging: kindsOf("edging"),
      fabric: kindsOf("fabric"),
      sand: kindsOf("sand"),
    },
    seconds: secondColumns(job, values, contents),
    options: optionsIn(sheet, values, contents),
    cells: { at: area, contents },
  };
}

/** A bed as the job on a sheet refers to it: one below the job has no sheet in its references. */
export const onOwnSheet = (bed: SheetBed, sheet: string): SheetBed =>
  bed.sheet === sheet ? { ...bed, sheet: "" } : bed;

/** The versions that the table has; one whose sheet is gone has a place on no sheet. */
function optionsIn(
  own: string,
  values: readonly (readonly unknown[])[],
  contents: readonly (readonly Content[])[],
): OptionBlock[] {
  const heading = values.findIndex(([label]) => label === jobHeadings.options);
  if (heading < 0) return [];
  const rows = contents.slice(heading + 2);
  const end = rows.findIndex(([label]) => label === "");
  return rows.slice(0, end < 0 ? undefined : end).map(([label], index) => {
    const place = placeIn(String(label).slice(1), own);
    return place ? optionAt(place.sheet, place.cell) : { sheet: `gone ${index}`, at: { row: 0, column: 0 } };
  });
}

/** Lines that follow one of a bed's own: which bed's, by its name in their labels, and where it is there. */
function linkedLines(
  { sheet, area }: JobOnSheet,
  values: readonly (readonly unknown[])[],
  contents: readonly (readonly Content[])[],
): { readonly bed: number; readonly at: Anchor }[] {
  const [lines, table] = [jobParts(values)(jobHeadings.lines), jobParts(values)(jobHeadings.beds)];
  if (!lines || !table) return [];
  return contents.slice(lines.first, lines.end).flatMap(([label, quantity]) => {
    const name = /&" \("&\$?[A-Z]{1,3}\$?(\d+)&"\)"$/.exec(String(label))?.[1];
    if (name === undefined) return [];
    const place = placeIn(String(quantity).slice(1), sheet)?.cell;
    const at = place ? { row: place.row, column: place.column - 1 } : { row: -1, column: -1 };
    return [{ bed: Number(name) - 1 - area.row - table.first, at }];
  });
}

/** The beds that have a column for a second edging, by their places in the table, in the order of the columns. */
function secondColumns(
  { area }: JobOnSheet,
  values: readonly (readonly unknown[])[],
  contents: readonly (readonly Content[])[],
): number[] {
  const table = jobParts(values)(jobHeadings.beds);
  const headings = contents[values.findIndex(([label]) => label === jobHeadings.working)];
  if (!table || !headings) return [];
  return headings.flatMap((heading) => {
    const row = SECOND_HEADING.exec(String(heading))?.[1];
    return row === undefined ? [] : [Number(row) - 1 - area.row - table.first];
  });
}

const SECOND_HEADING = new RegExp(`^=\\$?[A-Z]{1,3}\\$?(\\d+)&"${SECOND_EDGING}"$`);

/** A cell that a block has lost is anywhere: what the job has of it is in error, and rewritten in any case. */
const anywhere = (cells: BedCells): BedCells =>
  Object.assign(new Map(cells), { get: (key: string) => cells.get(key) ?? { row: 0, column: 0 } });

/**
 * What it takes to have a job's block hold other beds, or lines for other kinds. What was typed by hand stays with its
 * bed and its kind.
 *
 * @param made from {@link jobAsMade}; @param wanted the job to have; @param kinds the names of its kinds.
 * @throws {MissingCell} where a bed's block has lost a cell that the job needs.
 */
export function jobUpdate(made: JobAsMade, wanted: JobToWrite, kinds: KindNames): BlockUpdate {
  const { contents } = made.cells;
  const wantedColumns = jobColumns(wanted.beds);
  const standIn = must(wanted.beds[0]);
  const beds = made.beds.map((bed, place) => {
    const there = bed ?? { ...standIn, own: [] };
    return { ...there, cells: anywhere(there.cells), hasSecond: made.seconds.includes(place) };
  });
  const columns = jobColumns(beds);
  // Beds come first, so that their places are those among the columns.
  const bedTo = columns.map((column, index) => {
    const isThere = made.beds[index < beds.length ? index : must(made.seconds[index - beds.length])] !== undefined;
    return placeOf(wantedColumns, (one) => isThere && one.isSecond === column.isSecond && isBlock(one, column));
  });
  const was = { ...made.head, kinds: countsOf(made.kinds), options: made.options };
  const numbered = numbers(made, wanted, kinds, bedTo);
  const rows = jobRows({ ...was, beds }).map((row) => renumbered(row, numbered));
  const places = alignRows(rows, contents);
  const next = jobRows(wanted);
  const { removed } = movesOf(rows, next, places, contents.length);
  const goes = new Set(removed.map(({ index }) => index));
  /** What was typed into cells that are somewhere else afterwards, by their keys. */
  const typed = new Map<string, string | number>();
  const addresses = addressesOf(rows, places, made.cells.at);
  /** The same formula for other cells of a bed's block, which may have come to have more widths or corners. */
  const readsElsewhere = (cell: DraftCell | undefined, holds: Content) => {
    const [printed] = resolved(cell?.content ?? "", addresses);
    return holds !== "" && !isSameContent(holds, printed) && shapeOf(holds) === shapeOf(printed);
  };
  let rowsOfOthers: readonly (readonly DraftRow[])[] | undefined;
  /** The formula for a bed that was edged with something else then, or whose stone was sold by something else. */
  const readsAsOther = (index: number, column: number, holds: Content) => {
    rowsOfOthers ??= [
      ...EDGING_KINDS.flatMap(({ name }) => [{ edgingKind: name }, { secondKind: name }]),
      ...SOLD_BY.map(({ name }) => ({ soldBy: name })),
      {},
    ].map((then) => {
      const others = beds.map((bed) => ({
        ...bed,
        form: { ...bed.form, typed: { ...bed.form.typed, ...then } },
        // Without any of it, a bed is as those of earlier versions.
        ...(Object.keys(then).length === 0 && {
          form: { ...bed.form, typed: { ...bed.form.typed, soldBy: TON.name } },
          cells: Object.assign(anywhere(bed.cells), { has: (key: string) => key !== "soldBy" && bed.cells.has(key) }),
        }),
      }));
      return jobRows({ ...was, beds: others }).map((row) => renumbered(row, numbered));
    });
    return rowsOfOthers.some((all) => readsElsewhere(all[index]?.cells[column], holds));
  };
  const previous = rows.map((row, index): DraftRow => {
    const place = places[index];
    if (place === undefined) return row;
    const width = isPerBed(row) ? FIRST_BED + columns.length : row.cells.length;
    const cells = Array.from({ length: width }, (_, column): DraftCell | undefined => {
      const cell = row.cells[column];
      const holds = contents[place]?.[column] ?? "";
      const bed = isPerBed(row) && column >= FIRST_BED ? column - FIRST_BED : undefined;
      const isMoved = bed !== undefined && bedTo[bed] !== bed;
      if (cell?.key !== undefined && isConstant(holds) && String(cell.content).startsWith("=")) {
        const to = isMoved ? bedTo[must(bed)] : bed;
        if (isMoved && to !== undefined) typed.set(`${row.id}.${to + 1}`, asDraft(holds));
        else if (goes.has(index)) typed.set(cell.key, asDraft(holds));
      }
      const isOurs =
        isMoved ||
        String(holds).includes(BROKEN) ||
        (bed !== undefined && (readsElsewhere(cell, holds) || readsAsOther(index, column, holds)));
      return isOurs ? { ...cell, content: asDraft(holds) } : cell;
    });
    return { ...row, cells };
  });
  const updateTo = (rowsThen: readonly DraftRow[]): BlockUpdate => {
    const carried = rowsThen.map((row) => ({
      ...row,
      cells: row.cells.map((cell) => {
        const held = cell?.key === undefined ? undefined : typed.get(cell.key);
        return cell && held !== undefined ? { ...cell, content: held } : cell;
      }),
    }));
    return blockUpdate([previous, withDiscountsAsShares(previous)], carried, made.cells);
  };
  const update = updateTo(next);
  const growth = update.operations.reduce((sum, { kind, count }) => sum + (kind === "insert" ? count : -count), 0);
  if (growth === 0 || wanted.beds.every(({ sheet }) => sheet !== "")) return update;
  // Beds below the job have moved by the time that its cells are written; cells that aren't written follow by themselves.
  const moved = updateTo(
    jobRows({ ...wanted, beds: wanted.beds.map((bed) => (bed.sheet === "" ? movedBy(bed, growth) : bed)) }),
  );
  const isWritten = ({ row, column }: CellUpdate) =>
    update.changes.some((one) => one.row === row && one.column === column);
  return { ...moved, changes: moved.changes.filter(isWritten) };
}

function movedBy(bed: SheetBed, rows: number): SheetBed {
  const down = <T extends Anchor>(place: T): T => ({ ...place, row: place.row + rows });
  const cells = new Map([...bed.cells].map(([key, cell]) => [key, down(cell)] as const));
  return { ...bed, area: down(bed.area), cells, own: bed.own.map(down) };
}

const isPerBed = ({ id = "option" }: DraftRow) => !id.startsWith("option");

/** Whether two are the same block of the workbook. */
export const isBlock = (one: Pick<SheetBed, "sheet" | "area">, other: Pick<SheetBed, "sheet" | "area">): boolean =>
  one.sheet === other.sheet && one.area.row === other.area.row && one.area.column === other.area.column;

const shapeOf = (content: Content) =>
  String(content)
    .replace(/[\s$]/g, "")
    // How far below a list its next row is.
    .replace(/(ROWS\([^()]*\))-\d+/gi, "$1")
    .toUpperCase()
    .replace(/\b[A-Z]{1,3}\d{1,7}(?::[A-Z]{1,3}\d{1,7})?(?![\w(])/g, "#")
    // Earlier versions read a list up to its last row.
    .replace(/#:INDEX\(.*?#,ROWS\(.*?#\)\)/g, "#");

const isConstant = (content: Content) => content !== "" && !String(content).startsWith("=");
const asDraft = (content: Content) => (typeof content === "boolean" ? String(content) : content);

function placeOf<T>(items: readonly T[], isIt: (item: T) => boolean): number | undefined {
  const place = items.findIndex(isIt);
  return place < 0 ? undefined : place;
}

/** For the number of a bed or a kind in a key the one that it is to have, counted from 1. */
interface Numbers {
  readonly bed: (n: number) => number;
  readonly kind: (of: KindOf, n: number) => number;
  readonly own: (bed: number, n: number) => string;
}

/** What is not to be has a number that no bed and no kind has. */
const GONE = 1000;

function numbers(
  made: JobAsMade,
  wanted: JobToWrite,
  kinds: KindNames,
  bedTo: readonly (number | undefined)[],
): Numbers {
  const numberOf = (to: number | undefined, n: number) => (to === undefined ? GONE + n : to + 1);
  const bed = (n: number) => numberOf(bedTo[n - 1], n);
  return {
    bed,
    kind: (of, n) => {
      const name = made.kinds[of][n - 1] ?? "";
      // Behind a bed that is gone every kind is in error.
      if (name.startsWith("#")) return n <= kinds[of].length ? n : GONE + n;
      return numberOf(
        placeOf(kinds[of], (one) => isSame(one, name)),
        n,
      );
    },
    own: (bedBefore, n) => {
      const to = bedTo[bedBefore - 1];
      const line = made.beds[bedBefore - 1]?.own[n - 1];
      const place =
        to === undefined || !line
          ? undefined
          : placeOf(must(wanted.beds[to]).own, ({ row, column }) => row === line.row && column === line.column);
      return `own${bed(bedBefore)}x${numberOf(place, n)}`;
    },
  };
}

const KEY = /\{([A-Za-z][\w.]*)\}/g;
const LINE_OF = { stone: "stone", delivery: "stone", edging: "edging", stake: "edging", fabric: "fabric" } as const;

/** A row whose keys have the numbers that beds and kinds are to have. */
function renumbered(row: DraftRow, to: Numbers): DraftRow {
  const key = (name: string) =>
    name
      .replace(/^bed(\d+)(?=\.)/, (_, n: string) => `bed${to.bed(Number(n))}`)
      .replace(/^own(\d+)x(\d+)(?=\.)/, (_, bed: string, n: string) => to.own(Number(bed), Number(n)))
      .replace(/^(stone|edging|fabric)(\d+)(?=\.)/, (_, of: KindOf, n: string) => `${of}${to.kind(of, Number(n))}`)
      .replace(
        /^(stone|delivery|edging|stake|fabric)Line(\d+)(?=\.)/,
        (_, of: keyof typeof LINE_OF, n: string) => `${of}Line${to.kind(LINE_OF[of], Number(n))}`,
      );
  return {
    ...row,
    ...(row.id !== undefined && { id: key(row.id) }),
    cells: row.cells.map(
      (cell) =>
        cell && {
          ...cell,
          ...(cell.key !== undefined && { key: key(cell.key) }),
          content:
            typeof cell.content === "string"
              ? cell.content.replace(KEY, (_, name: string) => `{${key(name)}}`)
              : cell.content,
        },
    ),
  };
}
