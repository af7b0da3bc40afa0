import { useId } from "preact/hooks";

interface TextAreaProps {
  readonly label: string;
  readonly value: string;
  readonly onType: (text: string) => void;
  readonly note?: string;
  readonly rows?: number;
}

/** A field of several lines. */
export function TextArea({ label, value, onType, note, rows = 3 }: TextAreaProps) {
  const id = useId();
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <textarea
        id={id}
        rows={rows}
        value={value}
        aria-describedby={note ? `${id}-below` : undefined}
        onInput={(event) => onType(event.currentTarget.value)}
      />
      {note && (
        <span id={`${id}-below`} class="below">
          {note}
        </span>
      )}
    </div>
  );
}
