import type { IWorkbookData } from "@univerjs/core";
import { fixedRange, type Rectangle } from "../../../xlsx/addresses";
import { openPackage, readSettings } from "../../../xlsx/read/package";
import { addSettings, addSheet, settingsXml } from "../../../xlsx/write/book";
import { type BookEdits, editBook, type NameEdit } from "../../../xlsx/write/bookEdit";
import type { CellEdit } from "../../../xlsx/write/cellEdit";
import { PackageParts } from "../../../xlsx/write/package";
import type { Shared } from "../../../xlsx/write/sheet";
import { editedSheet, type SheetEdits } from "../../../xlsx/write/sheetEdit";
import { StyleSheet } from "../../../xlsx/write/styles";
import { SETTINGS, tag } from "../../../xlsx/write/xml";
import { sheetColumns, writeAddress } from "../../grid/a1";
import { hasMoved } from "../../grid/moved";
import { Findings, type Saving } from "../context";
import { toFile } from "../formulas";
import type { OpenedFile } from "../open/openBook";
import type { Difference } from "../openedMessage";
import { cellChanges } from "./cellChanges";
import { keptDiffering } from "./differing";
import { FileInGrid } from "./fileInGrid";
import { keptNames, tablesToFile } from "./names";
import { editPictures } from "./pictureChanges";
import { pageOf, sheetToFile } from "./sheet";
import { sheetChanges } from "./sheetChanges";
import { editTables } from "./tableChanges";

/** What came of saving into a copy of a file. */
export interface SavedIntoFile {
  readonly bytes: Uint8Array<ArrayBuffer>;
  /** Formulas that no one touched, that show something else here, and keep what they show in the file. */
  readonly kept: readonly Difference[];
}

const STYLES = "application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml";
const WORKBOOK = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml";

/**
 * Writes into a copy of the file that was opened what is other now, and nothing else: each part in which nothing is
 * keeps its bytes.
 *
 * @param bytes the file's.
 * @param opened what was read of it.
 */
export function saveIntoFile(saving: Saving, bytes: Uint8Array, opened: OpenedFile): SavedIntoFile {
  return new CopyOfFile(saving, bytes, opened).save();
}

class CopyOfFile {
  private readonly parts: PackageParts;
  private readonly file: FileInGrid;
  private readonly before: Saving;
  private readonly shared: Shared;
  private readonly stylesPart: string | undefined;
  private readonly kept: Difference[] = [];
  /** The texts that cells had which have something else now. */
  private readonly withoutTexts = new Set<number>();
  /** The cells with other values, by the places of their sheets. */
  private readonly changedValues = new Map<number, ReadonlySet<string>>();
  /** The places of sheets of which no cell is left as it was. */
  private readonly gone = new Set<number>();
  private hasFormulas = false;
  private hasCells = false;
  /** The names of sheets whose cells are elsewhere now. */
  private readonly shifted: string[] = [];

  constructor(
    private readonly saving: Saving,
    private readonly bytes: Uint8Array,
    private readonly opened: OpenedFile,
  ) {
    this.parts = new PackageParts(openPackage(bytes));
    this.file = new FileInGrid(opened, new Set(keptDiffering(saving.kept.custom)), this.parts);
    this.before = { ...saving, kept: opened.book as IWorkbookData, findings: new Findings() };
    this.stylesPart = this.partOf("styles");
    const bytesOfStyles = this.stylesPart === undefined ? undefined : this.parts.part(this.stylesPart);
    this.shared = { styles: new StyleSheet(bytesOfStyles, this.file.stylesTaken()) };
  }

  save(): SavedIntoFile {
    const { saving, parts } = this;
    const { kept } = saving;
    const before = parts.reachable("");
    const sheets = kept.sheetOrder.map((id) => {
      const place = this.opened.book.sheetOrder.indexOf(id);
      const name = kept.sheets[id]?.name ?? "";
      const hidden = kept.sheets[id]?.hidden === 1;
      if (place < 0) return { name, hidden, pointer: this.newSheet(id) };
      this.sheet(id, place);
      return { name, hidden, pointer: this.file.book.sheets[place]?.pointer ?? "" };
    });
    this.opened.book.sheetOrder.forEach((id, place) => {
      const name = this.opened.book.sheets[id]?.name ?? "";
      if (kept.sheets[id]?.name !== name) this.shifted.push(name);
      if (kept.sheetOrder.includes(id)) return;
      this.noteTexts(place);
      parts.unpoint(this.file.book.part, (pointer) => pointer === this.file.book.sheets[place]?.pointer);
      this.hasFormulas = true;
    });
    this.writeStyles();
    this.removeTexts();
    this.writeSettings();
    const edits: BookEdits = {
      sheets,
      names: this.nameEdits(),
      ...(this.hasCells && this.mayBeStale() && { calculatesOnLoad: true }),
    };
    editBook(parts, this.file.book, edits);
    if (this.hasFormulas) this.drop("calcChain");
    this.dropMacros();
    this.noteStale();
    if (!parts.isChanged) return { bytes: new Uint8Array(this.bytes), kept: this.kept };
    parts.removeUnreached(before);
    if (parts.names.some((name) => /^_xmlsignatures\/sig[^/]*$/i.test(name)))
      saving.findings.fact("the digital signature, which was for the file as it was");
    return { bytes: parts.zip(), kept: this.kept };
  }

