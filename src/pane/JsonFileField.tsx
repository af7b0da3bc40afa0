import { useId } from "preact/hooks";

interface JsonFileFieldProps {
  readonly label: string;
  readonly onFile: (file: File) => void;
}

/** Asks for a file of ours. */
export function JsonFileField({ label, onFile }: JsonFileFieldProps) {
  const id = useId();
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="file"
        accept=".json,application/json"
        onChange={(event) => {
          const input = event.currentTarget;
          const [file] = input.files ?? [];
          if (file) onFile(file);
          // The same file can be chosen once more after it was fixed.
          input.value = "";
        }}
      />
    </div>
  );
}
