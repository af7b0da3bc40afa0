import { SHEET_COLUMNS } from "../../spreadsheet/areas";
import { elements, type XmlElement } from "../read/xml";
import { type CellEdit, CellsEdit, type LineEdit } from "./cellEdit";
import { XmlEdit } from "./edit";
import { type FilePage, listsXml, type NewSheet, paneXml, type Shared, shadingsXml } from "./sheet";
import { escaped, RELATIONSHIPS, tag } from "./xml";

/** What is other in a sheet than in the file. Elements of the file are named by their places among those of their kind. */
export interface SheetEdits {
  readonly cells?: readonly CellEdit[];
  readonly rows?: ReadonlyMap<number, LineEdit>;
  readonly columns?: ReadonlyMap<number, LineEdit>;
  readonly merged?: ListEdit<string>;
  readonly shadings?: ListEdit<NonNullable<NewSheet["shadings"]>[number]>;
  readonly lists?: ListEdit<NonNullable<NewSheet["lists"]>[number]>;
  readonly frozen?: NonNullable<NewSheet["frozen"]>;
  readonly hidesGridLines?: boolean;
  /** As files write colors; null for none. */
  readonly tabColor?: string | null;
  readonly page?: FilePage;
  /** The ids by which the sheet points to a drawing and to tables that it didn't have. */
  readonly drawing?: string;
  readonly tables?: { readonly removed: readonly string[]; readonly added: readonly string[] };
}

export interface ListEdit<T> {
  readonly removed: ReadonlySet<number>;
  readonly added: readonly T[];
}

/** The order of what a sheet holds is fixed: ECMA-376 18.3.1.99. */
const ORDER = (
  "sheetPr dimension sheetViews sheetFormatPr cols sheetData sheetCalcPr sheetProtection protectedRanges scenarios " +
  "autoFilter sortState dataConsolidate customSheetViews mergeCells phoneticPr conditionalFormatting dataValidations " +
  "hyperlinks printOptions pageMargins pageSetup headerFooter rowBreaks colBreaks customProperties cellWatches " +
  "ignoredErrors smartTags drawing legacyDrawing drawingHF legacyDrawingHF picture oleObjects controls webPublishItems " +
  "tableParts extLst"
).split(" ");

/** Puts an element into a sheet, where its order has it; nothing for "". */
type Put = (name: string, xml: string) => void;

/** A sheet's part with some things in it changed, and all else as it was. */
export function editedSheet(bytes: Uint8Array, edits: SheetEdits, shared: Shared): Uint8Array {
  const cells = new CellsEdit(edits.cells ?? [], edits.rows ?? new Map());
  const edit = new XmlEdit(bytes, cells);
  cells.write(edit);
  const put: Put = (name, xml) => {
    if (xml) edit.putInOrder(edit.root, name, xml, ORDER);
  };
  const { columns, merged, lists, shadings, tabColor, page, drawing, tables } = edits;
  if (columns?.size) put("cols", columnsXml(edit.root, columns));
  if (merged)
    editList(edit, put, "mergeCells", { ...merged, added: merged.added.map((ref) => tag("mergeCell", { ref })) });
  if (lists) editList(edit, put, "dataValidations", { ...lists, added: listsXml({ lists: lists.added }) });
  if (shadings) editShadings(edit, shadings, shared);
  editView(edit, edits, put);
  if (tabColor !== undefined)
    editProperty(edit, "tabColor", tabColor === null ? "" : tag("tabColor", { rgb: tabColor }), put);
  if (page) editPage(edit, page, put);
  if (drawing) put("drawing", pointerXml("drawing", drawing));
  if (tables) editTables(edit, put, tables);
  return edit.isChanged ? edit.bytes() : bytes;
}

/** Takes elements out of a list that counts them, and puts others in; a list that is empty then goes, too. */
function editList(edit: XmlEdit, put: Put, listName: string, { removed, added }: ListEdit<string>): void {
  if (added.length === 0 && removed.size === 0) return;
  const list = edit.root.children.find(({ name }) => name === listName);
  const known = list?.children ?? [];
  const count = known.filter((_, place) => !removed.has(place)).length + added.length;
  if (!list) put(listName, tag(listName, { count }, added.join("")));
  else if (count === 0) edit.replace(list, "");
  else {
    known.forEach((one, place) => {
      if (removed.has(place)) edit.replace(one, "");
    });
    edit.set(list, { count });
    edit.append(list, added.join(""));
  }
}

function editTables(edit: XmlEdit, put: Put, { removed, added }: NonNullable<SheetEdits["tables"]>): void {
  const known = edit.root.children.find(({ name }) => name === "tableParts")?.children ?? [];
  const idOf = ({ attributes }: XmlElement) => Object.entries(attributes).find(([name]) => /(^|:)id$/.test(name))?.[1];
  const gone = known.flatMap((one, place) => (removed.includes(idOf(one) ?? "") ? [place] : []));
  const xmls = added.map((id) => pointerXml("tablePart", id));
  editList(edit, put, "tableParts", { removed: new Set(gone), added: xmls });
}

/** An element that points to another part. The prefix is declared with it, since a file may have another one for it. */
function pointerXml(name: string, id: string): string {
  return tag(name, { "xmlns:r": RELATIONSHIPS, "r:id": id });
}

