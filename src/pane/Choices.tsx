import { borderChoices, type Choice, fabricChoices, fillsAfter, stoneChoices } from "../quantities/bed/choices";
import type { FieldKey } from "../quantities/bed/fields";
import { type BedForm, textOf } from "../quantities/bed/form";
import type { ListKey } from "../quantities/bed/officeLists";
import { isPriced, isRate } from "../quantities/bed/rates";
import { EDGING_KINDS, METAL } from "../quantities/edgingKinds";
import { STONES } from "../quantities/stone";
import { listChoices, listChosen } from "./listChoices";
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
      <ChoiceSelect
        label="Stone"
        choices={[...stoneChoices, ...otherStones, ...ownStones(form)]}
        form={form}
        onFill={onFill}
      />
      <ListSelect label="Edging" list="edging" ready={borderChoices} more={otherEdging} form={form} onFill={onFill} />
    </section>
  );
}

/** Which roll of fabric, in the same way. */
export function FabricChoice({ form, onFill }: ChoicesProps) {
  return <ListSelect label="Fabric roll" list="fabric" ready={fabricChoices} form={form} onFill={onFill} />;
}

interface ListSelectProps extends ChoicesProps {
  readonly label: string;
  readonly list: ListKey;
  /** What is offered where the office has no list of its own. */
  readonly ready: readonly Choice[];
  /** What else is offered, whatever is on the list. */
  readonly more?: readonly Choice[];
}

/** A choice among the rows of the office's list; its own prices never give way to a ready choice's. */
function ListSelect({ label, list, ready, more = [], form, onFill }: ListSelectProps) {
  const listed = listChoices(form, list);
  if (!listed) {
    const usual = form.rates ? ready.map(withoutPrices) : ready;
    return <ChoiceSelect label={label} choices={[...usual, ...more]} form={form} onFill={onFill} />;
  }
  const rows = listed.map(({ label: name, fills }) => ({ name, fills: { ...notSaid(more), ...fills } }));
  const choices = [...rows, ...more.map(({ name, fills }) => ({ name, fills: { ...rows[0]?.fills, ...fills } }))];
  const other = more.findIndex(({ fills }) => isIn(form, fills));
  const chosen = other < 0 ? listChosen(form, list) : rows.length + other;
  return (
    <Select
      label={label}
      value={chosen === undefined ? OWN : String(chosen)}
      options={[
        ...(chosen === undefined ? [CUSTOM] : []),
        ...choices.map(({ name }, index) => ({ value: String(index), label: name })),
      ]}
      onChoose={(value) => {
        const choice = choices[Number(value)];
        if (choice) onFill(choice.fills);
      }}
    />
  );
}

/** The fields of choices, given back. */
const notSaid = (choices: readonly Choice[]) =>
  Object.fromEntries(choices.flatMap(({ fills }) => Object.keys(fills).map((key) => [key, undefined])));

/** A ready choice whose invented price doesn't take the place of the office's own. */
function withoutPrices({ name, fills }: Choice): Choice {
  return { name, fills: Object.fromEntries(Object.entries(fills).filter(([key]) => !isPriced(key as FieldKey))) };
}

const isIn = (form: BedForm, fills: Choice["fills"]) =>
  Object.entries(fills).every(([key, text]) => textOf(form, key as FieldKey) === text);

/** Kinds of edging beside metal, each with usual figures of its own. */
const otherEdging: readonly Choice[] = EDGING_KINDS.filter((kind) => kind !== METAL).map(({ name, label }) => ({
  name: label,
  fills: { edgingKind: name },
}));

const ready = new Set(stoneChoices.map(({ fills }) => fills.stone));
/** All other coverings of the table; how large they are is for the person to say. */
const otherStones: readonly Choice[] = STONES.filter(({ name }) => !ready.has(name)).map(({ name }) => ({
  name: `${name.slice(0, 1).toUpperCase()}${name.slice(1)}`,
  fills: { stone: name },
}));

/** Kinds of stone that the office has added to its rates; how large they are is for the person to say. */
function ownStones({ rates }: BedForm): Choice[] {
  const known = new Set<string>(STONES.map(({ name }) => name));
  return (rates?.stones ?? [])
    .filter(({ name }) => !known.has(name.toLowerCase()))
    .map(({ name }) => ({ name: `${name}, from Rates`, fills: { stone: name } }));
}

const OWN = "own";
const CUSTOM = { value: OWN, label: "Custom, below" };
const RATES = "rates";

function ChoiceSelect({ label, choices, form, onFill }: ChoicesProps & { label: string; choices: readonly Choice[] }) {
  const fromRates = form.rates
    ? [...new Set(choices.flatMap(({ fills }) => Object.keys(fills) as FieldKey[]))].filter(isRate)
    : [];
  // Another kind of edging is after metal, whatever its sizes are.
  const before = choices.findLast(({ fills }) => isIn(form, fills));
  // The office's rates of edging are those of metal.
  const canFollow = fromRates.length > 0 && before?.fills.edgingKind === undefined;
  const followsRates = canFollow && fromRates.every((key) => form.typed[key] === undefined);
  const chosen = followsRates ? RATES : before?.name;
  const options = [
    ...(chosen === undefined ? [CUSTOM] : []),
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
        if (choice) onFill(fillsAfter(before, choice.fills));
        else if (name === RATES)
          onFill(fillsAfter(before, Object.fromEntries(fromRates.map((key) => [key, undefined]))));
      }}
    />
  );
}
