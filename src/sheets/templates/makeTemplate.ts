import { areaAddress, cellAddress } from "../address";
import type { CellContent } from "../plain/region";
import { covers, spillsOf } from "../plain/spills";
import { quoted } from "../typed";
import { areaOf } from "./area";
import { carriedRules } from "./carriedRules";
import { eachFormula, findOutside, namesInside, type Outside, type Treatment } from "./findOutside";
import { withoutHidden } from "./hiddenCharacters";
import { looksOf } from "./lookGroups";
import { areaOfRegion, type Piece, type Saved } from "./readsOf";
import { movedBy } from "./reference";
import type { RegionRules } from "./rules";
import { TEMPLATE_FORMAT, TEMPLATE_VERSION, type Template, type TemplateCell, type TemplateOutside } from "./template";
import { type Fault, templateFaults } from "./templateFaults";

/** What the person says of a template. */
export interface Words {
  readonly name: string;
  readonly note: string;
  readonly by: string;
  /** The day: 2026-03-31. */
  readonly saved: string;
}

/** A template made of cells of a sheet, and the account of it. */
export interface Made {
  readonly template: Template;
  /** What is otherwise than on the sheet, in sentences. */
  readonly told: readonly string[];
  /** Why it cannot be a template, with addresses of the sheet; nothing where it can. */
  readonly faults: readonly string[];
}

const USUAL_WIDTH = 8.43;
const HIDDEN_WIDTH = 1;
const WIDEST = 255;

/**
 * Makes a template of cells.
 *
 * @param saved the cells, with their looks, and what is known of their workbook.
 * @param rules their lists and rules.
 * @param treatments what becomes of each of {@link findOutside}, by what it reads; all must be there.
 */
export function makeTemplate(
  saved: Saved,
  rules: RegionRules,
  treatments: ReadonlyMap<string, Treatment>,
  { name, note, by, saved: day }: Words,
): Made {
  const { region } = saved;
  const { rows, columns } = areaOfRegion(region);
  const outside = findOutside(saved);
  const { looks, shown } = looksOf(region);
  const { choices, warnings, leftOut } = carriedRules(rules, saved);
  const { cells, told } = cellsFor(saved, outside, treatments);
  const merged = (region.merged ?? []).map(areaAddress);
  const kept = outside.flatMap((one) => keptOf(one, treatments.get(one.reads)));
  const template: Template = {
    format: TEMPLATE_FORMAT,
    version: TEMPLATE_VERSION,
    name: name.trim(),
    ...(note.trim() && { note: note.trim() }),
    saved: day,
    ...(by.trim() && { by: by.trim() }),
    rows,
    columns,
    widths: Array.from({ length: columns }, (_, column) => openWidth(region.widths?.[column])),
    cells,
    ...(looks.length > 0 && { looks }),
    ...(merged.length > 0 && { merged }),
    ...(choices.length > 0 && { choices }),
    ...(warnings.length > 0 && { warnings }),
    ...(kept.length > 0 && { outside: kept }),
  };
  const hidden = (region.widths ?? []).filter((width) => width < HIDDEN_WIDTH).length;
  const inside = namesInside(saved);
  return {
    template,
    told: [
      ...shown.map(({ row, column, why }) => `${onSheet(saved, { row, column })} ${why}; in the template it shows.`),
      ...(hidden > 0 ? [`Columns that are hidden show in the template (${hidden}).`] : []),
      ...(inside.length > 0 ? [`${inside.join(", ")}: read as the template's own cells, without the name.`] : []),
      ...told,
      ...leftOut,
    ],
    faults: templateFaults(template).map((fault) => faultOnSheet(fault, saved)),
  };
}