function editShadings(edit: XmlEdit, { removed, added }: NonNullable<SheetEdits["shadings"]>, shared: Shared): void {
  const { root } = edit;
  let place = 0;
  let last = 0;
  for (const formatting of elements(root, "conditionalFormatting")) {
    const rules = [...elements(formatting, "cfRule")];
    const gone = rules.filter((_, index) => removed.has(place + index));
    place += rules.length;
    for (const { attributes } of rules) last = Math.max(last, Number(attributes.priority ?? 0));
    if (gone.length === rules.length && gone.length > 0) edit.replace(formatting, "");
    else for (const rule of gone) edit.replace(rule, "");
  }
  const xml = shadingsXml({ shadings: added }, shared, last + 1).join("");
  if (!xml) return;
  const before = root.children
    .filter(({ name }) => ORDER.indexOf(name) <= ORDER.indexOf("conditionalFormatting"))
    .at(-1);
  if (before) edit.insertAfter(before, xml);
}

function editView(edit: XmlEdit, { frozen, hidesGridLines }: SheetEdits, put: Put): void {
  if (!frozen && hidesGridLines === undefined) return;
  const views = edit.root.children.find(({ name }) => name === "sheetViews");
  const [view] = views?.children ?? [];
  const { rows = 0, columns = 0 } = frozen ?? {};
  const pane = rows > 0 || columns > 0 ? paneXml(rows, columns) : "";
  if (!view) {
    put(
      "sheetViews",
      tag("sheetViews", {}, tag("sheetView", { ...(hidesGridLines && { showGridLines: 0 }), workbookViewId: 0 }, pane)),
    );
    return;
  }
  if (hidesGridLines !== undefined) edit.set(view, { showGridLines: hidesGridLines ? 0 : undefined });
  if (!frozen) return;
  // What is selected is told for each pane, so it goes with the pane.
  for (const one of view.children) if (one.name === "pane" || one.name === "selection") edit.replace(one, "");
  if (!pane) return;
  const first = view.children[0];
  if (first) edit.insertBefore(first, pane);
  else edit.append(view, pane);
}

const PROPERTIES = ["tabColor", "outlinePr", "pageSetUpPr"];

function editProperty(edit: XmlEdit, name: string, xml: string, put: Put): void {
  const properties = edit.root.children.find((one) => one.name === "sheetPr");
  if (properties) edit.putInOrder(properties, name, xml, PROPERTIES);
  else if (xml) put("sheetPr", tag("sheetPr", {}, xml));
}

function editPage(edit: XmlEdit, page: FilePage, put: Put): void {
  const child = (name: string) => edit.root.children.find((one) => one.name === name);
  const { marginsIn, landscape, paper, scale, fit, header, footer, breaksAbove } = page;
  const setup = {
    paperSize: paper,
    scale,
    fitToWidth: fit?.wide,
    fitToHeight: fit?.tall,
    orientation: landscape ? "landscape" : "portrait",
  };
  const [margins, known] = [child("pageMargins"), child("pageSetup")];
  if (margins) edit.set(margins, { ...marginsIn });
  else put("pageMargins", tag("pageMargins", { ...marginsIn }));
  // A printer's own settings stay with the sheet.
  if (known) edit.set(known, setup);
  else put("pageSetup", tag("pageSetup", setup));
  editProperty(edit, "pageSetUpPr", fit ? tag("pageSetUpPr", { fitToPage: true }) : "", put);
  const texts = child("headerFooter");
  const inner =
    (header ? tag("oddHeader", {}, escaped(header)) : "") + (footer ? tag("oddFooter", {}, escaped(footer)) : "");
  if (texts && !inner) edit.replace(texts, "");
  else if (inner) put("headerFooter", tag("headerFooter", {}, inner));
  const breaks = breaksAbove.map((row) => tag("brk", { id: row, max: SHEET_COLUMNS - 1, man: true }));
  const rowBreaks = child("rowBreaks");
  if (rowBreaks && breaks.length === 0) edit.replace(rowBreaks, "");
  else if (breaks.length > 0)
    put("rowBreaks", tag("rowBreaks", { count: breaks.length, manualBreakCount: breaks.length }, breaks.join("")));
}

interface ColumnRun {
  readonly min: number;
  readonly max: number;
  readonly attributes: Record<string, string>;
}

/** The columns of a sheet with changes in some of them: a run of equal ones falls apart where one differs. */
function columnsXml(root: XmlElement, changes: ReadonlyMap<number, LineEdit>): string {
  const cols = root.children.find(({ name }) => name === "cols");
  const format = root.children.find(({ name }) => name === "sheetFormatPr");
  const plainWidth = format?.attributes.defaultColWidth ?? "9.140625";

  let runs: ColumnRun[] = (cols?.children ?? []).map(({ attributes }) => ({
    min: Number(attributes.min),
    max: Number(attributes.max ?? attributes.min),
    attributes: { ...attributes },
  }));
  for (const [place, { size, hidden, style }] of changes) {
    const number = place + 1;
    const own = runs.find(({ min, max }) => number >= min && number <= max);
    const attributes: Record<string, string> = { ...(own?.attributes ?? { width: plainWidth }) };
    if (typeof size === "number") Object.assign(attributes, { width: String(size), customWidth: "1" });
    if (hidden !== undefined) attributes.hidden = hidden ? "1" : "0";
    if (style !== undefined) attributes.style = String(style);
    runs = runs.flatMap((run) =>
      run !== own
        ? [run]
        : [
            { ...run, max: number - 1 },
            { ...run, min: number + 1 },
          ].filter(({ min, max }) => min <= max),
    );
    runs.push({ min: number, max: number, attributes });
  }
  const xmls = runs
    .sort((one, other) => one.min - other.min)
    .map(({ min, max, attributes }) => tag("col", { ...attributes, min, max }));
  return tag("cols", {}, xmls.join(""));
}
