import type { Amount } from "../../quantities/bed/amounts";
import { quoted } from "../../quantities/bed/evaluate";
import { SHORT_PIECE_WORDS } from "../../quantities/edging";
import { jobInputs, jobPrice, type Kinds } from "../../quantities/job/jobAmounts";
import { type Anchor, cellAddress } from "../../spreadsheet/areas";
import { cautions } from "../cautions";
import { compose, type DraftCell, type DraftRow } from "../compose";
import { blankRow, inputRow, resultRow, sectionRow, textRow } from "../estimate/rows";
import { inLines } from "../file/lines";
import { onePageWide } from "../onePageWide";
import type { FormatName, Plan } from "../plan";
import { named } from "../typed";
import { inSheet } from "./bedCells";
import { CHOSEN_LABEL, JOB_TITLE, jobHeadings, OPTION_LABEL } from "./jobHeadings";
import { lineRows } from "./jobLineRows";
import { type OptionBlock, optionRows } from "./jobOptions";
import { across, printedJob } from "./jobPrinted";
import { settingRows, workingRows } from "./jobWorking";
import { jobColumns, type SheetBed } from "./sheetBed";

/** Least widths of the first ten columns, in characters; more beds than fit there have columns of this last width. */
const WIDTHS = [35, 12, 12, 10, 11, 8, 10, 11, 10, 22];
const BED_WIDTH = 9;
/** In the working, beds begin at this column. */
export const FIRST_BED = 2;
const ACROSS = 120;

/** What a job block says on top. */
export interface JobHead {
  readonly name: string;
  /** Which version of the job it is, and what sets it apart. */
  readonly option: string;
  readonly differs: string;
  /** The one that gets built, unless the customer picks another. */
  readonly isChosen: boolean;
}

/** What a job block is made from. */
export interface JobToWrite extends JobHead {
  readonly beds: readonly SheetBed[];
  readonly kinds: Kinds;
  /** The other versions of the job, to compare with this one. */
  readonly options?: readonly OptionBlock[];
}

/**
 * The estimate of a job as a block of live cells: its beds, the lines of the whole job priced once, the price, and
 * cautions; below them, for a page of its own, what the lines take of each bed. Every number follows the beds' own
 * blocks.
 *
 * @throws {MissingCell} where a bed's block has lost a cell that the job needs.
 */
export function jobBlock(job: JobToWrite, at: Anchor): Plan {
  const rows = jobRows(job);
  const rowOf = (heading: string) => rows.findIndex(({ cells }) => cells[0]?.content === heading);
  const [settings, working] = [rowOf(jobHeadings.settings), rowOf(jobHeadings.working)];
  const columns = columnsOf(jobColumns(job.beds).length);
  const widths = Array.from({ length: columns }, (_, column) => WIDTHS[column] ?? BED_WIDTH);
  const title = job.name.trim() ? `job estimate for ${job.name.trim()}` : "job estimate";
  return {
    ...compose(title, rows, widths, at),
    page: onePageWide(widths, settings, [settings]),
    // Below the headings of both parts; a blank row is above the second one.
    groups: [
      { row: settings + 1, rows: working - settings - 2 },
      { row: working + 1, rows: rows.length - working - 1 },
    ],
  };
}

/** How many columns the block of a job has whose working has so many columns. */
export const columnsOf = (working: number): number => Math.max(WIDTHS.length, FIRST_BED + working);

/** The rows of the block, for {@link jobBlock} and for finding its cells again. */
export function jobRows({ name, option, differs, isChosen, beds, kinds, options = [] }: JobToWrite): DraftRow[] {
  return [
    { look: "title", cells: [{ content: JOB_TITLE }, { content: named(name), key: "name" }] },
    ...headRows(beds),
    inputRow(OPTION_LABEL, { content: named(option), key: "option", look: "inputWords" }, "", {
      note: { content: named(differs), key: "differs", look: "note" },
    }),
    inputRow(
      CHOSEN_LABEL,
      { content: isChosen ? "yes" : "no", key: "chosen", look: "inputWords", choices: ["yes", "no"] },
      "",
      {
        note: { content: "the order, crew sheet, and price follow the chosen option", look: "note" },
      },
    ),
    blankRow,
    ...bedTable(beds),
    blankRow,
    ...lineRows(beds, kinds),
    blankRow,
    ...priceRows(beds),
    blankRow,
    ...optionRows(options),
    sectionRow(jobHeadings.cautions),
    ...cautions.flatMap(({ about, text }) =>
      inLines(text, ACROSS).map((line, place) => textRow(line, "caution", place === 0 ? about : "")),
    ),
    blankRow,
    ...settingRows(beds),
    blankRow,
    ...workingRows(beds, kinds),
  ];
}