  private writeStyles(): void {
    const { parts, stylesPart } = this;
    const { styles } = this.shared;
    if (!styles.isUsed) return;
    const name = stylesPart ?? parts.freeName("xl/styles", ".xml");
    parts.add(name, styles.part(), parts.has(name) ? undefined : STYLES);
    if (stylesPart === undefined) parts.point(this.file.book.part, "styles", "styles", `/${name}`);
  }

  /** Empties the texts that no cell has any more: what a person deleted is not to be found in the file. */
  private removeTexts(): void {
    const texts = this.partOf("sharedStrings");
    if (this.withoutTexts.size === 0 || texts === undefined) return;
    this.file.book.sheets.forEach(({ cells }, place) => {
      if (this.gone.has(place)) return;
      const changed = this.changedValues.get(place);
      for (const { row, column, textNumber } of cells)
        if (textNumber !== undefined && !changed?.has(`${row},${column}`)) this.withoutTexts.delete(textNumber);
    });
    if (this.withoutTexts.size === 0) return;
    this.parts.edit(texts, (edit) => {
      edit.root.children
        .filter(({ name }) => name === "si")
        .forEach((text, number) => {
          if (this.withoutTexts.has(number)) edit.replace(text, tag("si", {}, tag("t")));
        });
    });
  }

  private sheet(id: string, place: number): void {
    const { saving, file, parts } = this;
    const { part = "", name = "" } = file.book.sheets[place] ?? {};
    const cells = cellChanges(saving, file, place, id, this.shared.styles);
    const changes: SheetEdits = {
      ...sheetChanges(saving, this.before, file, place, id, this.shared.styles),
      cells: cells.edits,
    };
    if (hasMoved(saving.kept.sheets[id]?.custom) && isChanged(changes)) {
      this.shifted.push(name);
      this.rewrite(id, place);
      return;
    }
    this.noteTexts(place, cells.edits);
    this.kept.push(...cells.kept);
    this.hasFormulas ||= cells.hasFormulas;
    this.hasCells ||= cells.edits.some(({ value, formula }) => value !== undefined || formula !== undefined);
    const edits: SheetEdits = {
      ...changes,
      ...editPictures(saving, this.before, parts, part, id),
      ...editTables(saving, this.before, file, parts, place, id),
    };
    const bytes = isChanged(edits) ? parts.part(part) : undefined;
    if (bytes) parts.add(part, editedSheet(bytes, edits, this.shared));
  }

  /** Takes down the texts of cells that have something else now. @param edits left out where the sheet is gone. */
  private noteTexts(place: number, edits?: readonly CellEdit[]): void {
    const changed = new Set(
      edits?.flatMap(({ row, column, value }) => (value === undefined ? [] : [`${row},${column}`])),
    );
    if (edits) this.changedValues.set(place, changed);
    else this.gone.add(place);
    for (const { row, column, textNumber } of this.file.book.sheets[place]?.cells ?? [])
      if (textNumber !== undefined && (!edits || changed.has(`${row},${column}`))) this.withoutTexts.add(textNumber);
  }

  /** Writes a sheet anew: what isn't shown here has no place any more, since its rows or columns moved. */
  private rewrite(id: string, place: number): void {
    const { part = "", name = "" } = this.file.book.sheets[place] ?? {};
    const lost = this.opened.unseenOn[place]?.lines() ?? [];
    for (const line of lost) this.saving.findings.fact(`on “${name}”, where rows or columns moved: ${line}`);
    this.noteTexts(place);
    this.parts.unpoint(part, () => true);
    this.write(part, id);
    this.hasFormulas = true;
    this.hasCells = true;
  }

  private newSheet(id: string): string {
    const part = this.parts.freeName("xl/worksheets/sheet", ".xml");
    this.write(part, id);
    this.hasFormulas = true;
    return this.parts.point(this.file.book.part, "sheet", "worksheet", `/${part}`);
  }

  private write(part: string, id: string): void {
    const { saving, parts } = this;
    const sheet = sheetToFile(saving, id, saving.kept.sheets[id] ?? {});
    const spillNumber = sheet.cells.some(({ array }) => array?.spills) ? this.file.spillNumber() : undefined;
    const shared = { ...this.shared, ...(spillNumber !== undefined && { spillNumber }) };
    addSheet(parts, part, { ...sheet, tables: tablesToFile(saving, id) }, shared, false);
  }

