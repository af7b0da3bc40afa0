import { quoted } from "../../quantities/bed/evaluate";
import { fields } from "../../quantities/bed/fields";
import { lines as bedLines, lineKinds } from "../../quantities/bed/lines";
import {
  type BedRow,
  bedRows,
  type JobAmount,
  type JobLine,
  jobInputs,
  jobLineFormulas,
  jobLines,
  jobPrice,
  jobSettings,
  type Kinds,
  kindAmounts,
  kindLists,
  kindRows,
} from "../../quantities/job/jobAmounts";
import { must } from "../../quantities/must";
import { type Anchor, cellAddress } from "../../spreadsheet/areas";
import { cautions } from "../cautions";
import { compose, type DraftCell, type DraftRow, TYPED_OVER } from "../compose";
import { withKeys } from "../estimate/printed";
import { blankRow, inputRow, resultRow, sectionRow, textRow } from "../estimate/rows";
import { inLines } from "../file/lines";
import { onePageWide } from "../onePageWide";
import type { FormatName, Plan } from "../plan";
import { named } from "../typed";
import { fromBed, inSheet } from "./bedCells";
import { CHOSEN_LABEL, JOB_TITLE, jobHeadings, OPTION_LABEL, OWN_AFTER, OWN_BEFORE } from "./jobHeadings";
import type { SheetBed } from "./sheetBed";

/** Least widths of the first ten columns, in characters; more beds than fit there have columns of this last width. */
const WIDTHS = [36, 12, 13, 11, 12, 10, 10, 12, 11, 26];
const BED_WIDTH = 12;
/** In the working, beds begin at this column. */
const FIRST_BED = 2;
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
  const working = rows.findIndex(({ cells }) => cells[0]?.content === jobHeadings.settings);
  const columns = Math.max(WIDTHS.length, FIRST_BED + job.beds.length);
  const widths = Array.from({ length: columns }, (_, column) => WIDTHS[column] ?? BED_WIDTH);
  const title = job.name.trim() ? `job estimate for ${job.name.trim()}` : "job estimate";
  return { ...compose(title, rows, widths, at), page: onePageWide(widths, working, [working]) };
}

