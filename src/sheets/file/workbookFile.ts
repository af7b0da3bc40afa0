import { quoted } from "../../quantities/bed/evaluate";
import { must } from "../../quantities/must";
import { Problem } from "../../quantities/problem";
import { type Anchor, type Area, areaAddress, cellAddress } from "../../spreadsheet/areas";
import { bytesOf } from "../../spreadsheet/base64";
import { contentValue, fileFormula, isFormula, type Shown, shownValue } from "../../xlsx/contents";
import { emusPerPixel } from "../../xlsx/style";
import type { NewName } from "../../xlsx/write/book";
import type { FilePage, NewCell, NewPicture, NewSheet } from "../../xlsx/write/sheet";
import { MOST_CHOICE_CHARACTERS, type PageSetup, type PlacedPicture, type Plan } from "../plan";
import { fittedSize } from "../pngSize";
import { POINTS_A_PIXEL, pointsOfCharacters } from "../points";
import { rowHeights, rowsThatWrap } from "../rowHeights";
import { tooLong } from "../tooLong";
import { stylesOf, warnedStyle } from "./fileLooks";
import { SheetNames } from "./sheetNames";

/** One sheet of a file. */
export interface FileSheet {
  readonly sheetName: string;
  readonly plan: Plan;
  /** Where the plan goes; its formulas must be made for that cell. A1 if left out. */
  readonly at?: Anchor;
  /**
   * What the plan's cells show, row by row: kept beside the formulas, so that a program shows it before it works
   * anything out, and taken in their place where only values are wanted.
   */
  readonly results?: readonly (readonly Shown[])[];
  /** Formulas that are to be array formulas, by their cell or, where they give a list, by its cells: `C4`, `C4:D9`. */
  readonly arrays?: readonly string[];
}

export interface FileOptions {
  /** No formula, name, list to choose from or rule is in the file: nothing but what is seen, and how it is printed. */
  readonly valuesOnly?: boolean;
  /** The document's title among its properties. */
  readonly title?: string;
}

/** The author of every file; never a person or a machine. */
const AUTHOR = "Bedrow";
/** Columns of a file count their padding, too: 5 px of it to 7 px a character. */
const PADDING = 5 / 7;

/**
 * Makes an .xlsx file of plans, one a sheet, with their formulas and results, looks, widths, merged cells, rules,
 * lists, names, pictures and page. Nothing in it is hidden, and nothing says who made it or where. Tables of plans are
 * ordinary cells in a file. The code for it is fetched when it is first wanted.
 *
 * @param sheets in order; at least one.
 * @returns the file.
 * @throws Problem for what no cell would hold.
 * @throws {RangeError} for no sheet, or where only values are wanted and a formula has no result: a fault of this program.
 * @example await workbookFile([{ sheetName: "Price", plan }], { valuesOnly: true })
 */
export async function workbookFile(sheets: readonly FileSheet[], options: FileOptions = {}): Promise<Uint8Array> {
  if (sheets.length === 0) throw new RangeError("A file needs a sheet.");
  const failure = sheets.map(({ plan }) => tooLong(plan)).find((words) => words !== undefined);
  if (failure) throw new Problem("value", `No file was made. ${failure}`);
  const { writeBook } = await import(/* webpackChunkName: "xlsx" */ "../../xlsx/write/book");
  const names = new SheetNames(sheets.map(({ sheetName }) => sheetName));
  const made = sheets.map((sheet, place) => sheetOf(sheet, must(names.inFile[place]), names, options));
  return writeBook({
    sheets: made,
    names: sheets.flatMap((sheet, place) => namesOf(sheet, must(names.inFile[place]), place, options)),
    author: AUTHOR,
    ...(options.title && { title: options.title }),
    // Programs show what the file holds; they have to work out what it does not hold.
    lacksResults: made.some(({ cells }) =>
      cells.some(({ formula, value }) => formula !== undefined && value === undefined),
    ),
  });
}

function sheetOf(file: FileSheet, name: string, names: SheetNames, options: FileOptions): NewSheet {
  const { plan, at = { row: 0, column: 0 } } = file;
  const { valuesOnly = false } = options;
  const cells = cellsOf(file, at, names, valuesOnly);
  const widths = plan.widths.flatMap((characters, index): [number, { width: number }][] =>
    characters > 0 ? [[at.column + index, { width: characters + PADDING }]] : [],
  );
  return {
    name,
    cells,
    columns: new Map(widths),
    rows: rowsOf(file, at),
    merged: (plan.merged ?? []).map((area) => areaAddress(placed(area, at))),
    ...(!valuesOnly && {
      shadings: plan.warnings.map(({ area, when }) => ({
        area: areaAddress(placed(area, at)),
        formula: fileFormula(when, names.references),
        style: warnedStyle(),
      })),
      lists: listsOf(plan, at),
    }),
    pictures: (plan.pictures ?? []).map((picture) => pictureOf(picture, plan, at)),
    ...(plan.page && { page: pageOf(plan.page, at) }),
  };
}

