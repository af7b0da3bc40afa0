import type { Token } from "@borgar/fx";
import { levelsOf } from "../plain/limits";
import { callFault } from "./callFault";
import { hiddenCharacter } from "./hiddenCharacters";
import { MOST_FORMULA_CHARACTERS, MOST_FORMULA_LEVELS } from "./limits";
import { isOrdinaryFunction } from "./ordinaryFunctions";
import { ownNames } from "./ownNames";
import { isWithin, listed, referenceOf } from "./reference";
import { refusedFunction } from "./refusedFunctions";
import { isOfRatesSheet } from "./template";
import { tokensOf } from "./tokens";

/** What formulas of a template may refer to. */
export interface Frame {
  readonly rows: number;
  readonly columns: number;
  /** Whether the template lists this as read outside of it: an address with its sheet, or a name. */
  readonly lists: (reads: string) => boolean;
}

const PROGRAM = "calls another program (with |, as in =program|'file'!item)";
const WORKBOOK = "reads another workbook";

/**
 * Why a template may not hold a formula, in words that follow the cell's address; undefined where it may. It has to be
 * readable, call ordinary functions and those of this add-in only, and read nothing but the template's own cells, the
 * office's rates, and what the template lists as outside.
 *
 * @param formula with its "=", written as if the template's first cell were A1.
 * @example formulaFault('=WEBSERVICE("https://example.com")', frame) // "calls WEBSERVICE, which reaches out to the web"
 */
export function formulaFault(formula: string, frame: Frame): string | undefined {
  if (!formula.startsWith("=")) return "has a formula that doesn't begin with =";
  if (formula.length > MOST_FORMULA_CHARACTERS) return "has a formula that is too long";
  const hidden = hiddenCharacter(formula, true);
  if (hidden) return `has a formula with a hidden character (${hidden})`;
  if (levelsOf(formula) > MOST_FORMULA_LEVELS) return "has a formula with too many nested parentheses";
  try {
    const tokens = tokensOf(formula);
    return reachingOut(tokens, formula) ?? tokensFault(tokens, frame);
  } catch {
    return unreadable(formula);
  }
}

function unreadable(formula: string): string {
  return `has a formula that can't be read (${formula.slice(0, 40)})`;
}

/** What reaches out even where the rest cannot be read as a formula. */
function reachingOut(tokens: readonly Token[], formula: string): string | undefined {
  const calls = tokens.filter(({ type }) => type === "func").map(({ value }) => callFault(value));
  const known = calls.find((fault) => fault !== undefined);
  if (known) return known;
  if (tokens.some(({ type, value }) => type !== "string" && value.includes("|"))) return PROGRAM;
  const bare = formula.replace(/"(?:[^"]|"")*"/g, '""');
  if (/:\/\/|file:|\\/i.test(bare)) return "reads an address outside the workbook";
  if (/\[[^\][]*\][^\][!()+*/^&=<>,;"]*!/.test(bare)) return WORKBOOK;
  return undefined;
}

function tokensFault(tokens: readonly Token[], frame: Frame): string | undefined {
  const own = ownNames(tokens);
  const taken = [...own].find((name) => isOfRatesSheet(name) || frame.lists(name));
  if (taken) return `gives another meaning to the name ${taken} inside its formula`;
  for (const token of tokens) {
    const fault = tokenFault(token, frame, own);
    if (fault) return fault;
  }
  return undefined;
}

function tokenFault({ type, value }: Token, frame: Frame, own: ReadonlySet<string>): string | undefined {
  switch (type) {
    case "range":
    case "range_beam":
      return cellsFault(value, frame);
    case "range_ternary":
      return `reads ${value}, which has no end`;
    case "structured":
      return `reads the table ${value}, which the template doesn't have`;
    case "range_named": {
      const isKnown = own.has(value.toLowerCase()) || isOfRatesSheet(value) || frame.lists(value);
      // A function may be handed to another one by its name.
      if (isKnown || isOrdinaryFunction(value.toUpperCase())) return undefined;
      const reason = refusedFunction(value.toUpperCase());
      return reason ? `names ${value}, ${reason}` : `reads the name ${value}, which the template doesn't list`;
    }
    default:
      return undefined;
  }
}

function cellsFault(text: string, frame: Frame): string | undefined {
  const reference = referenceOf(text);
  if (reference.kind === "workbook") return `${WORKBOOK} (${text})`;
  if (reference.kind === "sheets") return `reads several sheets at once (${text})`;
  if (reference.kind === "unread") return `reads ${text}, which isn't a valid address`;
  const { sheet, range } = reference;
  if (sheet === undefined) {
    return isWithin(range, { row: 0, column: 0, ...frame }) ? undefined : `reads ${text}, beyond the template's cells`;
  }
  return frame.lists(listed(sheet, range)) ? undefined : `reads ${text}, which the template doesn't list`;
}
