import type { FieldKey } from "../quantities/bed/fields";
import { type BedForm, hasPlan, shapeFieldsOf, textOf, type Way, ways } from "../quantities/bed/form";
import type { FormPlace } from "../quantities/bed/read";
import { CutOuts } from "./CutOuts";
import { Fetched } from "./Fetched";
import { BedField, TextField } from "./Field";
import { Select } from "./Select";

export interface MeasurementsProps {
  readonly form: BedForm;
  readonly problemAt: (place: FormPlace) => string | undefined;
  readonly onChange: (changes: Partial<BedForm>) => void;
  readonly onType: (field: FieldKey, text: string) => void;
}

const wayOptions = Object.entries(ways).map(([value, { label }]) => ({ value, label }));

const lists = async () => (await import(/* webpackChunkName: "lists" */ "./lists/Lists")).Lists;

/** How the bed was measured, and what was taped. */
export function Measurements({ form, problemAt, onChange, onType }: MeasurementsProps) {
  return (
    <section aria-labelledby="measured-heading">
      <h2 id="measured-heading">The bed</h2>
      <TextField
        label="Bed name"
        value={form.name}
        placeholder="such as Front walk"
        onType={(name) => onChange({ name })}
      />
      <Select
        label="How it was measured"
        value={form.way}
        options={wayOptions}
        note={ways[form.way].hint}
        onChoose={(way) => onChange({ way: way as Way })}
      />
      {(form.way === "widths" || form.way === "points") && (
        <Fetched part={lists} given={{ form, problemAt, onChange }} />
      )}
      {hasPlan(form.way) && <CutOuts form={form} problemAt={problemAt} onChange={onChange} />}
      <div class="pairs">
        {shapeFieldsOf(form.way).map((field) => (
          <BedField key={field} field={field} value={textOf(form, field)} problem={problemAt(field)} onType={onType} />
        ))}
      </div>
    </section>
  );
}

export type ListProps = Pick<MeasurementsProps, "form" | "problemAt" | "onChange">;
