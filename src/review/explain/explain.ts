import type { CallExpression } from "@borgar/fx";
import type { Declaration } from "../../functions/declare";
import { valuesOf } from "../../functions/worksheetFunction";
import { unitIn } from "../../headings/heading";
import { must } from "../../quantities/must";
import { Problem } from "../../quantities/problem";
import { Book, type CallFunction } from "../book";
import type { WorkbookFacts } from "../facts";
import { evaluate } from "../formula/evaluate";
import { PatternReader } from "../formula/pattern";
import { calledName, isCall, isReference, partsOf, type Tree, textOf, walk } from "../formula/tree";
import { isFailure, type Value } from "../formula/values";
import { fullName, type Knowledge, knownFunction } from "../knowledge";
import { type Evaluate, type Explanation, errorOf } from "./explanation";
import { explainArgument } from "./given";
import { plainWorking, valueShown, withUnit } from "./plain";

/** What explaining needs from around the formula. */
export interface Around {
  readonly evaluate: Evaluate;
  readonly knowledge: Knowledge;
  /** What a reference is called on the sheet, such as “Length”; "" where it has no name. */
  readonly nameOf?: (reference: string) => string;
}

/**
 * Explains a formula: each argument with its value and unit, the rule in words, the working with the numbers in it,
 * and the reason and the fix if it is an error.
 *
 * @param formula with or without its "=".
 * @param around works out parts of the formula where it stands; `cellAround` makes it from what was read.
 * @returns undefined where the formula cannot be read.
 * @example explain("=BED.STONE_YARDS(108,3)", around)?.working // ["108 × 3 ÷ 324 = 1 cu yd"]
 */
export function explain(formula: string, around: Around): Explanation | undefined {
  const whole = formula.startsWith("=") ? formula : `=${formula}`;
  const { tree } = new PatternReader().read(whole, 0, 0);
  return tree ? explainPart(whole, tree, around, true) : undefined;
}

function explainPart(whole: string, part: Exclude<Tree, null>, around: Around, isWhole = false): Explanation {
  const known = isCall(part) ? knownFunction(around.knowledge, calledName(part)) : undefined;
  const text = isWhole ? whole.slice(1) : textOf(whole, part);
  const inside = callsIn(whole, isCall(part) && known ? part.arguments : [part], around).map((call) =>
    explainPart(whole, call, around),
  );
  return known && isCall(part)
    ? explainCall(whole, text, part, known, inside, around)
    : explainPlain(whole, text, part, inside, around);
}

/** The outermost calls of ours in some parts, from left to right; of an IF those that it comes to. */
function callsIn(whole: string, parts: readonly Tree[], around: Around): CallExpression[] {
  return parts.flatMap((part) => {
    if (!isCall(part)) return callsIn(whole, partsOf(part), around);
    if (knownFunction(around.knowledge, calledName(part))) return [part];
    return callsIn(whole, takenOf(whole, part, around), around);
  });
}

function takenOf(whole: string, call: CallExpression, { evaluate }: Around): readonly Tree[] {
  const [condition = null, yes = null, no = null] = call.arguments as Tree[];
  const holds = calledName(call) === "IF" ? evaluate(textOf(whole, condition)) : undefined;
  return typeof holds === "boolean" ? [condition, holds ? yes : no] : partsOf(call);
}

function explainCall(
  whole: string,
  text: string,
  call: CallExpression,
  known: Declaration,
  inside: readonly Explanation[],
  around: Around,
): Explanation {
  const { evaluate, knowledge } = around;
  const parts = known.arguments.map((_, place) => (call.arguments[place] ?? null) as Tree);
  const explained = known.arguments.map((argument, place) => {
    const part = parts[place] ?? null;
    const one = explainArgument(argument, textOf(whole, part), evaluate, knowledge);
    const name = part?.type === "ReferenceIdentifier" ? around.nameOf?.(part.value) : undefined;
    return name ? { ...one, reads: name } : one;
  });
  const value = evaluate(text);
  const given = parts.map((part) => (part ? evaluate(textOf(whole, part)) : null));
  return {
    text,
    title: `${fullName(knowledge, known.name)}: ${known.gives}`,
    rule: known.rule,
    arguments: explained,
    working: typeof value === "number" ? workingOf(known, value, given) : [],
    result: resultOf(value, known),
    ...(isFailure(value) && { error: errorOf(value, explained, inside) }),
    inside,
  };
}

