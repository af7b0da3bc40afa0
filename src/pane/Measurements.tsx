import type { FieldKey, ShapeFieldKey } from "../quantities/bed/fields";
import { type BedForm, textOf, type Way } from "../quantities/bed/form";
import type { FormPlace } from "../quantities/bed/read";
import type { ChoicesProps } from "./Choices";
import { Fetched } from "./Fetched";
import { BedField, TextField } from "./Field";
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

const sides = async () => (await import(/* webpackChunkName: "below" */ "./Sides")).Sides;
const lists = async () => (await import(/* webpackChunkName: "lists" */ "./lists/Lists")).Lists;

/** How the bed was measured, and what was taped. */
export function Measurements({
  form,
  problemAt,
  onChange,
  onType,
  onFill,
}: MeasurementsProps & Pick<ChoicesProps, "onFill">) {
  return (
    <section aria-label="The bed">
      <TextField
        label="Bed name"
        value={form.name}
        placeholder="such as Front walk"
        onType={(name) => onChange({ name })}
      />
      <Ways way={form.way} onChoose={(way) => onChange({ way })} />
      <div class="pairs">
        {tapedFields[form.way].map((field) => (
          <BedField
            key={field}
            field={field}
            {...(field === "edge" && { label: "Edging length" })}
            value={textOf(form, field)}
            problem={problemAt(field)}
            onType={onType}
          />
        ))}
      </div>
      {(form.way === "widths" || form.way === "points") && (
        <Fetched part={lists} given={{ form, problemAt, onChange }} />
      )}
      <Fetched part={sides} given={{ form, problemAt, onType, onFill }} />
    </section>
  );
}

export type ListProps = Pick<MeasurementsProps, "form" | "problemAt" | "onChange">;
