import { useId } from "preact/hooks";

interface TextAreaProps {
  readonly label: string;
  readonly value: string;
  readonly onType: (text: string) => void;
  readonly note?: string;
  readonly problem?: string | undefined;
  readonly rows?: number;
}

/** A field of several lines. */
export function TextArea({ label, value, onType, note, problem, rows = 3 }: TextAreaProps) {
  const id = useId();
  const below = problem ?? note;
  return (
    <div class={problem ? "field wrong" : "field"}>
      <label for={id}>{label}</label>
      <textarea
        id={id}
        rows={rows}
        value={value}
        aria-invalid={problem ? "true" : undefined}
        aria-describedby={below ? `${id}-below` : undefined}
        onInput={(event) => onType(event.currentTarget.value)}
      />
      {below && (
        <span id={`${id}-below`} class="below">
          {below}
        </span>
      )}
    </div>
  );
}
