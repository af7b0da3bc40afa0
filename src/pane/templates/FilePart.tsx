import type { Template } from "../../sheets/templates/template";
import { JsonFileField } from "../JsonFileField";
import type { Reporter } from "../useStatus";
import { readTemplateFile } from "./templateFiles";

interface FilePartProps {
  readonly reporter: Reporter;
  readonly onOpen: (template: Template) => void;
}

/** Opens a template from a file; one that is refused changes nothing. */
export function FilePart({ reporter, onOpen }: FilePartProps) {
  const open = async (file: File) => {
    const read = await readTemplateFile(file);
    if (read.ok) return onOpen(read.template);
    const more = read.more > 0 ? ` And ${read.more} more.` : "";
    reporter.complain(`${file.name} wasn't opened, and nothing was changed. ${read.why.join(" ")}${more}`);
  };
  return (
    <>
      <h2>From a file</h2>
      <JsonFileField label="Template file (.json)" onFile={(file) => void open(file)} />
    </>
  );
}
