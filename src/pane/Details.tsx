import { crewFields, depthFields, type FieldKey, moneyFields, supplyFields } from "../quantities/bed/fields";
import { type BedForm, followedRate, textOf } from "../quantities/bed/form";
import { isRate } from "../quantities/bed/rates";
import type { FormPlace } from "../quantities/bed/read";
import { SOILS } from "../quantities/soil";
import { STONES } from "../quantities/stone";
import { type ChoicesProps, FabricChoice } from "./Choices";
import { changedWords } from "./changedWords";
import { BedField } from "./Field";
import { Group } from "./Group";
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
  { heading: "Crew", keys: keysOf(crewFields) },
  {
    heading: "Prices and markups",
    note: "These are sample prices. Type your own, or add a Rates sheet.",
    keys: keysOf(moneyFields),
  },
];

const FOR_THIS_BED = "From your rates. What you type here applies to this bed only.";

const namesOf: Partial<Record<FieldKey, readonly string[]>> = {
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
          <div class="pairs">
            {keys.map((key) => {
              const names = namesOf[key];
              return (
                <BedField
                  key={key}
                  field={key}
                  value={textOf(form, key)}
                  problem={problemAt(key)}
                  onType={onType}
                  {...(names && { names })}
                  {...(followedRate(form, key) && { source: "from Rates" })}
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

function keysOf<Keys extends string>(group: Readonly<Record<Keys, unknown>>): Keys[] {
  return Object.keys(group) as Keys[];
}
