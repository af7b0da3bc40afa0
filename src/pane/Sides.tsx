import { edgingOf, shapeFieldsOf, textOf } from "../quantities/bed/form";
import {
  type Fills,
  type Pick as Picked,
  pickedSecondSides,
  pickedSides,
  sideFieldsOf,
} from "../quantities/bed/pickSides";
import { BedField } from "./Field";
import type { MeasurementsProps } from "./Measurements";

interface SidesProps extends Omit<MeasurementsProps, "onChange"> {
  readonly onFill: (fills: Fills) => void;
}

/** Along which sides edging is set. The drawing below picks them, too. */
export function Sides({ form, problemAt, onType, onFill }: SidesProps) {
  // What a workbook holds for a side that is neither 1 nor 0 is fixed where it can be read.
  const wrong = shapeFieldsOf(form).filter((key) => sideFieldsOf(form).includes(key) && problemAt(key));
  const sides = pickedSides(form);
  // The front and the edge that faces the lawn come first, as edging does there.
  const shown = (edgingOf(form).drawn === "none" ? [] : [2, 0, 1, 3]).flatMap((side) => sides[side] ?? []);
  const seconds = pickedSecondSides(form);
  const second = [2, 0, 1, 3].flatMap((side) => seconds[side] ?? []);
  return (
    <>
      {wrong.length > 0 && (
        <div class="pairs">
          {wrong.map((field) => (
            <BedField
              key={field}
              field={field}
              value={textOf(form, field)}
              problem={problemAt(field)}
              onType={onType}
            />
          ))}
        </div>
      )}
      {shown.length > 0 && <Ticks legend="Edging along, or click the drawing" picks={shown} onFill={onFill} />}
      {second.length > 0 && <Ticks legend="Second edging along" picks={second} onFill={onFill} />}
    </>
  );
}

interface TicksProps {
  readonly legend: string;
  readonly picks: readonly Picked[];
  readonly onFill: (fills: Fills) => void;
}

/** Check boxes of what can be picked on the drawing. */
export function Ticks({ legend, picks, onFill }: TicksProps) {
  return (
    <fieldset class="edged">
      <legend>{legend}</legend>
      {picks.map(({ label, isOn, fills }) => (
        <label key={label} class="tick">
          <input type="checkbox" checked={isOn} onChange={() => onFill(fills)} />
          {label}
        </label>
      ))}
    </fieldset>
  );
}
