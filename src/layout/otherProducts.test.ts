import { expect, test } from "vitest";
import { estimateBed } from "../quantities/bed/estimate";
import { type FieldKey, fields } from "../quantities/bed/fields";
import { type BedForm, blankForm } from "../quantities/bed/form";
import type { ListKey } from "../quantities/bed/officeLists";
import { type ListedRow, type Rate, type Rates, rateKeys } from "../quantities/bed/rates";
import { readForm } from "../quantities/bed/read";
import { otherProducts } from "./otherProducts";

const own = (text: string): Rate => ({ text, isExample: false });
const row = (name: string, cells: Readonly<Partial<Record<FieldKey, string>>>, isSample = false): ListedRow => ({
  name,
  isSample,
  cells: Object.fromEntries(Object.entries(cells).map(([key, text]) => [key, own(text)])),
});

/** An office that has typed all its prices, with lists of its own. */
function officeWith(lists: Readonly<Partial<Record<ListKey, readonly ListedRow[]>>>, isExample = false): Rates {
  const byField = Object.fromEntries(rateKeys.map((key) => [key, { text: fields[key].initial, isExample }]));
  const listed = Object.entries(lists).map(([key, rows]) => [key, { rows }]);
  return { byField: byField as Rates["byField"], stones: [], lists: Object.fromEntries(listed) };
}

function offered(typed: BedForm["typed"], rates: Rates) {
  const form = { ...blankForm(), typed: { length: "27", width: "11", ...typed }, rates };
  return otherProducts(form, estimateBed(readForm(form).bed!));
}

// By hand: 11 ft takes 2 strips of 6 ft, 54 ft and a lap, so 2 rolls of 50 ft for 64, or 1 of 100 ft for 100.
test("a longer roll that costs less for this bed is offered, with what it saves", () => {
  const long = row("6 ft × 100 ft", { rollWidth: "6", rollLength: "100", rollCost: "100" });
  expect(offered({}, officeWith({ fabric: [long] }))).toEqual([
    { text: "Your list of fabric also has “6 ft × 100 ft”.", by: "Using it here", saves: expect.closeTo(28, 9) },
  ]);
  const dear = row("6 ft × 100 ft", { rollWidth: "6", rollLength: "100", rollCost: "120" });
  expect(offered({}, officeWith({ fabric: [dear] })), "8 less is not worth a word").toEqual([]);
});

// By hand: one load of up to 10 cu yd for 45 + 30 in place of the 2 or more that 5 cu yd and 2.5 tons take.
test("so is a larger truck, and of several the one that saves most", () => {
  const trucks = [
    row("Small", { haulCost: "40", dumpFee: "30" }),
    row("Large", { haulCost: "45", dumpFee: "30", truckYards: "12", truckPayload: "12" }),
  ];
  expect(offered({}, officeWith({ haul: trucks })).map(({ text }) => text)).toEqual([
    "Your list of haul-off trucks also has “Large”.",
  ]);
});

test("edging of another height, a sample, and what is in use already are not offered", () => {
  const tall = row("Tall", { borderHeight: "6", trenchDepth: "2.5", pieceLength: "8", pieceCost: "1" });
  const sample = row("Sample", { borderHeight: "4", trenchDepth: "1.5", pieceLength: "8", pieceCost: "1" }, true);
  const inUse = row("House steel", { borderHeight: "4", trenchDepth: "1.5", pieceLength: "8", pieceCost: "1" });
  const edging = officeWith({ edging: [tall, sample, inUse] });
  expect(offered({ edgingProduct: "house steel" }, edging)).toEqual([]);
  expect(offered({}, edging).map(({ text }) => text)).toEqual(["Your list of edging also has “House steel”."]);
  expect(offered({ edgingKind: "timber" }, edging)).toEqual([]);
});

test("nothing is compared with a sample price, with one that was typed for this bed, or without a list", () => {
  const long = row("6 ft × 100 ft", { rollWidth: "6", rollLength: "100", rollCost: "100" });
  expect(offered({}, officeWith({ fabric: [long] }, true))).toEqual([]);
  expect(offered({ rollCost: "64" }, officeWith({ fabric: [long] }))).toEqual([]);
  expect(offered({}, officeWith({}))).toEqual([]);
});
