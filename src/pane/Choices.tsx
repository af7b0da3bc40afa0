import { borderChoices, type Choice, fabricChoices, stoneChoices } from "../quantities/bed/choices";
import type { FieldKey } from "../quantities/bed/fields";
import { type BedForm, textOf } from "../quantities/bed/form";
import { Select } from "./Select";

interface ChoicesProps {
  readonly form: BedForm;
  readonly onFill: (fills: Readonly<Partial<Record<FieldKey, string>>>) => void;
}

/** Which stone, border and roll: each fills the fields further down, which stay open to change. */
export function Choices({ form, onFill }: ChoicesProps) {
  return (
    <section aria-labelledby="choices-heading">
      <h2 id="choices-heading">Stone, border, fabric</h2>
      <ChoiceSelect label="Stone" choices={stoneChoices} form={form} onFill={onFill} />
      <ChoiceSelect label="Border" choices={borderChoices} form={form} onFill={onFill} />
      <ChoiceSelect label="Fabric roll" choices={fabricChoices} form={form} onFill={onFill} />
    </section>
  );
}

const OWN = "own";

function ChoiceSelect({ label, choices, form, onFill }: ChoicesProps & { label: string; choices: readonly Choice[] }) {
  const chosen = choices.find(({ fills }) =>
    Object.entries(fills).every(([key, text]) => textOf(form, key as FieldKey) === text),
  );
  const options = choices.map(({ name }) => ({ value: name, label: name }));
  return (
    <Select
      label={label}
      value={chosen?.name ?? OWN}
      options={chosen ? options : [{ value: OWN, label: "Own values, below" }, ...options]}
      onChoose={(name) => {
        const choice = choices.find((other) => other.name === name);
        if (choice) onFill(choice.fills);
      }}
    />
  );
}
