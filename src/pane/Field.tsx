import { useEffect, useId, useRef } from "preact/hooks";
import { type FieldKey, fields } from "../quantities/bed/fields";
import { printTape, readTape } from "../quantities/tape";
import { Button } from "./Button";

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
  /** Comes up where something was pressed, and takes the keyboard on. */
  readonly takesOver?: boolean;
  /** A button below the field. */
  readonly button?: { readonly label: string; readonly onPress: () => void };
}

export function TextField(props: TextFieldProps) {
  const { label, value, onType, unit, note, problem, placeholder, names, takesOver = false, button } = props;
  const id = useId();
  const input = useRef<HTMLInputElement>(null);
  useEffect(() => {
    if (takesOver) input.current?.focus();
  }, [takesOver]);
  const below = problem ?? note;
  return (
    <div class={problem ? "field wrong" : "field"}>
      <label for={id}>{label}</label>
      <span class="entry">
        <input
          id={id}
          ref={input}
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
      {button && (
        <Button label={`${button.label}: ${label}`} onPress={button.onPress}>
          {button.label}
        </Button>
      )}
    </div>
  );
}

interface BedFieldProps {
  readonly field: FieldKey;
  /** What it's called here, where another control has its usual name. */
  readonly label?: string;
  readonly value: string;
  readonly onType: (field: FieldKey, text: string) => void;
  readonly problem?: string | undefined;
  readonly names?: readonly string[];
  /** Left out: the usual one of the field. */
  readonly unit?: string;
  /** Left out: that of the measurement. */
  readonly note?: string;
  /** Where the value comes from, where no one typed it. */
  readonly source?: string;
  /** Takes the office's rate instead of what was typed. */
  readonly onUseRate?: (field: FieldKey) => void;
}

/** Units that the value says itself, such as 20%. */
const unitSaid: ReadonlySet<string> = new Set(["%", "name"]);

/** A field of the bed, with what its tape text reads as. */
export function BedField({ field, label, value, onType, problem, names, source, onUseRate, ...own }: BedFieldProps) {
  const { label: usual, unit, reads, note } = { note: "", ...fields[field], ...own };
  const isLength = reads === "feet" || reads === "inches";
  const read = isLength ? readsAs(value, reads === "feet" ? "ft" : "in") : "";
  return (
    <TextField
      label={label ?? usual}
      value={value}
      {...(!unitSaid.has(unit) && { unit })}
      note={[read || note, source].filter(Boolean).join("; ")}
      problem={problem}
      placeholder={reads === "feet" ? `such as 18' 6"` : undefined}
      names={names}
      onType={(text) => onType(field, text)}
      {...(onUseRate && { button: { label: "Use the rate", onPress: () => onUseRate(field) } })}
    />
  );
}

/**
 * What a length reads as, in the ways it wasn't typed: feet and inches as on the tape, and a decimal. A whole number
 * reads as itself.
 *
 * @example readsAs("18-6", "ft") // = 18' 6" = 18.5 ft
 */
export function readsAs(text: string, unit: "ft" | "in"): string {
  if (text.trim() === "" || Number.isInteger(Number(text))) return "";
  try {
    const length = readTape(text, unit);
    const taped = unit === "ft" ? printTape(length) : "";
    const decimal = Number.isFinite(Number(text)) ? "" : `${Number(length.toFixed(4))} ${unit}`;
    return [taped === text.trim() ? "" : taped, decimal]
      .map((way) => way && `= ${way}`)
      .join(" ")
      .trim();
  } catch {
    return "";
  }
}
