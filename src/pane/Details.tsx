import { fieldNote } from "../quantities/bed/fieldNotes";
import {
  crewFields,
  depthFields,
  type FieldKey,
  fields,
  moneyFields,
  secondFields,
  supplyFields,
} from "../quantities/bed/fields";
import {
  asks,
  type BedForm,
  edgingFields,
  followedRate,
  secondOf,
  soldByIn,
  textOf,
  unitOf,
} from "../quantities/bed/form";
import { listPicked } from "../quantities/bed/officeLists";
import { isRate } from "../quantities/bed/rates";
import type { FormPlace } from "../quantities/bed/read";
import { secondKey } from "../quantities/bed/secondEdging";
import { EDGING_KINDS, NO_EDGING } from "../quantities/edgingKinds";
import { SOILS } from "../quantities/soil";
import { SOLD_BY, TON, usuallySoldBy } from "../quantities/soldBy";
import { STONES } from "../quantities/stone";
import { coveringNamed, depthWords } from "../quantities/tableSources";
import { type ChoicesProps, FabricChoice } from "./Choices";
import { changedWords } from "./changedWords";
import { BedField } from "./Field";
import { Group } from "./Group";
import { Select } from "./Select";
import { UnknownStone, unknownStone } from "./UnknownStone";

interface DetailsProps {
  readonly form: BedForm;
  readonly problemAt: (place: FormPlace) => string | undefined;
  readonly onType: (field: FieldKey, text: string) => void;
  readonly onFill: ChoicesProps["onFill"];
  /** Gives a field back to the office's rate. */
  readonly onUseRate: (field: FieldKey) => void;
}

const groups: readonly { readonly heading: string; readonly note?: string; readonly keys: readonly FieldKey[] }[] = [
  { heading: "Depth, stone, and digging", keys: keysOf(depthFields) },
  { heading: "Pieces, rolls, pins, and loads", keys: keysOf(supplyFields) },
  { heading: "Second edging", keys: keysOf(secondFields) },
  { heading: "Crew", keys: keysOf(crewFields) },
  {
    heading: "Prices and markups",
    note: "These are sample prices. Type your own, or add a Rates sheet.",
    keys: keysOf(moneyFields),
  },
];

const FOR_THIS_BED = "From your rates. What you type here applies to this bed only.";

const namesOf: Partial<Record<FieldKey, readonly string[]>> = {
  edgingKind: EDGING_KINDS.map(({ name }) => name),
  stone: STONES.map(({ name }) => name),
  soil: SOILS.map(({ name }) => name),
};

/** Everything with a sensible starting value, closed until someone wants to change it. */
export function Details({ form, problemAt, onType, onFill, onUseRate }: DetailsProps) {
  return (
    <section aria-label="Defaults">
      {groups.map(({ heading, note, keys }) => (
        <Group
          key={heading}
          heading={heading}
          changed={changedWords(form, keys)}
          opens={keys.some((key) => problemAt(key)) || (keys.includes("stone") && unknownStone(form) !== undefined)}
        >
          {keys.includes("rollWidth") && <FabricChoice form={form} onFill={onFill} />}
          {note && <p class="below">{form.rates ? FOR_THIS_BED : note}</p>}
          {keys.includes("secondKind") && <SecondKind form={form} onType={onType} />}
          <div class="pairs">
            {keys
              .filter((key) => asks(form, key) && (!PICKED.includes(key) || problemAt(key)))
              .map((key) => {
                if (key === "soldBy" && !problemAt(key)) return <SoldByChoice key={key} form={form} onType={onType} />;
                const list = listPicked(key);
                const names = list ? form.rates?.lists?.[list]?.rows.map(({ name }) => name) : namesOf[key];
                const source = followedRate(form, key) ? "from Rates" : key === "stone" ? usualDepth(form) : undefined;
                return (
                  <BedField
                    key={key}
                    field={key}
                    value={textOf(form, key)}
                    unit={unitOf(form, key)}
                    problem={problemAt(key)}
                    note={fieldNote(key)}
                    onType={onType}
                    {...(names && { names })}
                    {...(source && { source })}
                    {...(form.rates && isRate(key) && form.typed[key] !== undefined && { onUseRate })}
                  />
                );
              })}
          </div>
          {keys.includes("stone") && <UnknownStone form={form} onFill={onFill} />}
        </Group>
      ))}
    </section>
  );
}

/** What is picked elsewhere, and typed only to put it right. */
const PICKED: readonly FieldKey[] = ["edgingKind", "secondKind", ...Object.values(edgingFields).flat().map(secondKey)];

/** Along some sides a bed can have another edging. */
function SecondKind({ form, onType }: Pick<DetailsProps, "form" | "onType">) {
  return (
    <Select
      label="Another edging along some sides"
      value={secondOf(form).name}
      options={EDGING_KINDS.map(({ name, label }) => ({
        value: name,
        label: name === NO_EDGING.name ? "None" : label,
      }))}
      onChoose={(chosen) => onType("secondKind", chosen)}
      {...(secondOf(form) !== NO_EDGING && {
        note: "Its price and pace are here, too. Pick its sides above, with those of the first.",
      })}
    />
  );
}

/** What the stone is sold by; another unit has its own step, minimum, and price. */
function SoldByChoice({ form, onType }: Pick<DetailsProps, "form" | "onType">) {
  const { name } = soldByIn(form);
  return (
    <Select
      label={fields.soldBy.label}
      value={name}
      options={SOLD_BY.map((one) => ({ value: one.name, label: one.name }))}
      onChoose={(chosen) => onType("soldBy", chosen)}
      {...(usuallySoldBy(textOf(form, "stone")) !== TON && { note: "mulch is sold by volume" })}
    />
  );
}

/** How deep the bed's covering usually is. */
function usualDepth(form: BedForm): string | undefined {
  const depth = coveringNamed(textOf(form, "stone"))?.usualDepth;
  return depth && `usually ${depthWords(depth)} deep`;
}

function keysOf<Keys extends string>(group: Readonly<Record<Keys, unknown>>): Keys[] {
  return Object.keys(group) as Keys[];
}