  /** The names that are other than in the file, among them print areas and title rows. */
  private nameEdits(): NameEdit[] {
    const { saving, before, opened } = this;
    const [one, now] = [keptNames(before), keptNames(saving)];
    const edits: NameEdit[] = [];
    for (const [id, was] of one) {
      const place = Number(/\d+$/.exec(id)?.[0] ?? 0) - 1;
      const is = now.get(id);
      if (!is) edits.push({ place });
      else if (was.name !== is.name || was.formulaOrRefString !== is.formulaOrRefString)
        edits.push({ place, name: is.name, text: this.nameText(is.formulaOrRefString) });
    }
    for (const [id, { name, formulaOrRefString, localSheetId }] of now) {
      if (one.has(id)) continue;
      const sheet = saving.kept.sheetOrder.indexOf(localSheetId ?? "");
      edits.push({ name, text: this.nameText(formulaOrRefString), ...(sheet >= 0 && { sheet }) });
    }
    saving.kept.sheetOrder.forEach((id, sheet) => {
      const [was, is] = [pageOf(opened.book.sheets[id] ?? {}), pageOf(saving.kept.sheets[id] ?? {})];
      const name = saving.kept.sheets[id]?.name ?? "";
      const known = this.file.book.sheetAt.indexOf(this.file.book.sheets[opened.book.sheetOrder.indexOf(id)]);
      const compare = (own: string, from: Rectangle | undefined, to: Rectangle | undefined) => {
        if (JSON.stringify(from) === JSON.stringify(to)) return;
        const place = this.file.book.names.findIndex((part) => part.name === own && part.sheetPlace === known);
        edits.push({
          ...(place >= 0 && { place }),
          ...(to && { name: own, text: fixedRange(writeAddress(name, to)), sheet }),
        });
      };
      const rows = (page: typeof is) => page?.titleRows && { ...page.titleRows, column: 0, columnCount: sheetColumns };
      compare("_xlnm.Print_Area", was?.printArea, is?.printArea);
      compare("_xlnm.Print_Titles", rows(was), rows(is));
    });
    return edits;
  }

  private nameText(text: string): string {
    return toFile(text.startsWith("=") ? text : `=${text}`, this.saving.functions);
  }

  private writeSettings(): void {
    const { parts, saving } = this;
    const now = (saving.kept.custom?.settings ?? {}) as Record<string, unknown>;
    const was = readSettings(this.file.book.zip) ?? {};
    if (JSON.stringify(now) === JSON.stringify(was)) return;
    const known = parts.names.find(
      (name) => /^customXml\/item\d+\.xml$/.test(name) && new TextDecoder().decode(parts.part(name)).includes(SETTINGS),
    );
    if (known) parts.add(known, settingsXml(now));
    else addSettings(parts, this.file.book.part, now);
  }

  /** Whether a program has to work the file out when it opens it: some results can't be told here. */
  private mayBeStale(): boolean {
    return this.file.differs.size > 0 || this.opened.unseen.some((line) => /^[\d,]+ formulas? /.test(line));
  }

  private partOf(kind: string): string | undefined {
    return [...this.file.book.relationships.values()].find((one) => one.kind === kind)?.target;
  }

  /** Takes a part of the workbook away, and what points to it. */
  private drop(kind: string): void {
    const { part, relationships } = this.file.book;
    this.parts.unpoint(part, (id) => relationships.get(id)?.kind === kind);
  }

  /** A workbook with macros has another kind of name, and a copy gets the ordinary one. */
  private dropMacros(): void {
    if (this.partOf("vbaProject") === undefined && !this.parts.names.some((name) => /vbaProject\.bin$/i.test(name)))
      return;
    const { part } = this.file.book;
    this.drop("vbaProject");
    for (const name of this.parts.names.filter((one) => /vbaProject/i.test(one))) this.parts.remove(name);
    this.parts.retype(part, WORKBOOK);
    this.saving.findings.fact("macros");
  }

  /** What isn't shown here may read cells of a sheet that are elsewhere now, and can't be changed with them. */
  private noteStale(): void {
    if (this.shifted.length === 0) return;
    const names = [...new Set(this.shifted)].map((name) => `“${name}”`).join(", ");
    const rest = this.opened.unseen.filter((line) =>
      /chart|pivot|formula|conditional|validation|shape|slicer/i.test(line),
    );
    if (rest.length === 0) return;
    this.saving.findings.fact(`what isn't shown here and reads cells of ${names} as they were (${rest.join("; ")})`);
  }
}

function isChanged({ cells, rows, columns, merged, shadings, lists, tables, ...rest }: SheetEdits): boolean {
  const lines = (cells?.length ?? 0) + (rows?.size ?? 0) + (columns?.size ?? 0);
  const listed = [merged, shadings, lists].some((one) => one && (one.removed.size > 0 || one.added.length > 0));
  const pointed = tables && (tables.removed.length > 0 || tables.added.length > 0);
  return lines > 0 || listed || pointed === true || Object.values(rest).some((one) => one !== undefined);
}
