import { amountWarnings, howAmounts } from "../../quantities/bed/amountNotes";
import { type Amount, type AmountKey, amounts, type VerdictKey, verdicts } from "../../quantities/bed/amounts";
import { depthVerdicts } from "../../quantities/bed/depthVerdict";
import { quoted } from "../../quantities/bed/evaluate";
import { fieldNote } from "../../quantities/bed/fieldNotes";
import { type FieldKey, fields } from "../../quantities/bed/fields";
import {
  asks,
  type BedForm,
  counts,
  edgingOf,
  hasPlan,
  secondOf,
  soldByIn,
  textOf,
  unitOf,
} from "../../quantities/bed/form";
import { isExamplePrice } from "../../quantities/bed/listSamples";
import { listPicked } from "../../quantities/bed/officeLists";
import { type PartKey, parts, unitOfAmount } from "../../quantities/bed/parts";
import { isPriced } from "../../quantities/bed/rates";
import { EDGING_KINDS } from "../../quantities/edgingKinds";
import { plainName } from "../../quantities/nearestName";
import { readNumber, readShare } from "../../quantities/numberText";
import { SOILS } from "../../quantities/soil";
import { countsOfStone, SOLD_BY } from "../../quantities/soldBy";
import { STONES } from "../../quantities/stone";
import { type DraftCell, type DraftRow, TYPED_OVER } from "../compose";
import { choicesThatFit, type FormatName } from "../plan";
import { typed } from "../typed";
import { printed } from "./printed";
import {
  followingFormula,
  isLength,
  isStillExample,
  NOT_LISTED,
  pickRemark,
  type RateSource,
  rateRemark,
  rateSource,
  stoneWeightFormula,
} from "./rateFormulas";

/**
 * What to write for a field: a formula where it follows one of the office's rates; else a length as it was taped,
 * since the functions read tape text, and any other number as a number, since plain arithmetic does not.
 */
export function fieldContent(form: BedForm, key: FieldKey): string | number {
  const link = linkIn(form, key);
  if (link) return link;
  const rate = rateOf(form, key);
  if (rate) return followingFormula(rate);
  const text = textOf(form, key);
  const { reads } = fields[key];
  if (text.trim() === "") return "";
  if (reads === "share") return readShare(text, key);
  return reads === "number" || reads === "whole" ? readNumber(text, key) : typed(text);
}

/** The formula of an input that follows another cell of the workbook; undefined for one that doesn't. */
export function linkIn({ links }: BedForm, key: string): string | undefined {
  const address = links?.[key];
  // By its length: not every program tells 0 from blank when it compares with "".
  return address && `=IF(LEN(${address})=0,"",${address})`;
}

/** What a cell's formula follows, as {@link linkIn} made it. */
export const linkedTo = (formula: string): string | undefined => /^=IF\(LEN\((.+)\)=0,"",\1\)$/i.exec(formula)?.[1];

/** Where a field's cell has its rate from; undefined for one that holds what was typed, or a starting value. */
export function rateOf(form: BedForm, key: FieldKey): RateSource | undefined {
  return linkIn(form, key) ? undefined : rateSource(form, key);
}

/** Where a cell holds what its field does, and how that shows: a rate that is followed was not typed here. */
export function fieldLook(form: BedForm, key: FieldKey): Pick<DraftCell, "look" | "warnWhen"> {
  const follows = rateOf(form, key) || linkIn(form, key);
  return follows ? { look: "result", warnWhen: TYPED_OVER } : { look: "input" };
}

/** Headings of columns of numbers, aligned right as the numbers are. */
const NUMBER_HEADINGS = ["Taped", "Typed", "Reads as", "Quantity", "Unit cost", "Cost", "Markup", "Price"];

/** A heading across the block, with what its columns hold. */
export function sectionRow(heading: string, ...columns: readonly string[]): DraftRow {
  const cells = columns.map(
    (content): DraftCell => ({ content, look: NUMBER_HEADINGS.includes(content) ? "numberHeading" : "textHeading" }),
  );
  return { look: "section", cells: [{ content: heading }, ...cells] };
}

/** A row that is one piece of text in a look of its own. */
export function textRow(content: string, look: "note" | "caution", lead = ""): DraftRow {
  return {
    cells: [
      { content: lead, look: "label" },
      { content, look },
    ],
  };
}

/** An input: its label, what was typed, its unit, and for a length what the tape text reads as. */
export function fieldRow(form: BedForm, key: FieldKey): DraftRow {
  const choices = choicesOf(form, key);
  const { label, reads } = fields[key];
  const unit = unitOf(form, key);
  // The rows of a block are those of one kind of edging and one unit, so another is counted once the block is updated.
  const warning = key in rowsOf ? NOT_COUNTED : listPicked(key) && NOT_LISTED;
  const warnWhen = warning && `=LEFT({self},${warning.length})=${quoted(warning)}`;
  const format: FormatName = reads === "share" ? "share" : "general";
  const cell: DraftCell = {
    content: fieldContent(form, key),
    key,
    format,
    ...fieldLook(form, key),
    ...(choices && { choices }),
  };
  return inputRow(label, cell, reads === "share" ? "" : unit, {
    ...(reads === "feet" && { readsAs: "BED.FEET" }),
    ...(reads === "inches" && { readsAs: "BED.INCHES" }),
    note: { content: noteOf(form, key), key: `${key}.note`, look: "note", ...(warnWhen && { warnWhen }) },
  });
}

/** Fields that say which rows a block has. */
const rowsOf = { edgingKind: edgingOf, secondKind: secondOf, soldBy: soldByIn } as const;
const NOT_COUNTED = "Not counted yet: open this bed in the pane and press Update.";

