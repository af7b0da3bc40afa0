import type { FoundBed } from "../src/pane/papers/readJob";
import { previewOf } from "../src/pane/preview";
import type { BedForm } from "../src/quantities/bed/form";
import type { BedLine } from "../src/sheets/job/jobBeds";

/**
 * A bed whose block shows what its inputs come to; a test of blocks holds the two equal.
 *
 * @param typed quantities that someone typed over, by their lines' keys.
 */
export function foundBed(form: BedForm, id: number, typed: Readonly<Record<string, number>> = {}): FoundBed {
  const preview = previewOf(form);
  if (!preview.estimate) throw new Error(preview.problems.map(({ message }) => message).join(" "));
  const { bed, plan, estimate } = preview;
  const lines = estimate.lines.map(
    ({ key, label, unit, amount, unitCost, kind }): BedLine => ({
      key,
      label,
      unit,
      unitCost,
      kind,
      quantity: typed[key] ?? amount,
      typed: key in typed,
    }),
  );
  const block = { sheet: "Beds", area: { row: 0, column: 0, rows: 1, columns: 9 }, name: form.name, form, lines };
  return {
    id: String(id),
    where: `Beds!A${id}`,
    tickedAtFirst: true,
    block: { ...block, price: estimate.price, salesTax: 0 },
    worked: { bed, plan, estimate },
    problem: undefined,
  };
}
