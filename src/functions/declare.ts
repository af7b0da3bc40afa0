import type { Role } from "../headings/roles";
import type { Point } from "../quantities/outline";
import type { WidthRule } from "../quantities/widths";
import type { Argument, Listed, ValuesOf } from "./argument";
import { argumentNotes } from "./argumentNotes";
import type { Operand } from "./native/arithmetic";
import { form, type NativeForm, type Working as NativeWorking, type NoNativeForm } from "./native/form";
import type { Answer } from "./native/named";
import type { Outline } from "./native/points";
import type { Dates, Widths } from "./native/ranges";
import { readerOf } from "./readers";
import type { Cell, WorksheetFunction } from "./worksheetFunction";

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

/** The kinds in words, as in "takes inches"; the others are words already. */
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

/** What is said of an argument beyond how it is read. */
export interface ArgumentNote {
  /** What to give for it, in one line. */
  readonly about: string;
  /** What it is, where its reader doesn't tell. */
  readonly kind?: Kind;
  /** What is ordinarily given, lowest and highest; common practice unless said otherwise. */
  readonly usual?: readonly [low: number, high: number];
  /** What it is called in a sheet. */
  readonly role?: Role;
}

/** All that is known of an argument. */
export interface DeclaredArgument extends ArgumentNote {
  readonly name: string;
  readonly kind: Kind;
  /** It takes a range of cells. */
  readonly many?: boolean;
  /** What is taken where it is left out; absent for an argument that is needed. "" means nothing. */
  readonly fallback?: number | string | boolean;
  /** What a blank is taken for where the argument itself has to be given. */
  readonly blankIs?: number;
  /** 0 is a value, not a blank. */
  readonly zero?: boolean;
  /** Must be under this. */
  readonly under?: number;
}

/** How an argument's value shows up in an ordinary formula. */
type OperandOf<Value> = Value extends readonly Point[]
  ? Outline
  : Value extends Listed<"widths">
    ? Widths
    : Value extends Listed<"dates">
      ? Dates
      : Value extends boolean | WidthRule
        ? Answer
        : Operand;
type OperandsOf<Values extends readonly unknown[]> = { [Place in keyof Values]: OperandOf<Values[Place]> };

/** What a function's file says of it. */
interface Said<Arguments extends readonly Argument[]> {
  /** The name without the namespace: `STONE_TONS`. */
  readonly name: string;
  /** The heading that the help lists it under; one of {@link PURPOSES}. */
  readonly purpose: Purpose;
  /** What it is for, in one line that the host shows. */
  readonly about: string;
  /** What it gives, in a few words: "stone by weight". */
  readonly gives: string;
  /** What it returns, with its unit. */
  readonly returns: string;
  readonly kind: Kind;
  /** It gives whole things. */
  readonly whole?: boolean;
  /** The rule in words. */
  readonly rule: string;
  /** `=BED.STONE_YARDS(108, 3) gives 1`, with the cells it reads after "for". */
  readonly example: string;
  readonly source: string;
  /** Functions to look at, too. */
  readonly related: readonly string[];
  /** Notes on the arguments that only this function takes, by their names. */
  readonly arguments?: Readonly<Record<string, ArgumentNote>>;
  /** Its arithmetic as an ordinary formula, for people without the add-in; or why there is none. */
  readonly native: ((...operands: OperandsOf<ValuesOf<Arguments>>) => NativeWorking) | NoNativeForm;
  /** How it comes to its answer, line by line, with the numbers in it. */
  readonly working?: (answer: number, ...values: ValuesOf<Arguments>) => readonly string[];
}

/** All that is known of a worksheet function. */
export interface Declaration extends Omit<Said<readonly []>, "arguments" | "native" | "working"> {
  readonly arguments: readonly DeclaredArgument[];
  readonly native: NativeForm | NoNativeForm;
  readonly run: WorksheetFunction<readonly Argument[], number | Cell[][]>;
  readonly working?: (answer: number, ...values: readonly never[]) => readonly string[];
}

/** What the functions are for, in the order of a job. */
export const PURPOSES = [
  "Read tape measurements",
  "Measure the bed",
  "Measure the edging",
  "Dig and haul",
  "Set the edging",
  "Lay and pin fabric",
  "Lay out any shape of bed",
  "Order stone",
  "Move it by wheelbarrow",
  "Cut stock lengths",
  "Price it",
] as const;
export type Purpose = (typeof PURPOSES)[number];

/**
 * Declares a worksheet function: what the host, the help, the check, and copies without the add-in know of it, all of
 * it from one place. Nothing of it gets into functions.js.
 *
 * @param run the function itself.
 */
export function declare<const Arguments extends readonly Argument[]>(
  run: WorksheetFunction<Arguments, number | Cell[][]>,
  said: Said<Arguments>,
): Declaration {
  const { native } = said;
  return {
    ...said,
    run,
    arguments: run.takes.map((argument) => {
      const note = said.arguments?.[argument.name] ?? argumentNotes.get(argument);
      if (!note) throw new Error(`BED.${said.name} says nothing of its argument ${argument.name}.`);
      return declaredArgument(argument, note);
    }),
    native:
      typeof native === "function"
        ? form(
            run.takes.map((argument) => readerOf(argument).parameter(argument)),
            // Each reader's parameter gives the operand that belongs to its value; the compiler can't follow that.
            native as (...operands: any[]) => NativeWorking,
          )
        : native,
  } as Declaration;
}

/** Whether a fallback says something to a person; a missing roll length counts as endless, which doesn't. */
const isShowable = (fallback: unknown): fallback is number | boolean =>
  typeof fallback === "boolean" || (typeof fallback === "number" && Number.isFinite(fallback));

function declaredArgument(argument: Argument, note: ArgumentNote): DeclaredArgument {
  const { name, optional, fallback } = argument;
  const reader = readerOf(argument);
  const instead = reader.blank ?? (isShowable(fallback) ? fallback : "");
  const kind = note.kind ?? reader.kind;
  if (!kind) throw new Error(`What kind is the argument ${name}? Its reader doesn't tell.`);
  const zero = reader.zero || fallback === 0;
  return {
    ...note,
    name,
    kind,
    ...(reader.many && { many: true }),
    ...(optional && { fallback: instead }),
    ...(!optional && typeof fallback === "number" && { blankIs: fallback }),
    ...(zero && { zero: true }),
    ...(reader.under !== undefined && { under: reader.under }),
  };
}
