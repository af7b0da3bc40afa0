import type { BookParts } from "../read/bookParts";
import type { XmlElement } from "../read/xml";
import type { XmlEdit } from "./edit";
import type { PackageParts } from "./package";
import { escaped, RELATIONSHIPS, tag } from "./xml";

/** A name that is other than in the file. */
export interface NameEdit {
  /** Its place among the file's; left out for a new one. */
  readonly place?: number;
  /** Left out for one that is gone. */
  readonly name?: string;
  /** Without "=". */
  readonly text?: string;
  /** The place of the sheet for which alone a new one holds. */
  readonly sheet?: number;
}

/** What is other in a workbook than in the file. */
export interface BookEdits {
  /** All sheets of cells, in their order; `pointer` is the id by which the workbook points to each. */
  readonly sheets: readonly { readonly name: string; readonly hidden: boolean; readonly pointer: string }[];
  readonly names: readonly NameEdit[];
  /** Whether programs have to work out all formulas when they open it. */
  readonly calculatesOnLoad?: boolean;
}

/** The order of what a workbook holds: ECMA-376 18.2.27. */
const ORDER = (
  "fileVersion fileSharing workbookPr workbookProtection bookViews sheets functionGroups externalReferences " +
  "definedNames calcPr oleSize customWorkbookViews pivotCaches extLst"
).split(" ");

/** Writes what is other into the part that is the workbook; nothing where nothing is. */
export function editBook(parts: PackageParts, book: BookParts, edits: BookEdits): void {
  parts.edit(book.part, (edit) => {
    const moves = editSheets(edit, book, edits);
    editNames(edit, book, edits, moves);
    const calculation = childOf(edit, "calcPr");
    if (edits.calculatesOnLoad && calculation) edit.set(calculation, { fullCalcOnLoad: 1 });
    else if (edits.calculatesOnLoad)
      edit.putInOrder(edit.root, "calcPr", tag("calcPr", { fullCalcOnLoad: true }), ORDER);
  });
}

const childOf = (edit: XmlEdit, name: string) => edit.root.children.find((one) => one.name === name);

const pointerOf = ({ attributes }: XmlElement) =>
  Object.entries(attributes).find(([name]) => /(^|:)id$/.test(name))?.[1] ?? "";

/** Writes the list of sheets. @returns where each place of the file's list is now; undefined where nothing moved. */
function editSheets(
  edit: XmlEdit,
  { sheets: known }: BookParts,
  { sheets }: BookEdits,
): Map<number, number> | undefined {
  const list = childOf(edit, "sheets");
  if (!list) return undefined;
  const listed = list.children;
  const ofCells = new Map(known.map((sheet) => [sheet.pointer, sheet]));
  const changesOf = (pointer: string) => {
    const [now, was] = [sheets.find((one) => one.pointer === pointer), ofCells.get(pointer)];
    if (!now || !was) return {};
    return {
      ...(now.name !== was.name && { name: now.name }),
      ...(now.hidden !== was.hidden && { state: now.hidden ? "hidden" : undefined }),
    };
  };
  const before = listed.map(pointerOf);
  // A sheet without cells, such as a chart's, stays behind the one that it was behind.
  const after = sheets.map(({ pointer }) => pointer);
  before.forEach((pointer, place) => {
    if (!ofCells.has(pointer)) after.splice(place === 0 ? 0 : after.indexOf(before[place - 1] ?? "") + 1, 0, pointer);
  });
  if (after.join("\n") === before.join("\n")) {
    for (const element of listed) {
      const changes = changesOf(pointerOf(element));
      if (Object.keys(changes).length > 0) edit.set(element, changes);
    }
    return undefined;
  }
  const highest = Math.max(0, ...listed.map(({ attributes }) => Number(attributes.sheetId ?? 0)));
  let added = 0;
  const xmls = after.map((pointer) => {
    const element = listed[before.indexOf(pointer)];
    if (element) return edit.sourceWith(element, changesOf(pointer));
    const { name = "", hidden } = sheets.find((one) => one.pointer === pointer) ?? {};
    added += 1;
    const attributes = { name, sheetId: highest + added, state: hidden === true && "hidden" };
    return edit.named(tag("sheet", { ...attributes, "xmlns:r": RELATIONSHIPS, "r:id": pointer }));
  });
  edit.piece(list.span.inside, list.span.insideEnd, xmls.join(""));
  const moves = new Map(before.map((pointer, place) => [place, after.indexOf(pointer)]));
  for (const view of childOf(edit, "bookViews")?.children ?? []) {
    const front = moves.get(Number(view.attributes.activeTab ?? 0)) ?? -1;
    edit.set(view, { activeTab: Math.max(0, front), firstSheet: undefined });
  }
  return moves;
}

function editNames(edit: XmlEdit, book: BookParts, { names }: BookEdits, moves: Map<number, number> | undefined): void {
  const list = childOf(edit, "definedNames");
  const known = list?.children ?? [];
  const gone = new Set<number>();
  known.forEach((element, place) => {
    const own = element.attributes.localSheetId;
    const change = names.find((one) => one.place === place);
    const sheet = own === undefined || !moves ? undefined : moves.get(Number(own));
    if (sheet === -1 || (change && change.name === undefined)) {
      gone.add(place);
      edit.replace(element, "");
      return;
    }
    if (sheet !== undefined && String(sheet) !== own) edit.set(element, { localSheetId: sheet });
    if (!change) return;
    edit.set(element, { name: change.name });
    edit.piece(element.span.inside, element.span.insideEnd, escaped(change.text ?? ""));
  });
  const others = book.sheetAt.flatMap((sheet, place) => (sheet ? [] : [moves?.get(place) ?? place]));
  // Each sheet without cells at or before it moves a sheet on by one.
  const placeOf = (sheet: number) =>
    others.sort((one, other) => one - other).reduce((place, other) => (other <= place ? place + 1 : place), sheet);
  const added = names
    .filter(({ place }) => place === undefined)
    .map(({ name, text = "", sheet }) =>
      tag("definedName", { name, localSheetId: sheet === undefined ? undefined : placeOf(sheet) }, escaped(text)),
    );
  if (added.length > 0) {
    if (list) edit.append(list, added.join(""));
    else edit.putInOrder(edit.root, "definedNames", tag("definedNames", {}, added.join("")), ORDER);
  } else if (list && gone.size === known.length && known.length > 0) edit.replace(list, "");
}