/** The rows of the block, for {@link jobBlock} and for finding its cells again. */
export function jobRows({ name, option, differs, isChosen, beds, kinds }: JobToWrite): DraftRow[] {
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
    ...priceRows(beds, kinds),
    blankRow,
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

const NEW_KIND = "No price: a bed has a stone, edging, or fabric without a line here. Add the job estimate again.";
const IN_ERROR = "No price: a cell below is in error; it says why.";
const SAMPLES = "sample prices: set your own in Rates";

function headRows(beds: readonly SheetBed[]): DraftRow[] {
  const words =
    `=IF({newKinds}>0,${quoted(NEW_KIND)},IF(ISERROR({price}),${quoted(IN_ERROR)},` +
    `IF(COUNTIF(${across("beds.words", beds)},"*example*")>0,${quoted(SAMPLES)},"")))`;
  const price = resultRow(
    "Price",
    { content: "={price}", key: "headPrice", format: "dollars", look: "total" },
    "before tax",
  );
  return [
    { cells: [...price.cells.slice(0, 4), { content: words, key: "headWords", look: "warning" }] },
    resultRow("Total due", { content: "={priceWithTax}", format: "dollars" }, "with tax"),
  ];
}

/** The range of one row of the working, from the first bed to the last. */
const across = (key: string, beds: readonly SheetBed[]) => `{${key}.1}:{${key}.${beds.length}}`;

function bedTable(beds: readonly SheetBed[]): DraftRow[] {
  const number = (key: string, format: FormatName = "two"): DraftCell => ({
    content: `={${key}}`,
    format,
    look: "result",
  });
  return [
    sectionRow(jobHeadings.beds, "Area, sq ft", "Edging, ft", "Depth, in", "Price", "Stone"),
    ...beds.map(({ sheet, cells, name, form }, index): DraftRow => {
      const n = index + 1;
      const nameCell = cells.get("name");
      const there = nameCell && `${inSheet(sheet)}${cellAddress(nameCell)}`;
      const shown = name || `Bed ${n}`;
      const upTo = (last: number) =>
        last === 0
          ? "0"
          : `ROUND({price}*SUM({beds.alone.1}:{beds.alone.${last}})/SUM(${across("beds.alone", beds)}),2)`;
      return {
        cells: [
          { content: there ? `=IF(${there}="",${quoted(shown)},${there})` : shown, key: `bed${n}.name`, look: "label" },
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

function lineRows(beds: readonly SheetBed[], kinds: Kinds): DraftRow[] {
  const spare = (key: string, places: number) =>
    Array.from({ length: places }, (_, index) => ownRow(`${key}${index + 1}`));
  const added = beds.flatMap(({ sheet, own }, bed) =>
    own.map(({ row, column }, index) => {
      const cell = (at: number) => `${inSheet(sheet)}${cellAddress({ row, column: column + at })}`;
      return ownRow(`own${bed + 1}x${index + 1}`, {
        label: `=${cell(0)}&" ("&{bed${bed + 1}.name}&")"`,
        quantity: `=${cell(1)}`,
        unit: `=${cell(2)}`,
        unitCost: `=${cell(3)}`,
        kind: `=${cell(7)}`,
      });
    }),
  );
  const sum = (key: "directCost" | "linePrices"): DraftCell => ({
    content: printedJob(jobPrice[key].is, beds),
    key,
    format: "money",
  });
  return [
    sectionRow(
      jobHeadings.lines,
      ...["Quantity", "Unit", "Unit cost", "Cost", "Markup", "Discount", "Price", "Kind", "Remarks"],
    ),
    ...spare("before", OWN_BEFORE),
    ...jobLines(kinds).map((line) => lineRow(line, beds)),
    ...added,
    ...spare("after", OWN_AFTER),
    {
      look: "total",
      cells: [
        { content: "Sums" },
        undefined,
        undefined,
        undefined,
        sum("directCost"),
        undefined,
        undefined,
        sum("linePrices"),
      ],
    },
  ];
}

function lineRow(line: JobLine, beds: readonly SheetBed[]): DraftRow {
  const { key, label, unit, quantity, unitCost, kind, shows } = line;
  const isTyped = key === "setUp";
  const amount: DraftCell = isTyped
    ? { content: 0, key: "setUpHours", format: "two", look: "input" }
    : {
        content: printedJob(quantity, beds),
        key: `${key}.quantity`,
        format: shows ?? "two",
        look: "result",
        warnWhen: TYPED_OVER,
      };
  return {
    cells: [
      {
        content: label.startsWith("=") ? printedJob(label.slice(1), beds) : label,
        key: `${key}.label`,
        look: "label",
      },
      amount,
      { content: unit, look: "note" },
      {
        content: printedJob(unitCost, beds),
        key: `${key}.unitCost`,
        format: "money",
        look: "result",
        warnWhen: TYPED_OVER,
      },
      ...pricedCells(key, amount.key),
      { content: kind, key: `${key}.kind`, look: "note", choices: lineKinds },
      remarkCell(key, isTyped ? [] : [["quantity", `${key}.quantity`]]),
    ],
  };
}

interface Linked {
  readonly label: string;
  readonly quantity: string;
  readonly unit: string;
  readonly unitCost: string;
  readonly kind: string;
}

/** A line of the estimator's own: blank to type into, or one that follows a bed's block. */
function ownRow(key: string, linked?: Linked): DraftRow {
  const look = linked ? "result" : "input";
  const words = linked ? "label" : "inputWords";
  return {
    cells: [
      { content: linked?.label ?? "", key: `${key}.label`, look: words },
      { content: linked?.quantity ?? "", key: `${key}.quantity`, format: "two", look },
      { content: linked?.unit ?? "", look: linked ? "note" : "inputWords" },
      { content: linked?.unitCost ?? "", key: `${key}.unitCost`, format: "money", look },
      ...pricedCells(key),
      { content: linked?.kind ?? "material", key: `${key}.kind`, look: "note", choices: lineKinds },
    ],
  };
}

function pricedCells(key: string, quantity = `${key}.quantity`): DraftCell[] {
  const own = ["unitCost", "kind", "cost", "markup", "discount"];
  const formula = (part: keyof typeof jobLineFormulas) =>
    withKeys(jobLineFormulas[part], (name) =>
      name === "quantity" ? `{${quantity}}` : own.includes(name) ? `{${key}.${name}}` : undefined,
    );
  return [
    { content: formula("cost"), key: `${key}.cost`, format: "money", look: "result" },
    { content: formula("markup"), key: `${key}.markup`, format: "share", look: "result", warnWhen: TYPED_OVER },
    { content: "", key: `${key}.discount`, format: "share", look: "input" },
    { content: formula("price"), key: `${key}.price`, format: "money", look: "result" },
  ];
}

/** Says in words what was typed over, and where a price is missing. */
function remarkCell(key: string, more: readonly (readonly [what: string, cell: string])[]): DraftCell {
  const watched = [...more, ["price", `${key}.unitCost`], ["markup", `${key}.markup`]] as const;
  const typedOver = watched.map(([what, cell]) => `IF(ISFORMULA({${cell}}),"","${what} typed over. ")`);
  const missing = `IF(ISNUMBER({${key}.unitCost}),"","no price")`;
  return {
    content: `=TRIM(${[...typedOver, missing].join("&")})`,
    key: `${key}.remark`,
    look: "note",
    warnWhen: "=LEN({self})>0",
  };
}

function priceRows(beds: readonly SheetBed[], kinds: Kinds): DraftRow[] {
  const settings = ["materialMarkup", "laborMarkup", "haulingMarkup", "overhead", "minimumCharge", "salesTax"] as const;
  const input = (key: "discountShare" | "discountAmount" | "depositShare") =>
    inputRow(
      jobInputs[key].label,
      { content: 0, key, format: key === "discountAmount" ? "money" : "share" },
      jobInputs[key].unit === "%" ? "" : jobInputs[key].unit,
    );
  const result = (key: keyof typeof jobPrice): DraftRow => {
    const { label, unit, how = "", shows, is } = jobPrice[key] as JobPriceRow;
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
  const stone = Object.entries(kinds).map(([of, count]) => `MAX(0,MAX(${across(`kinds.${of}`, beds)})-${count})`);
  return [
    sectionRow(jobHeadings.price, "", "Unit"),
    ...settings.map((key) => settingRow(key, beds)),
    input("discountShare"),
    input("discountAmount"),
    input("depositShare"),
    ...(Object.keys(jobPrice) as (keyof typeof jobPrice)[])
      .filter((key) => key !== "directCost" && key !== "linePrices")
      .map(result),
    resultRow("Kinds without a line", { content: `=${stone.join("+")}`, key: "newKinds", format: "whole" }, "kinds"),
  ];
}

type JobPriceRow = {
  readonly label: string;
  readonly unit: string;
  readonly how?: string;
  readonly shows?: "money" | "share" | "whole";
  readonly is: string;
};

/** A rate of the whole job, which follows its first bed until it is typed over. */
function settingRow(key: (typeof jobSettings)[number], [first]: readonly SheetBed[]): DraftRow {
  const { label, unit, reads } = fields[key];
  return resultRow(
    label,
    { content: `=${fromBed(`{${key}}`, must(first))}`, key, format: reads === "share" ? "share" : "general" },
    reads === "share" ? "" : unit,
    "from the first bed",
  );
}

function settingRows(beds: readonly SheetBed[]): DraftRow[] {
  const inPrice = ["materialMarkup", "laborMarkup", "haulingMarkup", "overhead", "minimumCharge", "salesTax"];
  return [
    sectionRow(jobHeadings.settings, "", "Unit"),
    ...jobSettings.filter((key) => !inPrice.includes(key)).map((key) => settingRow(key, beds)),
    ...["haul", "dump", "pinLine", "delivery"].map((key) => {
      const { label } = must(bedLines.find((line) => line.key === key));
      const content = `=${fromBed(`{${key}.unitCost}`, must(beds[0]))}`;
      return resultRow(
        `${label}, each`,
        { content, key: `first.${key}.unitCost`, format: "money" },
        "$",
        "from the first bed",
      );
    }),
  ];
}

/** What the job takes of each bed, a column a bed. */
function workingRows(beds: readonly SheetBed[], kinds: Kinds): DraftRow[] {
  const perBed = (
    label: string,
    unit: string,
    key: string,
    content: (bed: SheetBed, n: number) => string,
    format: FormatName = "two",
    look: DraftCell["look"] = "result",
  ): DraftRow => ({
    cells: [
      { content: label, look: "label" },
      { content: unit, look: "note" },
      ...beds.map(
        (bed, index): DraftCell => ({
          content: content(bed, index + 1),
          key: `${key}.${index + 1}`,
          format,
          look,
          warnWhen: TYPED_OVER,
        }),
      ),
    ],
  });
  const taken = Object.entries(bedRows).map(([key, { label, unit, shows, is }]: [string, BedRow]) =>
    perBed(label, unit, `beds.${key}`, (bed) => `=${fromBed(is, bed)}`, ...formatOf(shows)),
  );
  const ranks = Object.entries(kindRows).map(([of, row]) =>
    perBed(`Which kind of ${of}`, "", `kinds.${of}`, (_, n) => rankFormula(of, row, n), "whole"),
  );
  const lists = (Object.keys(kindLists) as (keyof typeof kindLists)[]).flatMap((of) =>
    Array.from({ length: kinds[of] }, (_, index) => `${of}${index + 1}`).flatMap((key) =>
      Object.entries(kindLists[of]).map(([list, { label, is }]) =>
        perBed(`${label} (${key})`, "", `${key}.${list}`, (_, n) => {
          const own = is.replace(/\{(\w+)\}/g, (_whole: string, name: string) => `{beds.${name}.${n}}`);
          return `=IF({beds.${kindRows[of]}.${n}}={${key}.kind},${own},0)`;
        }),
      ),
    ),
  );
  return [
    {
      look: "section",
      cells: [
        { content: jobHeadings.working },
        { content: "Unit", look: "textHeading" },
        ...beds.map((_, index): DraftCell => ({ content: `={bed${index + 1}.name}`, look: "numberHeading" })),
      ],
    },
    ...taken,
    perBed("Sample prices", "", "beds.words", (bed) => `=${fromBed("{headWords}", bed)}`, ...formatOf("words")),
    ...ranks,
    ...lists,
    sectionRow(jobHeadings.kinds, "", "Unit"),
    ...kindAmounts(kinds).map((amount) => kindRow(amount, beds)),
  ];
}

function formatOf(shows: BedRow["shows"]): [FormatName, DraftCell["look"]] {
  if (shows === "words") return ["general", "aside"];
  return [shows ?? "two", "result"];
}

/** Numbers the kinds as they first come up; a bed of a kind that was there has none. */
function rankFormula(of: string, row: string, n: number): string {
  if (n === 1) return "=1";
  const before = `{beds.${row}.1}:{beds.${row}.${n - 1}}`;
  return `=IF(COUNTIF(${before},{beds.${row}.${n}})>0,0,MAX({kinds.${of}.1}:{kinds.${of}.${n - 1}})+1)`;
}

function kindRow({ key, label, unit, is, shows }: JobAmount, beds: readonly SheetBed[]): DraftRow {
  const [format] = formatOf(shows);
  return resultRow(`${label} (${key.split(".")[0]})`, { content: printedJob(is, beds), key, format }, unit);
}

/** Keys that stand for a row of the working. */
const BED_LIST = /^(?:beds|kinds)\.\w+$|^(?:edging|fabric)\d+\.(?:open|has|strips)$/;
const CLOSED = /^(edging\d+)\.closed$/;

/** An expression of the job as a cell's formula. */
function printedJob(is: string, beds: readonly SheetBed[]): string {
  const last = beds.length;
  return withKeys(is, (key) => {
    const closed = CLOSED.exec(key);
    if (closed) return `{${closed[1]}.closed.1}:{${closed[1]}.inner.${last}}`;
    if (BED_LIST.test(key)) return across(key, beds);
    const column = /^lines\.(\w+)$/.exec(key)?.[1];
    if (column) return `{before1.${column}}:{after${OWN_AFTER}.${column}}`;
    return key === "setUpHours" ? "{setUpHours}" : undefined;
  });
}
