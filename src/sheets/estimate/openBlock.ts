import { type FieldKey, fields, shapeFields } from "../../quantities/bed/fields";
import {
  type BedForm,
  blankForm,
  cornerFields,
  countFields,
  edgingFields,
  edgingOf,
  initialOf,
  shapeFieldsOf,
  soldByIn,
} from "../../quantities/bed/form";
import { lineCalled } from "../../quantities/bed/lines";
import { type ListKey, officeLists } from "../../quantities/bed/officeLists";
import { isRate, type Rates, rateKeys, stoneListNames } from "../../quantities/bed/rates";
import { firstField } from "../../quantities/bed/secondEdging";
import { METAL } from "../../quantities/edgingKinds";
import { TON } from "../../quantities/soldBy";
import { alignRows, type Content } from "../blockRows";
import { type BlockUpdate, blockUpdate } from "../blockUpdate";
import type { DraftRow } from "../compose";
import { estimateRows } from "./block";
import { headings } from "./headings";
import { type FoundBlock, partsOf } from "./readBlock";

/** An estimate block with its cells. */
export interface BlockOnSheet {
  readonly sheetId: string;
  readonly sheetName: string;
  /** Its form is read with the formulas: a rate that is followed was not typed. */
  readonly block: FoundBlock;
  /** What its columns hold, from its first row to its last. */
  readonly contents: readonly (readonly Content[])[];
  readonly values: readonly (readonly unknown[])[];
}

const UNIT_COST = 3;
const isFollowing = (content: unknown) => typeof content === "string" && /^=.*\bRate_/s.test(content);

/**
 * The form of a block as its cells have it: with the prices typed into its lines, and with what is in a row whose label
 * was changed.
 *
 * @param rates the office's rates; a block that reads none of them was made without.
 */
export function formOnSheet({ block, contents, values }: BlockOnSheet, rates: Rates | undefined): BedForm {
  const follows = rates !== undefined && contents.some((cells) => cells.some(isFollowing));
  // A block from before the list of stone had units reads it as it was then.
  const stonesHaveUnits = rates?.stonesHaveUnits === true && contents.some((cells) => cells.some(readsUnits));
  const form: BedForm = {
    ...block.form,
    typed: inWords({ ...ownFields(block.form), ...typedPrices(contents, values) }),
    ...(follows && {
      rates: withLists({ ...rates, stonesHaveUnits }, (picks) => block.form.typed[picks] !== undefined),
    }),
  };
  const rows = estimateRows(form);
  const places = alignRows(rows, contents);
  const renamed = rows.flatMap(({ cells: [label, value] }, index): [string, string][] => {
    const place = places[index];
    const key = value?.key;
    if (place === undefined || key === undefined || !(key in fields)) return [];
    const isRenamed = contents[place]?.[0] !== label?.content;
    return isRenamed && !isFollowing(contents[place]?.[1]) ? [[key, textIn(values[place]?.[1])]] : [];
  });
  return renamed.length > 0 ? { ...form, typed: inWords({ ...form.typed, ...Object.fromEntries(renamed) }) } : form;
}

const readsUnits = (content: unknown) => typeof content === "string" && content.includes(stoneListNames.units);

/** The office's rates with some of its lists alone: a block of before has no row to name one's row in. */
function withLists(rates: Rates, isWanted: (picks: FieldKey) => boolean): Rates {
  const lists = Object.entries(rates.lists ?? {}).filter(([key]) => isWanted(officeLists[key as ListKey].picks));
  return { ...rates, lists: Object.fromEntries(lists) };
}

/** What was read but is no input of this way of measuring: a result that has the label of another way's input. */
function ownFields({ way, typed }: BedForm): BedForm["typed"] {
  const own: readonly string[] = shapeFieldsOf({ way, typed });
  return Object.fromEntries(Object.entries(typed).filter(([key]) => own.includes(key) || !(key in shapeFields)));
}

/** Shares as a person types them, and as the product knows its sample prices. */
function inWords(typed: BedForm["typed"]): BedForm["typed"] {
  return Object.fromEntries(
    Object.entries(typed).map(([key, text]) => [
      key,
      fields[key as FieldKey].reads === "share" ? inPercent(text) : text,
    ]),
  );
}

/** The unit costs that are in the lines themselves; labor is paid at the crew rate. */
function typedPrices(contents: BlockOnSheet["contents"], values: BlockOnSheet["values"]): BedForm["typed"] {
  const part = partsOf(values).find(({ heading }) => heading === headings.lines);
  if (!part) return {};
  const found = part.rows.flatMap(([label, , , unitCost], index): [FieldKey, string][] => {
    const cost = lineCalled(label)?.cost;
    const isFirst = part.rows.findIndex(([first]) => first === label) === index;
    if (!isFirst || !cost || cost === "crewRate" || isFollowing(contents[part.first + index]?.[UNIT_COST])) return [];
    return [[cost, textIn(unitCost)]];
  });
  return Object.fromEntries(found);
}

const textIn = (value: unknown) => (value === null || value === undefined ? "" : String(value));

/** Sides with edging go together: where one isn't by default, all are as they were picked. */
const SIDES: readonly FieldKey[] = [...edgingFields.rectangle, ...edgingFields.widths];
/** What says of a block which rows it has. */
const KEPT: readonly FieldKey[] = [...countFields.rectangle, ...countFields.widths, ...cornerFields];

/**
 * The same form with nothing typed where a field holds its default, so that it goes on following what it depends on. A
 * default that doesn't follow the office's rates was meant so.
 */
