import { useId } from "preact/hooks";

interface SelectProps {
  readonly label: string;
  readonly value: string;
  readonly options: readonly { readonly value: string; readonly label: string }[];
  readonly onChoose: (value: string) => void;
  readonly note?: string;
}

export function Select({ label, value, options, onChoose, note }: SelectProps) {
  const id = useId();
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <select
        id={id}
        value={value}
        aria-describedby={note ? `${id}-below` : undefined}
        onChange={(event) => onChoose(event.currentTarget.value)}
      >
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
      </select>
      {note && (
        <span id={`${id}-below`} class="below">
          {note}
        </span>
      )}
    </div>
  );
}