function cellsOf(
  { plan, results, arrays = [] }: FileSheet,
  at: Anchor,
  names: SheetNames,
  valuesOnly: boolean,
): NewCell[] {
  const styleAt = stylesOf(plan);
  const arrayAt = new Map(arrays.map((address) => [address.split(":")[0], address]));
  return plan.formulas.flatMap((contents, down) =>
    contents.map((content, across): NewCell => {
      const place = { row: at.row + down, column: at.column + across };
      const cell = { ...place, style: styleAt(down, across) };
      const shown = results?.[down]?.[across];
      const result = shown === undefined ? undefined : shownValue(shown);
      if (!isFormula(content)) {
        // The other cells of an array formula hold the rest of its values.
        const value = content === "" && shown !== "" ? result : contentValue(content);
        return value === undefined ? cell : { ...cell, value };
      }
      const address = cellAddress(place);
      if (valuesOnly) {
        if (result === undefined) throw new RangeError(`The formula in ${address} has no result.`);
        return { ...cell, value: result };
      }
      const area = arrayAt.get(address);
      return {
        ...cell,
        formula: fileFormula(content, names.references),
        ...(result !== undefined && { value: result }),
        ...(area && { array: { area, spills: false } }),
      };
    }),
  );
}

/** Rows as high as the text that breaks into lines in them, and those that can be collapsed. */
function rowsOf({ plan, results }: FileSheet, at: Anchor): NonNullable<NewSheet["rows"]> {
  const rows = new Map<number, { height?: number; outlineLevel?: number }>();
  for (const { row, points } of rowsThatWrap(plan, results)) rows.set(at.row + row, { height: points });
  for (const group of plan.groups ?? []) {
    for (let row = at.row + group.row; row < at.row + group.row + group.rows; row += 1)
      rows.set(row, { ...rows.get(row), outlineLevel: 1 });
  }
  return rows;
}

/** The lists to choose from. A cell may also hold what is not in its list, so a choice is offered and not forced. */
function listsOf({ choices }: Plan, at: Anchor): NonNullable<NewSheet["lists"]> {
  return choices.flatMap(({ area, names }) => {
    const list = names.join(",");
    if (list.length > MOST_CHOICE_CHARACTERS || names.some((choice) => choice.includes(","))) return [];
    return [{ area: areaAddress(placed(area, at)), source: quoted(list), allowBlank: true }];
  });
}

/** The names of a sheet's cells, of what is printed of it, and of the rows that are repeated on each page. */
function namesOf(
  { plan, at = { row: 0, column: 0 } }: FileSheet,
  sheet: string,
  place: number,
  { valuesOnly }: FileOptions,
): NewName[] {
  const on = (reference: string) => `'${sheet}'!${reference}`;
  const fixed = (area: Area) => on(areaAddress(area).replace(/([A-Z]+)(\d+)/g, "$$$1$$$2"));
  const own = valuesOnly ? [] : (plan.names ?? []).map(({ name, area }) => ({ name, text: fixed(placed(area, at)) }));
  if (!plan.page) return own;
  const { headingRows } = plan.page;
  const printed = fixed({ ...at, rows: plan.rows, columns: plan.columns });
  return [
    ...own,
    { name: "_xlnm.Print_Area", text: printed, sheet: place },
    ...(headingRows
      ? [{ name: "_xlnm.Print_Titles", text: on(`$${at.row + 1}:$${at.row + headingRows}`), sheet: place }]
      : []),
  ];
}

/** The numbers that files have for sizes of paper: ECMA-376, 18.3.1.63 pageSetup (from memory). */
const PAPER: Readonly<Record<NonNullable<PageSetup["paper"]>, number>> = { letter: 1, a4: 9 };
const FOOTER_MARGIN_IN = 0.3;

function pageOf(page: PageSetup, at: Anchor): FilePage {
  const { paper, landscape, pagesWide, pagesTall, breaksAbove = [], marginsIn, footer } = page;
  return {
    ...(paper && { paper: PAPER[paper] }),
    landscape,
    // 0 is as many as it takes.
    fit: { wide: pagesWide, tall: pagesTall ?? 0 },
    marginsIn: { ...marginsIn, header: FOOTER_MARGIN_IN, footer: FOOTER_MARGIN_IN },
    breaksAbove: breaksAbove.map((row) => at.row + row),
    ...(footer && { footer: `&C${footer}` }),
  };
}

/** A picture as large as fits over its cells, in its own proportions. */
function pictureOf({ area, png, altText }: PlacedPicture, plan: Plan, at: Anchor): NewPicture {
  const { row, column } = placed(area, at);
  const { widthPoints, heightPoints } = fittedSize(png, frameOf(area, plan));
  const emus = (points: number) => Math.round((points / POINTS_A_PIXEL) * emusPerPixel);
  return {
    bytes: bytesOf(png),
    kind: "png",
    name: "",
    altText,
    from: { row, column, rowOffset: 0, columnOffset: 0 },
    size: { width: emus(widthPoints), height: emus(heightPoints) },
  };
}

/** How large the cells of an area are, in points. */
function frameOf({ row, column, rows, columns }: Area, plan: Plan): { width: number; height: number } {
  const widths = plan.widths.slice(column, column + columns);
  const heights = rowHeights(plan).slice(row, row + rows);
  return {
    width: widths.reduce((sum, characters) => sum + pointsOfCharacters(characters), 0),
    height: heights.reduce((sum, points) => sum + points, 0),
  };
}

/** An area of a plan as an area of its sheet. */
function placed(area: Area, at: Anchor): Area {
  return { ...area, row: area.row + at.row, column: area.column + at.column };
}
