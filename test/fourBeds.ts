import type { FieldKey } from "../src/quantities/bed/fields";
import { type BedForm, blankForm } from "../src/quantities/bed/form";

/** Invented prices of the jobs that are worked out by hand. */
export const PRICES: Readonly<Partial<Record<FieldKey, string>>> = {
  ...{ crewRate: "50", haulCost: "50", dumpFee: "30", deliveryCost: "80" },
  ...{ pieceCost: "25", stakeCost: "2", rollCost: "60", pinBoxCost: "20", stoneCost: "60" },
  ...{ laborMarkup: "40%", materialMarkup: "20%", haulingMarkup: "10%" },
  ...{ overhead: "10%", minimumCharge: "400", salesTax: "7%" },
};
export const PEA = { stone: "pea gravel", stoneSize: "3/8", stoneCost: "70" };
export const GRANITE = { stone: "crushed granite", stoneSize: "0.75", stoneCost: "55" };

/**
 * Four beds of one customer: a wall strip, a walk with two rounded corners, a ring, and a kidney with a pad.
 *
 * @param more typed into each of them; @param kidney into the last.
 */
export function fourBeds(more: BedForm["typed"] = {}, kidney: BedForm["typed"] = PEA): BedForm[] {
  const form = (name: string, { typed, ...shape }: Partial<BedForm>, last: BedForm["typed"] = {}): BedForm => ({
    ...blankForm(),
    ...shape,
    name,
    typed: { ...PRICES, ...typed, ...more, ...last },
  });
  return [
    form("Wall strip", { typed: { length: `32' 6 1/2"`, width: "3" } }),
    form("Walk", { typed: { length: `18' 6"`, width: "5", cornerRadius: "2", roundedCorners: "2" } }),
    form("Tree ring", { way: "round", typed: { diameter: "8", innerDiameter: "2" } }),
    form(
      "Kidney",
      {
        way: "widths",
        typed: { spacing: "4" },
        widths: ["0", "3", "6", "3", "6", "3", "0"],
        cutOuts: [["8", "2", "2", "3"]],
      },
      kidney,
    ),
  ];
}

/** What the estimator adds to their job: three hours for the shrubs, set-up, a discount, and a deposit. */
export const SHRUBS = {
  label: "Remove old shrubs",
  unit: "labor hours",
  quantity: 3,
  unitCost: 50,
  kind: "labor",
} as const;
export const FOUR_BEDS_MORE = { setUpHours: 1.5, discountShare: 0.05, depositShare: 0.3 };
