import { exampleStonePrices } from "../../quantities/bed/examples";
import { fields } from "../../quantities/bed/fields";
import { listSamples } from "../../quantities/bed/listSamples";
import { listOf } from "../../quantities/bed/officeLists";
import { rateLabel, rateNames, stoneListNames } from "../../quantities/bed/rates";
import { must } from "../../quantities/must";
import { type Anchor, areaAddress } from "../../spreadsheet/areas";
import { listHeadings } from "./listRows";
import { ratesSheet, type WantedRates } from "./ratesSheet";
import { STONE_HEADING } from "./stoneRows";

/** A list or a single rate that a Rates sheet lacks. */
export interface Addition {
  readonly label: string;
  /** Where it would go. */
  readonly address: string;
  /** What it starts with: the names of a list's sample rows, or a rate. */
  readonly starts: readonly string[];
}

/** What would be added to a Rates sheet, part by part, and all cells that it takes there. */
export interface Additions {
  readonly address: string;
  readonly parts: readonly Addition[];
}

/** What `ratesSheet` would write at a place, for a preview. */
export function additions(wanted: WantedRates, at: Anchor): Additions {
  const plan = ratesSheet(at, wanted);
  const address = (name: string, headings: number) => {
    const { row, rows } = must(plan.names?.find((one) => one.name === name)).area;
    const area = { row: at.row + row - headings, column: at.column, rows: rows + headings, columns: plan.columns };
    return areaAddress(area);
  };
  return {
    address: areaAddress({ ...at, rows: plan.rows, columns: plan.columns }),
    parts: [
      ...(wanted.stones
        ? [
            {
              label: STONE_HEADING,
              address: address(stoneListNames.kinds, 1),
              starts: exampleStonePrices.map(({ stone }) => stone),
            },
          ]
        : []),
      ...wanted.lists.map((key) => ({
        label: listHeadings[key],
        address: address(listOf(key).names, 1),
        starts: listSamples[key].map(({ name }) => name),
      })),
      ...wanted.keys.map((key) => ({
        label: rateLabel(key),
        address: address(rateNames[key], 0),
        starts: [`${fields[key].initial} ${fields[key].unit === "%" ? "" : fields[key].unit}`.trim()],
      })),
    ],
  };
}
