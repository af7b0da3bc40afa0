import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type FieldKey, fields } from "../../src/quantities/bed/fields";
import { lines } from "../../src/quantities/bed/lines";
import { listSamples } from "../../src/quantities/bed/listSamples";
import { type ListKey, listFields, listKeys, listOf, listWhose } from "../../src/quantities/bed/officeLists";
import { sampleRows } from "../../src/sheets/rates/sampleRows";
import { undoChanges, writeChanges } from "../../src/workbook/change/cells";
import { readRateCells } from "../../src/workbook/read/rates";
import { blockAddress } from "../blockAddress";
import type { HeadlessHost } from "../headlessHost";
import { insertRates, rateAddress } from "../insertRates";
import { createProductHost } from "../productHost";
import { type Block, formWithRates, insertBlock, paneEstimate } from "../ratesBench";

/** What each sample row holds: prices are invented, sizes common in the trade, from memory of catalogs. */
const samples: Readonly<Record<ListKey, Readonly<Record<string, Partial<Record<FieldKey, number>>>>>> = {
  edging: {
    "Steel, 4 in, 8 ft pieces": { pieceCost: 24, borderHeight: 4, trenchDepth: 1.5, pieceLength: 8, stakesPerPiece: 3 },
    "Steel, 6 in, 10 ft pieces": {
      pieceCost: 41,
      borderHeight: 6,
      trenchDepth: 2.5,
      pieceLength: 10,
      stakesPerPiece: 4,
    },
    "Aluminum, 4 in, 8 ft pieces": {
      pieceCost: 19,
      borderHeight: 4,
      trenchDepth: 1.5,
      pieceLength: 8,
      stakesPerPiece: 3,
    },
    "Aluminum, 5 1/2 in, 16 ft pieces": {
      pieceCost: 47,
      borderHeight: 5.5,
      trenchDepth: 2,
      pieceLength: 16,
      stakesPerPiece: 5,
    },
  },
  fabric: {
    "6 ft × 50 ft": { rollCost: 64, rollWidth: 6, rollLength: 50 },
    "4 ft × 50 ft": { rollCost: 44, rollWidth: 4, rollLength: 50 },
    "4 ft × 100 ft": { rollCost: 80, rollWidth: 4, rollLength: 100 },
    "3 ft × 100 ft": { rollCost: 62, rollWidth: 3, rollLength: 100 },
  },
  pins: {
    "Pins, box of 100": { pinBoxCost: 18, pinsPerBox: 100 },
    "Pins, box of 500": { pinBoxCost: 76, pinsPerBox: 500 },
  },
  haul: {
    "Dump trailer": { haulCost: 45, dumpFee: 30, truckYards: 5, truckPayload: 2.5 },
    "Single-axle dump": { haulCost: 95, dumpFee: 55, truckYards: 7, truckPayload: 6 },
  },
  delivery: {
    "Yard's truck": { deliveryCost: 90, deliveryYards: 10, deliveryPayload: 8 },
    "Own trailer": { deliveryCost: 55, deliveryYards: 5, deliveryPayload: 2.5 },
  },
  crew: {
    "Two people": { crewRate: 48, crewSize: 2 },
    "Foreman and two": { crewRate: 52, crewSize: 3 },
  },
};

/** A row of an office's own, each figure unlike the single rate. */
const own: Readonly<Partial<Record<FieldKey, number>>> = {
  ...{ pieceCost: 33.5, borderHeight: 5, trenchDepth: 2, pieceLength: 7, stakesPerPiece: 1, stakeCost: 3.1 },
  ...{ rollCost: 71, rollWidth: 3, rollLength: 20, pinBoxCost: 21, pinsPerBox: 30 },
  ...{ haulCost: 61, dumpFee: 38, truckYards: 0.4, truckPayload: 0.3 },
  ...{ deliveryCost: 77, deliveryYards: 0.5, deliveryPayload: 0.6, crewRate: 57, crewSize: 4 },
};
const OWN_NAME = "Miller’s best";

let host: HeadlessHost;
let sheet: string;
let block: Block;
beforeAll(async () => {
  host = await createProductHost();
  sheet = await insertRates();
  block = await insertBlock(host, await formWithRates());
});
afterAll(() => host.dispose());

/** The block's cell of a field. */
function cellOf(key: FieldKey): string {
  const line = key === "crewRate" ? undefined : lines.find(({ cost }) => cost === key);
  return line ? `${line.key}.unitCost` : key;
}
/** The first blank row of a list, and a cell of it. */
const ownCell = (list: ListKey, name: string) =>
  `${sheet}!${blockAddress(rateAddress(name), listSamples[list].length)}`;