function cellsFor(saved: Saved, outside: readonly Outside[], treatments: ReadonlyMap<string, Treatment>) {
  const { region, around } = saved;
  const spilled = spillsOf(region, around);
  const contents: (TemplateCell | undefined)[][] = region.formulas.map((cells, row) =>
    cells.map((content, column) => {
      const isFirst = spilled.some((spill) => spill.row === row && spill.column === column);
      if (!isFirst && spilled.some((spill) => covers(spill, row, column))) return undefined;
      return constant(region.values[row]?.[column] ?? content, cellAddress({ row, column }));
    }),
  );
  const told: string[] = [];
  const listed = new Map(outside.map((one) => [one.reads.toLowerCase(), one]));
  eachFormula(saved, ({ row, column, pieces, formula, address }) => {
    const at = cellAddress({ row, column });
    const asValue = !pieces || pieces.some((piece) => stands(piece, listed, treatments) === undefined);
    if (asValue) {
      if (!pieces) told.push(`${address} has a formula that cannot be read, and is saved as what it shows.`);
      return;
    }
    const text = pieces.map((piece) => written(piece, saved, listed, treatments)).join("");
    contents[row]![column] = { at, formula: text === "" ? formula : text };
  });
  const cleaned = contents.flat().filter((cell) => cell !== undefined && hidesText(cell)).length;
  if (cleaned > 0) told.push(`Characters that do not show were taken out of texts (${cleaned} cells).`);
  const cells = contents.flat().flatMap((cell) => (cell ? withoutHiddenText(cell) : []));
  return { cells, told };
}

function constant(value: CellContent, at: string): TemplateCell | undefined {
  if (value === "") return undefined;
  if (typeof value === "number") return { at, number: value };
  return typeof value === "boolean" ? { at, truth: value } : { at, text: value };
}

const hidesText = ({ text }: TemplateCell): boolean => text !== undefined && withoutHidden(text) !== text;

function withoutHiddenText(cell: TemplateCell): TemplateCell[] {
  if (cell.text === undefined) return [cell];
  const text = withoutHidden(cell.text);
  return text === "" ? [] : [{ ...cell, text }];
}

type Listed = ReadonlyMap<string, Outside>;

/** How a piece stands in the template; undefined where the whole formula has to give way to what it shows. */
function stands(
  piece: Piece,
  listed: Listed,
  treatments: ReadonlyMap<string, Treatment>,
): "as it is" | "value" | undefined {
  if (piece.kind !== "outside") return "as it is";
  const one = listed.get(piece.reads.toLowerCase())!;
  if (treatments.get(one.reads) !== "value") return one.cannotStay === undefined ? "as it is" : undefined;
  return one.valueOf === "it" ? "value" : undefined;
}

function written(piece: Piece, { region }: Saved, listed: Listed, treatments: ReadonlyMap<string, Treatment>): string {
  if (piece.kind === "text") return piece.text;
  if (piece.kind === "inside") {
    // A name means one place, wherever its formula stands.
    const fixed = piece.name === undefined ? {} : { $top: true, $left: true, $bottom: true, $right: true };
    return movedBy({ ...piece.range, ...fixed }, -region.row, -region.column);
  }
  const one = listed.get(piece.reads.toLowerCase())!;
  return stands(piece, listed, treatments) === "value" ? literal(one.value!) : one.reads;
}

/** A value inside a formula. */
export function literal(value: string | number | boolean): string {
  if (typeof value === "string") return quoted(value);
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return value < 0 ? `(${value})` : String(value);
}

const LONGEST_VALUE = 255;

function keptOf({ reads, value, cannotStay }: Outside, treatment: Treatment | undefined): TemplateOutside[] {
  if (cannotStay !== undefined || treatment === "value" || treatment === undefined) return [];
  const fits = value !== undefined && String(value).length <= LONGEST_VALUE;
  return [{ reads, opened: treatment, ...(fits && { value }) }];
}

function openWidth(width = USUAL_WIDTH): number {
  return width < HIDDEN_WIDTH ? USUAL_WIDTH : Math.min(width, WIDEST);
}

function onSheet({ region }: Saved, { row, column }: { readonly row: number; readonly column: number }): string {
  return cellAddress({ row: region.row + row, column: region.column + column });
}

function faultOnSheet({ at, what }: Fault, saved: Saved): string {
  const area = at === undefined ? undefined : areaOf(at);
  return area ? `${onSheet(saved, area)} ${what}.` : what;
}
