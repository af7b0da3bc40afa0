import type { BedForm } from "../quantities/bed/form";
import { type Fills, type Pick, pickedSides } from "../quantities/bed/pickSides";

/** Along which sides edging is set. The drawing below picks them, too. */
export function Sides({ form, onFill }: { readonly form: BedForm; readonly onFill: (fills: Fills) => void }) {
  const sides = pickedSides(form);
  // The front and the edge that faces the lawn come first, as edging does there.
  const shown = [2, 0, 1, 3].flatMap((side) => sides[side] ?? []);
  return shown.length > 0 ? <Ticks legend="Edging along, or click the drawing" picks={shown} onFill={onFill} /> : null;
}

interface TicksProps {
  readonly legend: string;
  readonly picks: readonly Pick[];
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
