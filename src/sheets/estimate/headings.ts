import {
  crewFields,
  depthFields,
  type FieldKey,
  moneyFields,
  shapeFields,
  supplyFields,
} from "../../quantities/bed/fields";

/** The first cell of every estimate block, by which it is found again. */
export const BLOCK_TITLE = "Stone bed estimate";

/** The measured part is headed by how the bed was measured. */
export const MEASURED = "Measured: ";

/** Headings of the block's parts, as they stand in its first column. */
export const headings = {
  lines: "Lines",
  price: "Price",
  cautions: "Cautions: local codes, the ticket and licensed practice rule",
  stone: "Depth and stone",
  border: "Border and stakes",
  fabric: "Fabric and pins",
  digging: "Digging and hauling",
  crew: "Crew",
} as const;

const keysOf = (group: object) => Object.keys(group) as FieldKey[];

/** Which fields stand below which heading. The lines hold prices, which belong to their rows. */
export const fieldsBelow: Readonly<Record<string, readonly FieldKey[]>> = {
  [MEASURED]: keysOf(shapeFields),
  [headings.price]: keysOf(moneyFields),
  [headings.stone]: keysOf(depthFields),
  [headings.border]: keysOf(supplyFields),
  [headings.fabric]: keysOf(supplyFields),
  [headings.digging]: [...keysOf(depthFields), ...keysOf(supplyFields)],
  [headings.crew]: keysOf(crewFields),
};
