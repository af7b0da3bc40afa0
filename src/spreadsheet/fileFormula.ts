import { tokenize } from "@borgar/fx";
import { inFile } from "./newerFunctions";

/**
 * A formula as a file holds it: without its "=", newer functions with their prefix, and without the sign that picks one
 * value of several, which goes without saying in a file.
 *
 * @param formula in English names with commas, with its "=".
 * @param sheetNames names of sheets, as references spell them, that are called otherwise in the file.
 * @example fileFormula("=NOT(ISFORMULA(A1))") // NOT(_xlfn.ISFORMULA(A1))
 */
export function fileFormula(formula: string, sheetNames: ReadonlyMap<string, string> = new Map()): string {
  const tokens = tokenize(formula, { mergeRefs: true }).filter(({ type }) => type !== "fx_prefix");
  return tokens
    .map(({ type, value }, place) => {
      if (type === "func") return inFile(value);
      if (type === "operator" && (value === "@" || value === "#")) return "";
      const reference = type.startsWith("range") ? onSheet(value, sheetNames) : value;
      return tokens[place + 1]?.value === "#" ? `_xlfn.ANCHORARRAY(${reference})` : reference;
    })
    .join("");
}

function onSheet(reference: string, sheetNames: ReadonlyMap<string, string>): string {
  const end = reference.lastIndexOf("!");
  const name = sheetNames.get(reference.slice(0, Math.max(end, 0)));
  return name === undefined ? reference : name + reference.slice(end);
}
