import type { Role } from "../sheet/roles";

/**
 * What an argument or a result is: a measure in a unit, or one of the other things that functions take. Lengths
 * ("ft", "in") take tape text, too; "stone" and "soil" take a number or a name from a table.
 */
export type Kind =
  | "ft"
  | "in"
  | "sq ft"
  | "cu ft"
  | "cu yd"
  | "tons"
  | "lb"
  | "tons/cu yd"
  | "share"
  | "money"
  | "person-h"
  | "min"
  | "ft/min"
  | "count"
  | "amount"
  | "stone"
  | "soil"
  | "yes or no"
  | "width rule"
  | "degrees"
  | "list"
  | "date";

/** The kinds in words, as in "takes inches"; the others stand for themselves. */
const KIND_WORDS: Partial<Record<Kind, string>> = {
  ft: "feet",
  in: "inches",
  "sq ft": "square feet",
  "cu ft": "cubic feet",
  "cu yd": "cubic yards",
  lb: "pounds",
  "tons/cu yd": "tons a cubic yard",
  stone: "tons a cubic yard",
};

export const kindWords = (kind: Kind): string => KIND_WORDS[kind] ?? kind;

export interface ArgumentKnowledge {
  readonly name: string;
  readonly kind: Kind;
  /** It takes a range of cells. */
  readonly many?: boolean;
  /** What is taken where it is left out; absent for an argument that is needed. "" stands for nothing. */
  readonly fallback?: number | string | boolean;
  /** What a blank is taken for where the argument itself has to be given. */
  readonly blankIs?: number;
  /** 0 is a value, not a blank. */
  readonly zero?: boolean;
  /** Must be under this. */
  readonly under?: number;
  /** What ordinarily is given, lowest and highest; common practice unless said otherwise. */
  readonly usual?: readonly [low: number, high: number];
  readonly role?: Role;
}

export interface FunctionKnowledge {
  /** Without the namespace: `STONE_TONS`. */
  readonly name: string;
  /** What it gives, in a few words. */
  readonly gives: string;
  readonly kind: Kind;
  /** Gives whole things. */
  readonly whole?: boolean;
  /** The rule in words. */
  readonly rule: string;
  readonly arguments: readonly ArgumentKnowledge[];
}

/** An argument that is needed; `more` says what else is known of it. */
export const needed = (name: string, kind: Kind, more: Partial<ArgumentKnowledge> = {}): ArgumentKnowledge => ({
  name,
  kind,
  ...more,
});

/** An argument that may be left out, and what is taken then. */
export const optional = (
  name: string,
  kind: Kind,
  fallback: number | string | boolean,
  more: Partial<ArgumentKnowledge> = {},
): ArgumentKnowledge => ({ name, kind, fallback, ...more });
