import { tokenize } from "@borgar/fx";
import { fileFormula } from "../../../spreadsheet/fileFormula";
import type { FunctionNames } from "./functionNames";

/** The prefix of a name that a formula makes for itself, with LET or LAMBDA: [MS-XLSX], from memory. */
const OWN = "_xlpm.";

/**
 * A formula as a file holds it: without its "=", functions of the add-in and newer ones under the names that files have
 * for them.
 *
 * @param formula with its "=".
 * @example toFile("=MY.SUM_UP(IFNA(A1,0))", names) // "_xldudf_MY_SUM_UP(_xlfn.IFNA(A1,0))"
 */
export function toFile(formula: string, functions: FunctionNames): string {
  const tokens = tokenize(formula, { mergeRefs: true, negativeNumbers: false });
  const own = ownNames(tokens);
  const text = tokens
    .map(({ type, value }) => {
      if (type === "func") return functions.inFile(value);
      return type === "range_named" && own.has(value.toLowerCase()) ? OWN + value : value;
    })
    .join("");
  return fileFormula(text);
}

interface Token {
  readonly type: string;
  readonly value: string;
}

/** The names that LET and LAMBDA make: each stands alone before a comma, and LAMBDA's and LET's are told apart by place. */
function ownNames(tokens: readonly Token[]): ReadonlySet<string> {
  const own = new Set<string>();
  const calls: { name: string; argument: number }[] = [];
  const solid = tokens.filter(({ type }) => type !== "whitespace");
  solid.forEach(({ type, value }, place) => {
    if (type === "operator" && value === "(") {
      const before = solid[place - 1];
      calls.push({ name: before?.type === "func" ? before.value.toUpperCase() : "", argument: 0 });
    } else if (type === "operator" && value === ")") calls.pop();
    else if (type === "operator" && value === ",") {
      const call = calls.at(-1);
      if (call) call.argument += 1;
    } else if (type === "range_named" && solid[place + 1]?.value === ",") {
      const call = calls.at(-1);
      const opens = /^[(,]$/.test(solid[place - 1]?.value ?? "");
      const makes = call?.name === "LAMBDA" || (call?.name === "LET" && call.argument % 2 === 0);
      if (opens && makes) own.add(value.toLowerCase());
    }
  });
  return own;
}
