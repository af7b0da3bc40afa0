import { areaAddress, cellAddress } from "../../spreadsheet/areas";
import { areaOf } from "./area";
import { carriedRules } from "./carriedRules";
import { findOutside, namesInside, type Outside, type Treatment } from "./findOutside";
import { MOST_CHARACTERS, thousands } from "./limits";
import { looksOf } from "./lookGroups";
import { areaOfRegion, type Saved } from "./readsOf";
import { templateOf } from "./readTemplate";
import type { RegionRules } from "./rules";
import { TEMPLATE_FORMAT, TEMPLATE_VERSION, type Template, type TemplateOutside } from "./template";
import { templateCells } from "./templateCells";
import { type Fault, templateFaults } from "./templateFaults";
import { templateText } from "./templateText";

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
  const { cells, told } = templateCells(saved, outside, treatments);
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
      ...(hidden > 0 ? [`Hidden columns show in the template (${hidden}).`] : []),
      ...(inside.length > 0 ? [`${inside.join(", ")}: read as the template's own cells, without the name.`] : []),
      ...told,
      ...leftOut,
    ],
    faults: faultsOf(template, saved),
  };
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

/** Why what was made could not be opened again, with addresses of the sheet. */
function faultsOf(template: Template, saved: Saved): string[] {
  const { length } = templateText(template);
  if (length > MOST_CHARACTERS) {
    return [`It would have ${thousands(length)} characters; the limit is ${thousands(MOST_CHARACTERS)}.`];
  }
  const faults = templateFaults(template).map((fault) => faultOnSheet(fault, saved));
  if (faults.length > 0) return faults;
  const read = templateOf(JSON.parse(JSON.stringify(template)));
  return read.ok ? [] : [...read.why];
}

function faultOnSheet({ at, what }: Fault, saved: Saved): string {
  const area = at === undefined ? undefined : areaOf(at);
  return area ? `${onSheet(saved, area)} ${what}.` : what;
}
