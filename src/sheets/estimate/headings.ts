import { type FieldKey, fields, shapeFields } from "../../quantities/bed/fields";
import { type PartKey, parts } from "../../quantities/bed/parts";

/** The first cell of every estimate block, by which it is found again. */
export const BLOCK_TITLE = "Stone bed estimate";

/** The measured part is headed by how the bed was measured. */
export const MEASURED = "Measured: ";

/** Headings of the block's parts, as they are in its first column. */
export const headings = {
  lines: "Lines",
  price: "Price",
  cautions: "Cautions: local codes, the locate ticket, and licensed professionals come first",
  stone: "Depth and stone",
  border: "Edging and stakes",
  fabric: "Fabric and pins",
  digging: "Digging and hauling",
  crew: "Crew",
} as const;

/** Which fields are below which heading. The lines hold prices, which belong to their rows. */
export const fieldsBelow: Readonly<Record<string, readonly FieldKey[]>> = {
  [MEASURED]: Object.keys(shapeFields) as FieldKey[],
  ...Object.fromEntries(
    (Object.keys(parts) as PartKey[]).map((part) => [headings[part], parts[part].filter((key) => key in fields)]),
  ),
};