/** A field's note, with what is to be said of its rate before it. */
function noteOf(form: BedForm, key: FieldKey): string {
  const note = fieldNote(key);
  if (key in rowsOf) {
    const { name } = rowsOf[key as keyof typeof rowsOf](form);
    return `=IF({${key}}=${quoted(name)},${quoted(note)},${quoted(NOT_COUNTED)})`;
  }
  const list = listPicked(key);
  if (list) return `=${pickRemark(list, key, quoted(note))}`;
  const noted = (said: string) => quoted(note ? `${said}; ${note}` : said);
  const rate = rateOf(form, key);
  if (rate) {
    const followed = isLength(fields[key]) ? `{${key}.decimal}` : `{${key}}`;
    const remark = rateRemark(rate, followed, noted("sample"), quoted(note || "from Rates"));
    return `=IF(ISFORMULA({${key}}),${remark},${noted("typed over")})`;
  }
  const content = fieldContent(form, key);
  if (!isPriced(key) || typeof content !== "number" || !isExamplePrice(key, textOf(form, key))) return note;
  return `=IF(${isStillExample(`{${key}}`, content)},${noted("sample")},${quoted(note)})`;
}

interface Beside {
  readonly readsAs?: string;
  readonly note?: DraftCell;
}

export function inputRow(label: string, cell: DraftCell, unit: string, { readsAs, note }: Beside = {}): DraftRow {
  return {
    cells: [
      { content: label, look: "label" },
      { look: "input", ...cell },
      { content: unit, look: "note" },
      readsAs && cell.key ? readsAsCell(cell.key, readsAs) : undefined,
      note,
    ],
  };
}

/** The decimal that a taped cell reads as, under the key `length.decimal` beside `length`. */
export function readsAsCell(key: string, reader: string): DraftCell {
  return {
    content: `=IF(OR({${key}}="",{${key}}=0),0,${reader}({${key}}))`,
    key: `${key}.decimal`,
    format: "two",
    look: "aside",
  };
}

/** An amount that the block works out, with its unit and how it comes about. */
export function amountRow(form: BedForm, key: AmountKey): DraftRow {
  const { label, shows, is }: Amount = amounts[key];
  const warns = amountWarnings[key];
  const unit = unitOfAmount(key, soldByIn(form));
  const weighed = key === "stoneDensity" && form.rates !== undefined;
  const warning: DraftCell | undefined = warns && {
    content: printed(form, warns),
    key: `${key}.note`,
    warnWhen: "=LEN({self})>0",
  };
  return resultRow(
    label,
    {
      content: weighed ? stoneWeightFormula() : printed(form, is),
      key,
      format: shows ?? "two",
      ...(key === "price" && { look: "total" }),
    },
    unit,
    weighed ? "loose, from Rates or the table of common stone" : (warning ?? howOf(form, key)),
  );
}

/** How an amount comes about: without pieces of edging, stone reaches up to the ground beside it. */
const howOf = (form: BedForm, key: AmountKey): string =>
  key === "stoneDepth" && !edgingOf(form).lines.edging
    ? "scrape less the gap below the lawn"
    : (howAmounts[key] ?? (amounts[key] as Amount).how ?? "");

/** Something the block works out: its label, formula and unit, and how it comes about in words. */
export function resultRow(label: string, cell: DraftCell, unit: string, how: string | DraftCell = ""): DraftRow {
  const note = typeof how === "string" ? { content: how } : how;
  return {
    cells: [
      { content: label, look: "label" },
      { format: "two", warnWhen: TYPED_OVER, look: "result", ...cell },
      { content: unit, look: "note" },
      undefined,
      note.content ? { look: "note", ...note } : undefined,
    ],
  };
}

/** A result in words; one that says something is wrong stands out. */
function verdictRow(form: BedForm, key: VerdictKey): DraftRow {
  const { label, is } = verdicts[key];
  const warnWhen = key === "depthCheck" && { warnWhen: `={self}<>${quoted(depthVerdicts.fits)}` };
  return {
    cells: [
      { content: label, look: "label" },
      { content: printed(form, is), key, look: "note", ...warnWhen },
    ],
  };
}

const stoneNames = STONES.map(({ name }) => name);
/** A cell can't offer all of them: it has those before its own, or those after. */
const [FIRST_STONES, LAST_STONES] = [choicesThatFit(stoneNames), choicesThatFit([...stoneNames].reverse())];
const soilNames = SOILS.map(({ name }) => name);
const soldByNames = SOLD_BY.map(({ name }) => name);
const edgingNames = EDGING_KINDS.map(({ name }) => name);

/** Names that a field offers to choose from. */
function choicesOf(form: BedForm, key: FieldKey): readonly string[] | undefined {
  if (key === "soil") return soilNames;
  if (key === "edgingKind" || key === "secondKind") return edgingNames;
  if (key === "soldBy") return soldByNames;
  if (key !== "stone") return undefined;
  const own = plainName(textOf(form, key));
  return LAST_STONES.includes(own) && !FIRST_STONES.includes(own) ? LAST_STONES : FIRST_STONES;
}

/** The rows of one of the block's parts: what is typed there, and what follows from it. */
export function partRows(form: BedForm, part: PartKey): DraftRow[] {
  return parts[part].flatMap((key) => {
    if (key === "stripDirection" && !hasPlan(form.way)) return [];
    if (!countsOfStone(soldByIn(form), key)) return [];
    if (!counts(form, key) || (key in fields && !asks(form, key as FieldKey))) return [];
    if (key in amounts) return [amountRow(form, key as AmountKey)];
    if (key in verdicts) return [verdictRow(form, key as VerdictKey)];
    return [fieldRow(form, key as FieldKey)];
  });
}

export const blankRow: DraftRow = { cells: [] };