function resultOf(value: Value | undefined, { kind }: Declaration): string {
  if (typeof value === "number") return withUnit(value, kind);
  return kind === "list" && !isFailure(value) ? "a list" : valueShown(value);
}

/** How a function came to its answer, from what it was given; nothing where that isn't known. */
function workingOf(known: Declaration, answer: number, given: readonly unknown[]): readonly string[] {
  if (!known.working || given.some((one) => one === undefined)) return [];
  try {
    return known.working(answer, ...(valuesOf(known.run.takes, given) as never[]));
  } catch (reason) {
    if (reason instanceof Problem) return [];
    throw reason;
  }
}

function explainPlain(
  whole: string,
  text: string,
  part: Exclude<Tree, null>,
  inside: readonly Explanation[],
  { evaluate, nameOf }: Around,
): Explanation {
  const value = evaluate(text);
  const references = new Map<string, string>();
  for (const { part: one } of walk(part))
    if (isReference(one)) references.set(one.value, valueShown(evaluate(one.value)));
  return {
    text,
    title: "Plain formula",
    rule: "",
    arguments: [...references].map(([reference, shows]) => ({
      name: nameOf?.(reference) || reference,
      text: reference,
      value: shows,
    })),
    working: plainWorking(whole, part, evaluate),
    result: valueShown(value),
    ...(isFailure(value) && { error: errorOf(value, [], inside) }),
    inside,
  };
}

/**
 * What explaining a cell needs, from what was read of the workbook, so that the host is asked for nothing more.
 *
 * @param facts the sheets that the formula reads, as far as they were read.
 * @param place the cell that the formula is in.
 * @param knowledge what is known of the functions.
 * @param call works out the functions of ours.
 */
export function cellAround(
  facts: WorkbookFacts,
  place: { readonly sheet: string; readonly row: number; readonly column: number },
  knowledge: Knowledge,
  call: CallFunction,
): Around {
  const book = Book.unread(facts);
  const cell = { sheet: book.sheetNamed(place.sheet) ?? 0, row: place.row, column: place.column };
  const evaluateHere = (text: string) => {
    const pattern = new PatternReader().read(text.startsWith("=") ? text : `=${text}`, cell.row, cell.column);
    if (pattern.tree === undefined) return undefined;
    const targetAt = (start: number) => {
      const reference = pattern.references.find((one) => one.start === start);
      return reference && book.targetOf(reference, cell);
    };
    return evaluate(pattern.tree, {
      reach: (_, start) => {
        const target = targetAt(start);
        return target && book.valuesAt(target);
      },
      span: (start, end, row, column) => {
        const [from, to] = [targetAt(start), targetAt(end)];
        if (!from || !to || from.sheet !== to.sheet) return undefined;
        const [rows, columns] = [to.row + row - from.row, to.column + column - from.column];
        return rows > 0 && columns > 0 ? book.valuesAt({ ...from, rows, columns }) : undefined;
      },
      isFormula: (_, start) => {
        const target = targetAt(start);
        return target !== undefined && must(book.grids[target.sheet]).formula(target.row, target.column) !== undefined;
      },
      call,
    });
  };
  const nameOf = (reference: string) => {
    const { references } = new PatternReader().read(`=${reference}`, cell.row, cell.column);
    const target = references[0] && book.targetOf(references[0], cell);
    if (!target) return "";
    const places = must(book.places[target.sheet]);
    const [label, heading] = [places.labelOf(target.row, target.column), places.headingOf(target.row, target.column)];
    // A heading such as “Typed” says nothing that the label does not.
    const tells = label === "" || places.roleIn(heading) !== undefined || unitIn(heading) !== undefined;
    return [label, tells ? heading : ""].filter(Boolean).join(", ");
  };
  return { evaluate: evaluateHere, knowledge, nameOf };
}
