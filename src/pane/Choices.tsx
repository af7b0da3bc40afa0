import { borderChoices, type Choice, fabricChoices, stoneChoices } from "../quantities/bed/choices";
import type { FieldKey } from "../quantities/bed/fields";
import { type BedForm, textOf } from "../quantities/bed/form";
import { isRate } from "../quantities/bed/rates";
import { Select } from "./Select";

export interface ChoicesProps {
  readonly form: BedForm;
  /** Fills fields; undefined gives one back to the office's rate. */
  readonly onFill: (fills: Readonly<Partial<Record<FieldKey, string | undefined>>>) => void;
}

/** Which stone and edging: each fills the fields further down, which stay open to change. */
export function Choices({ form, onFill }: ChoicesProps) {
  return (
    <section class="pairs" aria-label="Stone and edging">
      <ChoiceSelect label="Stone" choices={[...stoneChoices, ...ownStones(form)]} form={form} onFill={onFill} />
      <ChoiceSelect label="Edging" choices={borderChoices} form={form} onFill={onFill} />
    </section>
  );
}

/** Which roll of fabric, in the same way. */
export function FabricChoice({ form, onFill }: ChoicesProps) {
  return <ChoiceSelect label="Fabric roll" choices={fabricChoices} form={form} onFill={onFill} />;
}

/** Kinds of stone that the office has added to its rates; how large they are is for the person to say. */
function ownStones({ rates }: BedForm): Choice[] {
  const ready = new Set(stoneChoices.map(({ fills }) => fills.stone));
  return (rates?.stones ?? [])
    .filter(({ name }) => !ready.has(name.toLowerCase()))
    .map(({ name }) => ({ name: `${name}, from Rates`, fills: { stone: name } }));
}

const OWN = "own";
const RATES = "rates";

function ChoiceSelect({ label, choices, form, onFill }: ChoicesProps & { label: string; choices: readonly Choice[] }) {
  const fromRates = form.rates
    ? [...new Set(choices.flatMap(({ fills }) => Object.keys(fills) as FieldKey[]))].filter(isRate)
    : [];
  const followsRates = fromRates.length > 0 && fromRates.every((key) => form.typed[key] === undefined);
  const chosen = followsRates
    ? RATES
    : choices.find(({ fills }) => Object.entries(fills).every(([key, text]) => textOf(form, key as FieldKey) === text))
        ?.name;
  const options = [
    ...(chosen === undefined ? [{ value: OWN, label: "Custom, below" }] : []),
    ...(fromRates.length > 0 ? [{ value: RATES, label: "From Rates" }] : []),
    ...choices.map(({ name }) => ({ value: name, label: name })),
  ];
  return (
    <Select
      label={label}
      value={chosen ?? OWN}
      options={options}
      onChoose={(name) => {
        const choice = choices.find((other) => other.name === name);
        if (choice) onFill(choice.fills);
        else if (name === RATES) onFill(Object.fromEntries(fromRates.map((key) => [key, undefined])));
      }}
    />
  );
}