const NEW_KIND =
  "No price: a bed has a stone, edging, or fabric without a line here. Update the job estimate in the pane.";
const IN_ERROR = "No price: a cell below has an error. See that cell.";
const SAMPLES = "sample prices: set your own in Rates";

function headRows(beds: readonly SheetBed[]): DraftRow[] {
  const words =
    `=IF({newKinds}>0,${quoted(NEW_KIND)},IF(ISERROR({price}),${quoted(IN_ERROR)},` +
    `IF(COUNTIF(${across("beds.words", beds)},"*ample prices*")>0,${quoted(SAMPLES)},"")))`;
  const edging = `=IF(SUM(${across("beds.shortPieces", beds)})>0,${quoted(`Edging: a piece ${SHORT_PIECE_WORDS}`)},"")`;
  const total = resultRow("Total due", { content: "={priceWithTax}", format: "dollars" }, "with tax");
  const price = resultRow(
    "Price",
    { content: "={price}", key: "headPrice", format: "dollars", look: "total" },
    "before tax",
  );
  return [
    { cells: [...price.cells.slice(0, 4), { content: words, key: "headWords", look: "warning" }] },
    { cells: [...total.cells.slice(0, 4), { content: edging, key: "headEdging", look: "warning" }] },
  ];
}

function bedTable(beds: readonly SheetBed[]): DraftRow[] {
  const number = (key: string, format: FormatName = "two"): DraftCell => ({
    content: `={${key}}`,
    format,
    look: "result",
  });
  return [
    sectionRow(jobHeadings.beds, "Area, sq ft", "Edging, lin ft", "Depth, in", "Price", "Stone"),
    ...beds.map(({ sheet, cells, name, form }, index): DraftRow => {
      const n = index + 1;
      const nameCell = cells.get("name");
      const there = nameCell && `${inSheet(sheet)}${cellAddress(nameCell)}`;
      const upTo = (last: number) =>
        last === 0
          ? "0"
          : `ROUND({price}*SUM({beds.alone.1}:{beds.alone.${last}})/SUM(${across("beds.alone", beds)}),2)`;
      return {
        cells: [
          { content: there ? `=IF(${there}="","Bed ${n}",${there})` : name, key: `bed${n}.name`, look: "label" },
          number(`beds.area.${n}`),
          number(`beds.edging.${n}`),
          number(`beds.depth.${n}`),
          { content: `=${upTo(n)}-${upTo(index)}`, key: `bed${n}.price`, format: "dollars", look: "result" },
          { content: `={beds.stone.${n}}`, look: "note" },
          undefined,
          undefined,
          { content: MEASURED_WORDS[form.way], look: "note" },
        ],
      };
    }),
    {
      look: "total",
      cells: [
        { content: "All beds" },
        { content: `=SUM(${across("beds.area", beds)})`, key: "allArea", format: "two" },
        { content: `=SUM(${across("beds.edging", beds)})`, key: "allEdging", format: "two" },
        undefined,
        { content: `=SUM({bed1.price}:{bed${beds.length}.price})`, format: "dollars" },
        { content: "shared costs split by what each bed would cost by itself", look: "note" },
      ],
    },
  ];
}

const MEASURED_WORDS = {
  rectangle: "rectangle",
  round: "round",
  widths: "by widths",
  points: "by corners",
  area: "by area",
} as const;

function priceRows(beds: readonly SheetBed[]): DraftRow[] {
  const input = (key: "discountShare" | "discountAmount" | "depositShare") =>
    inputRow(
      jobInputs[key].label,
      { content: 0, key, format: key === "discountAmount" ? "money" : "share" },
      jobInputs[key].unit === "%" ? "" : jobInputs[key].unit,
    );
  const result = (key: keyof typeof jobPrice): DraftRow => {
    const { label, unit, how = "", shows, is } = jobPrice[key] as Amount & { readonly is: string };
    const guarded = key === "listPrice" ? `IF({newKinds}>0,NA(),${is})` : is;
    const format: FormatName = shows === "money" ? "dollars" : (shows ?? "two");
    const isTotal = key === "price" || key === "priceWithTax";
    return resultRow(
      label,
      { content: printedJob(guarded, beds), key, format, ...(isTotal && { look: "total" }) },
      unit,
      how,
    );
  };
  return [
    sectionRow(jobHeadings.price, "", "Unit"),
    input("discountShare"),
    input("discountAmount"),
    input("depositShare"),
    ...(Object.keys(jobPrice) as (keyof typeof jobPrice)[])
      .filter((key) => key !== "directCost" && key !== "linePrices")
      .map(result),
  ];
}