export function formToEdit(form: BedForm, rates: Rates | undefined): BedForm {
  const { rates: _, ...bare } = form;
  // What stone is sold by is as the pane will have it, with the office's list.
  const bareOfSides = { ...form, ...(rates && { rates }), typed: without(form.typed, SIDES) };
  const sidesAreDefault = SIDES.every((key) => [undefined, initialOf(bareOfSides, key)].includes(form.typed[key]));
  const typed = Object.entries(form.typed).flatMap(([name, text]): [string, string][] => {
    const key = name as FieldKey;
    const isDefault =
      text === initialOf(bareOfSides, key) && !KEPT.includes(key) && (sidesAreDefault || !SIDES.includes(key));
    return isDefault && !(rates && isRate(firstField(key) ?? key)) ? [] : [[key, text]];
  });
  const { widths, points } = blankForm();
  return {
    ...bare,
    typed: Object.fromEntries(typed),
    ...(form.way !== "widths" && { widths }),
    ...(form.way !== "points" && { points }),
  };
}

/** 0.08 as 8%, where that is the same number. */
function inPercent(text: string): string {
  const share = Number(text);
  if (text.trim() === "" || !Number.isFinite(share)) return text;
  const percent = Number((share * 100).toPrecision(12));
  return percent / 100 === share ? `${percent}%` : text;
}

/**
 * The form to write back: what was changed in the pane since the block was opened, over what the sheet holds by now.
 *
 * @param opened as the block was opened.
 * @param sheet as the block is now.
 * @param pane as it is in the pane.
 */
export function mergedForm(opened: BedForm, sheet: BedForm, pane: BedForm): BedForm {
  const pick = <T>(was: T, now: T, wanted: T): T => (JSON.stringify(was) === JSON.stringify(wanted) ? now : wanted);
  const keys = new Set([...Object.keys(opened.typed), ...Object.keys(sheet.typed), ...Object.keys(pane.typed)]);
  const typed = [...keys].flatMap((name): [string, string][] => {
    const key = name as FieldKey;
    const text = pick(opened.typed[key], sheet.typed[key], pane.typed[key]);
    return text === undefined ? [] : [[key, text]];
  });
  return {
    name: pick(opened.name, sheet.name, pane.name),
    way: pick(opened.way, sheet.way, pane.way),
    typed: Object.fromEntries(typed),
    widths: pick(opened.widths, sheet.widths, pane.widths),
    points: pick(opened.points, sheet.points, pane.points),
    cutOuts: pick(opened.cutOuts, sheet.cutOuts, pane.cutOuts),
  };
}

/**
 * What it takes to have a block hold another form.
 *
 * @param was the form as the block's cells have it, from {@link formOnSheet}.
 * @param wanted the form to have, with what its plan fills in. A block without rates stays without, unless one is wanted.
 */
export function estimateUpdate(there: BlockOnSheet, was: BedForm, wanted: BedForm): BlockUpdate {
  const { rates, ...bare } = wanted;
  const isWithRates = was.rates !== undefined || rateKeys.some((key) => wanted.typed[key] === undefined);
  const isNamed = (picks: FieldKey) =>
    was.typed[picks] !== undefined || (wanted.typed[picks] ?? fields[picks].initial) !== fields[picks].initial;
  const next = estimateRows(rates && isWithRates ? { ...bare, rates: withLists(rates, isNamed) } : bare);
  // A block of an earlier version has no row for the kind of edging, and gets one where it isn't metal anymore. Nor does
  // it say what its stone is sold by.
  const lacks = (key: FieldKey) => !there.contents.some(([label]) => label === fields[key].label);
  const [ofEdging, ofStone] = [lacks("edgingKind") ? ["edgingKind"] : [], lacks("soldBy") ? SOLD_BY_ROWS : []];
  const leftOut = (keys: readonly string[], rows: DraftRow[]) =>
    rows.filter(({ cells }) => !keys.includes(cells[1]?.key ?? ""));
  const stays = [
    ...(edgingOf(wanted) === METAL ? ofEdging : []),
    ...(soldByIn(was) === TON && soldByIn(wanted) === TON ? ofStone : []),
  ];
  return blockUpdate(
    [estimateRows(was), ...notedOtherwise(was)].map((rows) => leftOut([...ofEdging, ...ofStone], rows)) as [DraftRow[]],
    leftOut(stays, next),
    {
      at: there.block.area,
      contents: there.contents,
    },
  );
}

/**
 * The rows of a block whose prices were typed over on the sheet: what is said beside them is still as it was printed for
 * a rate, for a sample price, or for a price of the office's own.
 */
function notedOtherwise({ rates, ...was }: BedForm): DraftRow[][] {
  const typed = without(was.typed, rateKeys);
  const own = Object.fromEntries(rateKeys.map((key) => [key, "1"]));
  return [
    ...(rates
      ? [estimateRows({ ...was, typed, rates }), estimateRows({ ...was, typed: { ...typed, ...own }, rates })]
      : []),
    estimateRows({ ...was, typed }),
    estimateRows({ ...was, typed: { ...typed, ...own } }),
  ];
}

/** Rows that a block of an earlier version lacks, in which all stone is sold by the ton. */
const SOLD_BY_ROWS: readonly string[] = ["soldBy", "orderTons", "orderYards"];

function without(typed: BedForm["typed"], keys: readonly FieldKey[]): BedForm["typed"] {
  return Object.fromEntries(Object.entries(typed).filter(([key]) => !keys.includes(key as FieldKey)));
}