/** What a bed comes to in the pane and in the block, without the names of its rows. */
async function bothEqual(picked: Record<string, string>, typed: Readonly<Record<string, number>>): Promise<void> {
  const byHand = paneEstimate(
    await formWithRates(Object.fromEntries(Object.entries(typed).map(([key, figure]) => [key, String(figure)]))),
  );
  expect(paneEstimate(await formWithRates(picked))).toEqual(byHand);
  for (const [key, figure] of Object.entries(typed)) expect(block.value(cellOf(key as FieldKey)), key).toBe(figure);
  expect(block.value("priceWithTax")).toBeCloseTo(byHand.priceWithTax, 9);
  expect(block.value("crewDays")).toBeCloseTo(byHand.crewDays, 9);
  for (const { key, amount, priceSum } of byHand.lines) {
    expect(block.value(`${key}.quantity`), key).toBeCloseTo(amount, 9);
    expect(block.value(`${key}.price`), key).toBeCloseTo(priceSum, 9);
  }
}

describe.each(listKeys)("the office's list of %s", (list) => {
  const { picks } = listOf(list);

  test("starts with rows that come to the same by name as by hand", async () => {
    expect(listSamples[list].map(({ name }) => name)).toEqual(Object.keys(samples[list]));
    for (const [name, figures] of Object.entries(samples[list])) {
      await block.type(picks, name);
      await bothEqual({ [picks]: name }, figures);
      expect(block.value(`${picks}.note`)).toBe("usual, or a name from the list in Rates");
    }
    await block.type(picks, "usual");
  });

  test("takes a row of the office's own, and each of its columns", async () => {
    const keys = listFields(list);
    const cells = Object.fromEntries(
      keys.map((key) => [ownCell(list, listOf(list).columns[key]!), own[key]!] as const),
    );
    const name = ownCell(list, listOf(list).names);
    await host.type({ [name]: OWN_NAME, ...cells });
    expect(host.value(ownCell(list, listWhose(listOf(list))))).toBe("own");
    await block.type(picks, ` ${OWN_NAME.toUpperCase()} `);
    await bothEqual({ [picks]: OWN_NAME }, Object.fromEntries(keys.map((key) => [key, own[key]!])));
    for (const key of keys) {
      const single = Number(fields[key].initial);
      // Without its figure, the single rate counts.
      await host.type({ [ownCell(list, listOf(list).columns[key]!)]: "" });
      await bothEqual(
        { [picks]: OWN_NAME },
        Object.fromEntries(keys.map((one) => [one, one === key ? single : own[one]!])),
      );
      await host.type({ [ownCell(list, listOf(list).columns[key]!)]: own[key]! });
    }
    await host.type({ ...Object.fromEntries(Object.keys(cells).map((cell) => [cell, ""])), [name]: "" });
    await block.type(picks, "usual");
  });

  test("says of a name that it doesn't have that the usual rates count", async () => {
    await block.type(picks, "Nothing of ours");
    expect(block.value(`${picks}.note`)).toBe("Not in the list in Rates, so the usual rates count.");
    await bothEqual({ [picks]: "Nothing of ours" }, {});
    await block.type(picks, "usual");
  });
});

test("sample rows are cleared, in every list, a row of the office's own stays, and undo brings them back", async () => {
  await host.type({
    [ownCell("edging", "Rate_edging_names")]: OWN_NAME,
    [ownCell("edging", "Rate_edging_prices")]: 33,
  });
  const before = (await readRateCells())!;
  const rows = sampleRows(before.named);
  const stones = before.found.rates.stones.map(({ name }) => name);
  expect(rows.map(({ name }) => name.toLowerCase())).toEqual(
    [...stones, ...listKeys.flatMap((key) => listSamples[key].map(({ name }) => name))].map((name) =>
      name.toLowerCase(),
    ),
  );
  const written = await writeChanges(
    "clear sample rows",
    rows.flatMap(({ changes }) => changes),
  );
  const { named, found } = (await readRateCells())!;
  expect(sampleRows(named)).toEqual([]);
  expect(found.rates.stones).toEqual([]);
  const left = listKeys.flatMap((key) => found.rates.lists?.[key]?.rows ?? []);
  expect(left.map(({ name }) => name)).toEqual([OWN_NAME]);
  // The formula that says whose a row is goes on for the row that comes there.
  await host.type({ [`${sheet}!${blockAddress(rateAddress("Rate_fabric_names"), 0)}`]: "House fabric" });
  await host.type({ [`${sheet}!${blockAddress(rateAddress("Rate_fabric_prices"), 0)}`]: 58 });
  expect(host.value(`${sheet}!${blockAddress(rateAddress("Whose_fabric_names"), 0)}`)).toBe("own");
  await host.type({ [`${sheet}!${blockAddress(rateAddress("Rate_fabric_names"), 0)}`]: "" });
  await host.type({ [`${sheet}!${blockAddress(rateAddress("Rate_fabric_prices"), 0)}`]: "" });
  await undoChanges(written);
  expect((await readRateCells())!.found).toEqual(before.found);
});
