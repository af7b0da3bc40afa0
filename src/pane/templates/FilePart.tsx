import { useId } from "preact/hooks";
import type { Template } from "../../sheets/templates/template";
import type { Reporter } from "../useStatus";
import { readTemplateFile } from "./templateFiles";

interface FilePartProps {
  readonly reporter: Reporter;
  readonly onOpen: (template: Template) => void;
}

/** Opens a template from a file; one that is refused changes nothing. */
export function FilePart({ reporter, onOpen }: FilePartProps) {
  const id = useId();
  const open = async (file: File) => {
    const read = await readTemplateFile(file);
    if (read.ok) return onOpen(read.template);
    const more = read.more > 0 ? ` And ${read.more} more.` : "";
    reporter.complain(`${file.name} wasn't opened, and nothing was changed. ${read.why.join(" ")}${more}`);
  };
  return (
    <>
      <h2>From a file</h2>
      <div class="field">
        <label for={id}>Template file (.json)</label>
        <input
          id={id}
          type="file"
          accept=".json,application/json"
          onChange={(event) => {
            const input = event.currentTarget;
            const [file] = input.files ?? [];
            if (file) void open(file);
            // The same file can be chosen once more after it was mended.
            input.value = "";
          }}
        />
      </div>
    </>
  );
}
