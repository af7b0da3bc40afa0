import type { FieldKey } from "../quantities/bed/fields";
import { type BedForm, hasPlan, type PointText, shapeFieldsOf, textOf, type Way, ways } from "../quantities/bed/form";
import type { FormPlace } from "../quantities/bed/read";
import { Button } from "./Button";
import { CutOuts } from "./CutOuts";
import { BedField, readsAs, TextField } from "./Field";
import { Select } from "./Select";

export interface MeasurementsProps {
  readonly form: BedForm;
  readonly problemAt: (place: FormPlace) => string | undefined;
  readonly onChange: (changes: Partial<BedForm>) => void;
  readonly onType: (field: FieldKey, text: string) => void;
}

const wayOptions = Object.entries(ways).map(([value, { label }]) => ({ value, label }));

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
      {form.way === "widths" && <Widths form={form} problemAt={problemAt} onChange={onChange} />}
      {form.way === "points" && <Points form={form} problemAt={problemAt} onChange={onChange} />}
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

function Widths({ form, problemAt, onChange }: ListProps) {
  const change = (index: number, text: string) =>
    onChange({ widths: form.widths.map((width, at) => (at === index ? text : width)) });
  return (
    <fieldset>
      <legend>Widths, from one end to the other</legend>
      <div class="pairs">
        {form.widths.map((width, index) => (
          <TextField
            // biome-ignore lint/suspicious/noArrayIndexKey: a width is its place along the base line
            key={index}
            label={`Width ${index + 1}`}
            unit="ft"
            value={width}
            note={readsAs(width, "ft")}
            problem={problemAt(`width${index + 1}`)}
            onType={(text) => change(index, text)}
          />
        ))}
      </div>
      <p class="row">
        <Button onPress={() => onChange({ widths: [...form.widths, ""] })}>Add a width</Button>
        <Button off={form.widths.length <= 2} onPress={() => onChange({ widths: form.widths.slice(0, -1) })}>
          Remove
        </Button>
      </p>
      <p class="below">Type 0 where the bed comes to a point.</p>
    </fieldset>
  );
}

function Points({ form, problemAt, onChange }: ListProps) {
  const change = (index: number, point: PointText) =>
    onChange({ points: form.points.map((other, at) => (at === index ? point : other)) });
  return (
    <fieldset>
      <legend>Corners, in order around the bed</legend>
      {form.points.map(([x, y, border], index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a corner is its place in the order
        <div class="pairs" key={index}>
          <TextField
            label={`Point ${index + 1}, x`}
            unit="ft"
            value={x}
            note={readsAs(x, "ft")}
            problem={problemAt(`point${index + 1}.x`)}
            onType={(text) => change(index, [text, y, border])}
          />
          <TextField
            label={`Point ${index + 1}, y`}
            unit="ft"
            value={y}
            note={readsAs(y, "ft")}
            problem={problemAt(`point${index + 1}.y`)}
            onType={(text) => change(index, [x, text, border])}
          />
          <label class="tick">
            <input
              type="checkbox"
              checked={border === "1"}
              onChange={(event) => change(index, [x, y, event.currentTarget.checked ? "1" : "0"])}
            />
            Border from point {index + 1} to {index + 1 < form.points.length ? `point ${index + 2}` : "point 1"}
          </label>
        </div>
      ))}
      <p class="row">
        <Button onPress={() => onChange({ points: [...form.points, ["", "", "1"]] })}>Add a corner</Button>
        <Button off={form.points.length <= 3} onPress={() => onChange({ points: form.points.slice(0, -1) })}>
          Remove
        </Button>
      </p>
    </fieldset>
  );
}
