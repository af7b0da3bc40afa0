import { MOST_CHARACTERS } from "../../sheets/templates/limits";
import { type Read, readTemplate } from "../../sheets/templates/readTemplate";
import type { Template } from "../../sheets/templates/template";
import { templateFileName, templateText } from "../../sheets/templates/templateText";
import { saveFile } from "../saveFile";

/** A character takes at most four bytes of a file. */
const BYTES_A_CHARACTER = 4;

/** Reads a file that the person chose; nothing else comes of it. */
export async function readTemplateFile(file: File): Promise<Read> {
  // A file that is too large anyway is not read at all.
  return readTemplate(
    file.size > MOST_CHARACTERS * BYTES_A_CHARACTER ? " ".repeat(MOST_CHARACTERS + 1) : await file.text(),
  );
}

/** Has the browser save a template as a file. */
export function saveTemplateFile(template: Template): string {
  const name = templateFileName(template.name);
  saveFile(new Blob([templateText(template)], { type: "application/json" }), name);
  return name;
}
