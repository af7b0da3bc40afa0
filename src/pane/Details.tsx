import { crewFields, depthFields, type FieldKey, moneyFields, supplyFields } from "../quantities/bed/fields";
import { type BedForm, textOf } from "../quantities/bed/form";
import type { FormPlace } from "../quantities/bed/read";
import { SOILS } from "../quantities/soil";
import { STONES } from "../quantities/stone";
import { BedField } from "./Field";

interface DetailsProps {
  readonly form: BedForm;
  readonly problemAt: (place: FormPlace) => string | undefined;
  readonly onType: (field: FieldKey, text: string) => void;
}

const groups: readonly { readonly heading: string; readonly note?: string; readonly keys: readonly FieldKey[] }[] = [
  { heading: "Depth, stone and digging", keys: keysOf(depthFields) },
  { heading: "Pieces, rolls, pins and loads", keys: keysOf(supplyFields) },
  { heading: "Crew", keys: keysOf(crewFields) },
  {
    heading: "Prices and markups",
    note: "These prices are invented examples. Type the office's own.",
    keys: keysOf(moneyFields),
  },
];

const namesOf: Partial<Record<FieldKey, readonly string[]>> = {
  stone: STONES.map(({ name }) => name),
  soil: SOILS.map(({ name }) => name),
};

/** Everything with a sensible starting value, closed until somebody wants to change it. */
export function Details({ form, problemAt, onType }: DetailsProps) {
  return (
    <section aria-label="Starting values">
      {groups.map(({ heading, note, keys }) => (
        <details key={heading} open={keys.some((key) => problemAt(key)) || undefined}>
          <summary>{heading}</summary>
          {note && <p class="below">{note}</p>}
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
                />
              );
            })}
          </div>
        </details>
      ))}
    </section>
  );
}

function keysOf<Keys extends string>(group: Readonly<Record<Keys, unknown>>): Keys[] {
  return Object.keys(group) as Keys[];
}
