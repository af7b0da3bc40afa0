import { useId } from "preact/hooks";
import { type FieldKey, fields } from "../quantities/bed/fields";
import { readTape } from "../quantities/tape";

interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onType: (text: string) => void;
  readonly unit?: string;
  readonly note?: string | undefined;
  readonly problem?: string | undefined;
  readonly placeholder?: string | undefined;
  /** Names to choose from; others can be typed, too. */
  readonly names?: readonly string[] | undefined;
}

export function TextField({ label, value, onType, unit, note, problem, placeholder, names }: TextFieldProps) {
  const id = useId();
  const below = problem ?? note;
  return (
    <div class={problem ? "field wrong" : "field"}>
      <label for={id}>{label}</label>
      <span class="entry">
        <input
          id={id}
          value={value}
          placeholder={placeholder}
          autocomplete="off"
          spellcheck={false}
          list={names && `${id}-names`}
          aria-invalid={problem ? "true" : undefined}
          aria-describedby={below ? `${id}-below` : undefined}
          onInput={(event) => onType(event.currentTarget.value)}
        />
        {unit && <span class="unit">{unit}</span>}
      </span>
      {names && (
        <datalist id={`${id}-names`}>
          {names.map((name) => (
            <option key={name} value={name} />
          ))}
        </datalist>
      )}
      {below && (
        <span id={`${id}-below`} class="below">
          {below}
        </span>
      )}
    </div>
  );
}

interface BedFieldProps {
  readonly field: FieldKey;
  readonly value: string;
  readonly onType: (field: FieldKey, text: string) => void;
  readonly problem?: string | undefined;
  readonly names?: readonly string[];
}

/** A field of the bed, with what its tape text reads as. */
export function BedField({ field, value, onType, problem, names }: BedFieldProps) {
  const { label, unit, reads, note } = { note: "", ...fields[field] };
  const isLength = reads === "feet" || reads === "inches";
  return (
    <TextField
      label={label}
      value={value}
      unit={unit}
      note={(isLength && readsAs(value, reads === "feet" ? "ft" : "in")) || note}
      problem={problem}
      placeholder={reads === "feet" ? `such as 18' 6"` : undefined}
      names={names}
      onType={(text) => onType(field, text)}
    />
  );
}

/** What tape text reads as; nothing for a plain number, which reads as itself. */
export function readsAs(text: string, unit: "ft" | "in"): string {
  if (text.trim() === "" || Number.isFinite(Number(text))) return "";
  try {
    return `reads as ${Number(readTape(text, unit).toFixed(4))} ${unit}`;
  } catch {
    return "";
  }
}
