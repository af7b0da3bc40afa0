import type { FieldKey, ShapeFieldKey } from "../quantities/bed/fields";
import { type BedForm, textOf, type Way } from "../quantities/bed/form";
import type { FormPlace } from "../quantities/bed/read";
import { Fetched } from "./Fetched";
import { BedField, TextField } from "./Field";
import { pickedFields, Sides } from "./Sides";
import { Ways } from "./Ways";

export interface MeasurementsProps {
  readonly form: BedForm;
  readonly problemAt: (place: FormPlace) => string | undefined;
  readonly onChange: (changes: Partial<BedForm>) => void;
  readonly onType: (field: FieldKey, text: string) => void;
}

/** What is taped of every bed of a way. The other fields of its shape are folded, see MoreShape. */
export const tapedFields: Readonly<Record<Way, readonly ShapeFieldKey[]>> = {
  rectangle: ["length", "width"],
  round: ["diameter", "innerDiameter"],
  widths: ["spacing"],
  points: [],
  area: ["area", "edge", "longest", "widest"],
};

/** Fields that count sides with edging: picked on the drawing, unless what is in them is no such count. */
export const sideFields: Readonly<Record<Way, readonly ShapeFieldKey[]>> = {
  rectangle: ["longBorders", "shortBorders"],
  round: ["innerBorder"],
  widths: ["endBorders"],
  points: [],
  area: [],
};

const lists = async () => (await import(/* webpackChunkName: "lists" */ "./lists/Lists")).Lists;

/** How the bed was measured, and what was taped. */
export function Measurements({ form, problemAt, onChange, onType }: MeasurementsProps) {
  const picked = pickedFields(form);
  const typedSides = sideFields[form.way].filter(
    (field) => !picked.has(field) && (form.way !== "round" || problemAt(field)),
  );
  return (
    <section aria-label="The bed">
      <TextField
        label="Bed name"
        value={form.name}
        placeholder="such as Front walk"
        onType={(name) => onChange({ name })}
      />
      <Ways way={form.way} onChoose={(way) => onChange({ way })} />
      <div class="taped">
        <div class="grow">
          {[...tapedFields[form.way], ...typedSides].map((field) => (
            <BedField
              key={field}
              field={field}
              value={textOf(form, field)}
              problem={problemAt(field)}
              onType={onType}
            />
          ))}
        </div>
        <Sides form={form} onType={onType} />
      </div>
      {(form.way === "widths" || form.way === "points") && (
        <Fetched part={lists} given={{ form, problemAt, onChange }} />
      )}
    </section>
  );
}

export type ListProps = Pick<MeasurementsProps, "form" | "problemAt" | "onChange">;
