import { type CloseCall, LEAST_SAVING } from "../quantities/bed/closeCalls";
import type { Estimate } from "../quantities/bed/estimate";
import type { FieldKey } from "../quantities/bed/fields";
import { type BedForm, edgingOf, followedRate, textOf } from "../quantities/bed/form";
import { type ListKey, listOf } from "../quantities/bed/officeLists";
import type { ListedRow } from "../quantities/bed/rates";
import { readForm } from "../quantities/bed/read";
import { METAL } from "../quantities/edgingKinds";
import { Problem } from "../quantities/problem";
import { type WorkedOutBed, workOut } from "./planOfEstimate";

/** Lists of which another row does the same work, if it has the same of these. */
const SAME: Readonly<Partial<Record<ListKey, readonly FieldKey[]>>> = {
  edging: ["borderHeight", "trenchDepth"],
  fabric: [],
  pins: [],
  haul: [],
  delivery: [],
};

/** A form with what a row of the office's list has typed into it. */
export function withRow(form: BedForm, list: ListKey, { name, cells }: ListedRow): BedForm {
  const fills = Object.entries(cells).flatMap(([key, cell]) => (cell.problem === undefined ? [[key, cell.text]] : []));
  return { ...form, typed: { ...form.typed, ...Object.fromEntries(fills), [listOf(list).picks]: name } };
}

/** A form's bed with its estimate; undefined where it can't be made. */
export function workedOut(form: BedForm): WorkedOutBed | undefined {
  const { bed } = readForm(form);
  if (!bed) return undefined;
  try {
    return workOut(bed);
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    return undefined;
  }
}

/**
 * Products of the office's own lists with which the bed would cost less: another roll, another length of edging, another
 * truck. Sample prices are compared with nothing.
 *
 * @param form with the office's rates; @param estimate of it.
 * @returns the best of each list, none that saves less than {@link LEAST_SAVING}.
 * @example otherProducts(form, estimate)[0]?.text // "Your list of fabric also has “4 ft × 100 ft”."
 */
export function otherProducts(form: BedForm, estimate: Estimate): CloseCall[] {
  return (Object.keys(SAME) as ListKey[]).flatMap((list): CloseCall[] => {
    const { of, price, picks } = listOf(list);
    const rate = followedRate(form, price);
    // What is typed for this bed alone has no name to compare with.
    if (rate?.problem !== undefined || rate?.isExample !== false) return [];
    if (list === "edging" && edgingOf(form) !== METAL) return [];
    const own = textOf(form, picks).trim().toLowerCase();
    const others = (form.rates?.lists?.[list]?.rows ?? []).filter(
      (row) => !row.isSample && row.name.toLowerCase() !== own,
    );
    const [best] = others
      .flatMap((row) => {
        const other = withRow(form, list, row);
        if (!SAME[list]?.every((key) => textOf(other, key) === textOf(form, key))) return [];
        const cost = workedOut(other)?.estimate.directCost;
        return cost === undefined ? [] : [{ row, saves: estimate.directCost - cost }];
      })
      .filter(({ saves }) => saves >= LEAST_SAVING)
      .sort((one, other) => other.saves - one.saves);
    return best
      ? [{ text: `Your list of ${of} also has “${best.row.name}”.`, by: "Using it here", saves: best.saves }]
      : [];
  });
}
