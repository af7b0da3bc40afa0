import { expect, test } from "vitest";
import { foundBed } from "../../../test/foundBed";
import { fields } from "../../quantities/bed/fields";
import { blankForm } from "../../quantities/bed/form";
import { type ListedRow, type Rates, rateKeys } from "../../quantities/bed/rates";
import { cheaperFabric } from "./cheaperFabric";
import { jobOf } from "./makePapers";

const roll = (name: string, rollWidth: string, rollLength: string, rollCost: string, isSample = false): ListedRow => {
  const cells = Object.entries({ rollWidth, rollLength, rollCost }).map(([key, text]) => [
    key,
    { text, isExample: false },
  ]);
  return { name, isSample, cells: Object.fromEntries(cells) };
};
function officeWith(...rows: readonly ListedRow[]): Rates {
  const byField = Object.fromEntries(rateKeys.map((key) => [key, { text: fields[key].initial, isExample: false }]));
  return { byField: byField as Rates["byField"], stones: [], lists: { fabric: { rows } } };
}
const bed = (id: number, name: string, length: string, width: string, typed = {}) =>
  foundBed({ ...blankForm(), name, typed: { length, width } }, id, typed);

// By hand: a strip of 40 ft and one of 45 ft take 2 rolls of 50 ft, 128; or 1 roll of 100 ft, as wide.
const beds = [bed(1, "Front", "40", "5"), bed(2, "Side", "45", "5")];
const long = roll("6 ft × 100 ft", "6", "100", "90");

test("one roll for two beds is said beside the two on the order", () => {
  expect(cheaperFabric(jobOf(beds), officeWith(long))).toBe(
    "Fabric: 1 roll of “6 ft × 100 ft” for Front and Side would cost $90.00, $38.00 less than on this order.",
  );
});

test("it says when no roll of the list does it for less", () => {
  const same = roll("6 ft × 50 ft", "6", "50", "64");
  expect(cheaperFabric(jobOf(beds), officeWith(same, roll("Gold", "6", "100", "400")))).toBe(
    "Fabric: no other rolls of your list cover these beds for less.",
  );
});

test("nothing is said without a list of the office's own, or where the rolls were typed over", () => {
  expect(cheaperFabric(jobOf(beds), undefined)).toBeUndefined();
  expect(cheaperFabric(jobOf(beds), officeWith({ ...long, isSample: true }))).toBeUndefined();
  const typed = bed(1, "Front", "40", "5", { fabric: 3 });
  expect(cheaperFabric(jobOf([typed]), officeWith(long))).toBeUndefined();
});
