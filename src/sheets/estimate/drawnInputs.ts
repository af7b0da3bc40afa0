import { depthFields, type FieldKey, shapeFields, supplyFields } from "../../quantities/bed/fields";
import { type BedForm, givenCutOuts, textOf } from "../../quantities/bed/form";

const DRAWN = Object.keys({ ...shapeFields, ...depthFields, ...supplyFields }) as FieldKey[];

/** What the drawing of a bed rests on, as text: two texts differ where the drawings may. Prices are no part of it. */
export function drawnInputs(form: BedForm): string {
  const { name, way, widths, points } = form;
  return JSON.stringify([name, way, widths, points, givenCutOuts(form), DRAWN.map((key) => textOf(form, key))]);
}
