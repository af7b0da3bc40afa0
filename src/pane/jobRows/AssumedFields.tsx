import { fields as bedFields } from "../../quantities/bed/fields";
import { STONES } from "../../quantities/stone";
import { readsAs, TextField } from "../Field";
import { Select } from "../Select";
import { type AssumedTexts, borderChoices } from "./assumed";

export type AssumedField = keyof AssumedTexts;

interface AssumedFieldsProps {
  /** Those that no column says. */
  readonly fields: readonly AssumedField[];
  readonly texts: AssumedTexts;
  readonly problems: Readonly<Partial<Record<AssumedField, string>>>;
  readonly onChange: (texts: AssumedTexts) => void;
}

const labels = { depth: "Stone depth", stone: "Kind of stone", waste: "Waste" } as const;

/** What is taken for every bed of the list. */
export function AssumedFields({ fields, texts, problems, onChange }: AssumedFieldsProps) {
  if (fields.length === 0) return null;
  return (
    <fieldset>
      <legend>For every bed without a column</legend>
      {fields.map((field) =>
        field === "border" ? (
          <Select
            key={field}
            label="Edging along"
            value={texts.border}
            options={borderChoices}
            onChoose={(border) => onChange({ ...texts, border })}
          />
        ) : (
          <TextField
            key={field}
            label={labels[field]}
            value={texts[field]}
            {...(field === "depth" && { unit: "in", note: readsAs(texts.depth, "in") })}
            {...(field === "stone" && { names: STONES.map(({ name }) => name), note: "or tons per cubic yard" })}
            {...(field === "waste" && { note: `blank: your rate, or ${bedFields.waste.initial} without one` })}
            problem={problems[field]}
            onType={(text) => onChange({ ...texts, [field]: text })}
          />
        ),
      )}
    </fieldset>
  );
}
