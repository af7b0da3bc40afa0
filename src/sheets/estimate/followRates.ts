import { exampleStonePrice } from "../../quantities/bed/examples";
import { type FieldKey, fields } from "../../quantities/bed/fields";
import { type BedForm, edgingOf, soldByIn, textOf } from "../../quantities/bed/form";
import { lines } from "../../quantities/bed/lines";
import { type RateKey, rateKeys } from "../../quantities/bed/rates";
import { readField } from "../../quantities/bed/readField";
import { edgingFieldKeys, METAL } from "../../quantities/edgingKinds";
import { soldByFieldKeys, TON } from "../../quantities/soldBy";
import { type Anchor, cellAddress } from "../../spreadsheet/areas";
import { fieldsBelow, headings } from "./headings";
import { followingFormula, listHasUnits } from "./rateFormulas";
import { findBlocks, type Part, partsOf } from "./readBlock";

/** A cell of an estimate that still holds what it started with, and the formula by which it would follow a rate. */
export interface UnfollowingCell extends Anchor {
  readonly bed: string;
  readonly rate: RateKey;
  readonly before: number | string;
  readonly after: string;
}

/** What is bought as one thing follows only together: another piece or roll has another price. */
const TOGETHER: readonly (readonly RateKey[])[] = [
  ["pieceLength", "stakesPerPiece", "pieceCost"],
  ["rollWidth", "rollLength", "rollCost"],
];

const UNIT_COST = 3;
const VALUE = 1;

/**
 * The cells of a sheet's estimates that no one has changed and that follow no rate: those of blocks from before the
 * workbook had rates.
 *
 * @param values what the sheet's used range shows.
 * @param formulas what is in the same cells.
 * @param at where that range begins.
 * @param names those of the workbook, by which the office's list of stone has units or none.
 */
export function unfollowingCells(
  values: readonly (readonly unknown[])[],
  formulas: readonly (readonly unknown[])[],
  at: Anchor,
  names: readonly string[],
): UnfollowingCell[] {
  return findBlocks(values, at).flatMap(({ area, form }) => {
    const [top, left] = [area.row - at.row, area.column - at.column];
    const rows = values.slice(top, top + area.rows).map((cells) => cells.slice(left, left + area.columns));
    const parts = partsOf(rows);
    const place = (key: FieldKey) => placeOf(parts, key);
    const stone = place("stone");
    const found = rateKeys.flatMap((rate): UnfollowingCell[] => {
      const cell = place(rate);
      if (!cell) return [];
      const before = formulas[top + cell.row]?.[left + cell.column];
      const isByTon = listHasUnits(names) && soldByFieldKeys.includes(rate);
      const formula = followingFormula({ key: rate, single: rate, ...(isByTon && { soldBy: TON }) });
      if (!isStarting(form, rate, before) || (formula.includes("{stone}") && !stone)) return [];
      const stoneAt = stone ? cellAddress({ row: area.row + stone.row, column: area.column + stone.column }) : "";
      const after = formula.replaceAll("{stone}", stoneAt);
      return [{ bed: form.name, rate, before, after, row: area.row + cell.row, column: area.column + cell.column }];
    });
    const has = new Set(found.map(({ rate }) => rate));
    const isTogether = (rate: RateKey) =>
      TOGETHER.every((all) => !all.includes(rate) || all.every((key) => has.has(key)));
    return found.filter(({ rate }) => isTogether(rate));
  });
}

/** Where in a block the cell of a field is: in its line, or below its heading. */
function placeOf(parts: readonly Part[], key: FieldKey): Anchor | undefined {
  const line = key === "crewRate" ? undefined : lines.find(({ cost }) => cost === key);
  const label = line?.label ?? fields[key].label;
  const part = parts.find(({ heading, rows }) => {
    const isHere = line ? heading === headings.lines : fieldsBelow[heading]?.includes(key);
    return isHere && rows.some(([first]) => first === label);
  });
  if (!part) return undefined;
  const row = part.first + part.rows.findIndex(([first]) => first === label);
  return { row, column: line ? UNIT_COST : VALUE };
}

/** Whether a cell holds what its field starts with. */
function isStarting(form: BedForm, rate: RateKey, content: unknown): content is number {
  if (edgingFieldKeys.includes(rate) && edgingOf(form) !== METAL) return false;
  if (soldByFieldKeys.includes(rate) && soldByIn(form) !== TON) return false;
  const start = rate === "stoneCost" ? exampleStonePrice(textOf(form, "stone")) : fields[rate].initial;
  return typeof content === "number" && content === readField(fields[rate], start);
}
