import { type ReferenceIdentifier, type Token, tokenize } from "@borgar/fx";
import { NoNative } from "../../functions/native/given";
import { parsed } from "../../spreadsheet/needsArray";
import { refuseElsewhere } from "./elsewhere";
import { callsOwnFunction, definesNames } from "./formula";
import { refuseTooLong } from "./limits";
import type { Found, References } from "./references";
import type { SheetArea } from "./region";
import type { CellReader } from "./taped";
import { Translation } from "./translate";

/** What a formula becomes in the copy: another formula, or, with the reason, its value. */
export type FormulaCopy =
  | {
      readonly formula: string;
      /** Cells that it reads by itself, and not as an argument of ours. */
      readonly read: readonly Found[];
      /** Cells of which it asks by itself whether they are 0. */
      readonly askedForZero: readonly Found[];
      /** Whether it called a function of ours. */
      readonly isConverted: boolean;
    }
  | { readonly reason: string };

const KINDS: Readonly<Record<string, ReferenceIdentifier["kind"]>> = {
  range: "range",
  range_beam: "beam",
  range_named: "name",
  structured: "table",
};

/**
 * Copies one formula: calls of ours as arithmetic, references as they have to be in the copy.
 *
 * @param formula with its "=".
 * @param at its cell.
 * @param isList whether the cell of a reference holds a list of ours, which the copy holds as values.
 */
export function copyFormula(
  formula: string,
  at: SheetArea,
  references: References,
  cells: CellReader,
  isList: (found: Found) => boolean,
): FormulaCopy {
  try {
    references.begin(definesNames(formula));
    if (references.isElsewhere) refuseElsewhere(formula);
    refuseLists(formula, at, references, isList);
    if (!callsOwnFunction(formula)) return moved(formula, at, references);
    const tree = parsed(formula);
    if (!tree) throw new NoNative("it can't be read as a formula");
    const translation = new Translation(at, references, cells);
    const text = `=${translation.text(tree)}`;
    refuseTooLong(text);
    const { read, askedForZero } = translation;
    return { formula: text, read, askedForZero, isConverted: true };
  } catch (reason) {
    if (reason instanceof NoNative) return { reason: reason.message };
    throw reason;
  }
}

/** An ordinary formula, changed only where a reference has to stand otherwise. */
function moved(formula: string, at: SheetArea, references: References): FormulaCopy {
  const read: Found[] = [];
  const text = tokenize(formula, { mergeRefs: true })
    .map((token) => {
      const node = referenceOf(token);
      if (!node) return token.value;
      const found = references.find(node, at);
      if (found) read.push(found);
      const changed = references.written(node, at);
      if (changed === undefined) throw new NoNative(`${node.value} belongs to a table that isn't there`);
      return changed;
    })
    .join("");
  return { formula: text, read, askedForZero: [], isConverted: false };
}

/** `C5#` means a list that spills, and the copy holds lists of ours as values. */
function refuseLists(formula: string, at: SheetArea, references: References, isList: (found: Found) => boolean): void {
  const tokens = tokenize(formula, { mergeRefs: true });
  tokens.forEach((token, place) => {
    const node = tokens[place + 1]?.value === "#" ? referenceOf(token) : undefined;
    const found = node && references.find(node, at);
    if (found && isList(found)) throw new NoNative(`${token.value}# is a list the copy has as values`);
  });
}

function referenceOf({ type, value }: Token): ReferenceIdentifier | undefined {
  const kind = KINDS[type];
  return kind && { type: "ReferenceIdentifier", value, kind };
}
