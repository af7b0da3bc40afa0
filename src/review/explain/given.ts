import { isFailure, isRange, type Single, type Value } from "../formula/values";
import { fullName, type Knowledge } from "../knowledge";
import type { ArgumentKnowledge } from "../knowledge/argument";
import type { Evaluate, ExplainedArgument } from "./explanation";
import { shareShown, shown, valueShown, withUnit } from "./numbers";

/** An argument as the working takes it: one number, a list of rows, or a word such as "simpson". */
export type Taken = number | readonly (readonly (number | undefined)[])[] | string | boolean;

/** What is told of one argument, and what the working takes; undefined where it cannot be taken. */
export interface Read {
  readonly explained: ExplainedArgument;
  readonly taken: Taken | undefined;
}

/**
 * Reads one argument of a call.
 *
 * @param text as it is written; "" where it is left out.
 */
export function readArgument(
  argument: ArgumentKnowledge,
  text: string,
  evaluate: Evaluate,
  knowledge: Knowledge,
): Read {
  const { name, kind, many } = argument;
  const value = text === "" ? null : evaluate(text);
  const tell = (words: string, taken: Taken | undefined, more: Partial<ExplainedArgument> = {}): Read => ({
    explained: { name, text, value: words, ...more },
    taken,
  });
  if (value === undefined) return tell("not worked out here", undefined);
  if (isFailure(value)) return tell(value.error, undefined, { trouble: `${name} comes as an error of its own.` });
  if (many) return readRange(argument, value, evaluate, knowledge, tell);
  const one = isRange(value) ? (value.length === 1 && value[0]?.length === 1 ? value[0][0]! : undefined) : value;
  if (one === undefined)
    return tell(valueShown(value), undefined, { trouble: `${name} is a range of cells; give one cell.` });
  if (isFailure(one)) return tell(one.error, undefined, { trouble: `${name} comes as an error of its own.` });
  if (one === null || isBlank(one, argument)) return leftOut(argument, text, knowledge, tell);
  if (typeof one === "boolean") return tell(one ? "TRUE" : "FALSE", one);
  if (typeof one === "number") return told(argument, one, tell);
  const row = named(argument, one, knowledge);
  if (row) return tell(`${one}: ${figureWords(argument, row.figure)}`, row.figure, { source: row.source });
  const number = numberOfText(argument, one, evaluate, knowledge);
  if (number === undefined) {
    const word = wordOf(argument, one);
    const isNamed = kind === "stone" || kind === "soil";
    const trouble = `${name} is “${one}”, which ${isNamed ? "stands in no table" : "cannot be read"}.`;
    return tell(`“${one}”`, word, word === undefined ? { trouble } : {});
  }
  return tell(`${one}, which is ${withUnit(number, kind)}`, number);
}

/** Text that is no number and is meant so. */
function wordOf({ kind }: ArgumentKnowledge, text: string): Taken | undefined {
  const word = text.trim().toLowerCase();
  if (kind === "yes or no") return /^(true|yes)$/.test(word) ? true : /^(false|no)$/.test(word) ? false : undefined;
  return kind === "width rule" ? word : undefined;
}

type Tell = (words: string, taken: Taken | undefined, more?: Partial<ExplainedArgument>) => Read;

/** A 0 counts as blank where 0 makes no sense, as the functions count it. */
function isBlank(one: Single, { zero, kind }: ArgumentKnowledge): boolean {
  if (one === null || (typeof one === "string" && one.trim() === "")) return true;
  return one === 0 && !zero && kind !== "yes or no";
}

function leftOut(argument: ArgumentKnowledge, text: string, knowledge: Knowledge, tell: Tell): Read {
  const { name, kind, fallback, blankIs } = argument;
  const instead = fallback ?? blankIs;
  const how = text === "" ? "left out" : "blank";
  if (instead === undefined) return tell(how, undefined, { trouble: `${name} is ${how}, and has to be given.` });
  if (instead === "") return tell(how, undefined);
  const row = typeof instead === "string" ? named(argument, instead, knowledge) : undefined;
  if (row) return tell(`${how}: ${instead}, ${figureWords(argument, row.figure)}`, row.figure, { source: row.source });
  if (typeof instead === "number") return tell(`${how}: ${withUnit(instead, kind)}`, instead);
  return tell(`${how}: ${valueShown(instead).replaceAll(/[“”]/g, "")}`, instead);
}

function told({ name, kind, under, usual, zero }: ArgumentKnowledge, one: number, tell: Tell): Read {
  const trouble =
    one < 0 && !(kind === "ft" && zero)
      ? `${name} is less than 0.`
      : under !== undefined && one >= under
        ? `${name} is ${shown(one)}, and has to be under ${under}: 10% rather than 10.`
        : undefined;
  const isUnusual = usual && (one < usual[0] || one > usual[1]);
  const words =
    withUnit(one, kind) + (isUnusual && !trouble ? `, where ${shown(usual[0])} to ${shown(usual[1])} is ordinary` : "");
  return tell(words, one, trouble === undefined ? {} : { trouble });
}

const figureWords = ({ kind }: ArgumentKnowledge, figure: number): string =>
  kind === "soil" ? `swells by ${shareShown(figure)}` : withUnit(figure, kind);

/** The row of a table that a name stands for, with its source. */
function named({ kind }: ArgumentKnowledge, name: string, { stones, soils }: Knowledge) {
  const plain = (text: string) =>
    text
      .toLowerCase()
      .replaceAll(/[-\s]+/g, " ")
      .trim();
  if (kind === "stone") {
    const row = stones.find((one) => plain(one.name) === plain(name));
    return row && { figure: row.tonsPerYard, source: row.source };
  }
  const row = kind === "soil" ? soils.find((one) => plain(one.name) === plain(name)) : undefined;
  return row && { figure: row.swell, source: row.source };
}

/** Text with a number in it, read by our own functions: tape text for lengths. */
function numberOfText({ kind }: ArgumentKnowledge, text: string, evaluate: Evaluate, knowledge: Knowledge) {
  const quoted = `"${text.replaceAll('"', '""')}"`;
  const asked =
    kind === "ft"
      ? evaluate(`${fullName(knowledge, "FEET")}(${quoted})`)
      : kind === "in"
        ? evaluate(`${fullName(knowledge, "INCHES")}(${quoted})`)
        : evaluate(`${quoted}*1`);
  if (typeof asked === "number") return asked;
  const share = /^\s*([\d.]+)\s*%\s*$/.exec(text)?.[1];
  return share === undefined ? undefined : Number(share) / 100;
}

function readRange(
  argument: ArgumentKnowledge,
  value: Value,
  evaluate: Evaluate,
  knowledge: Knowledge,
  tell: Tell,
): Read {
  const rows = isRange(value) ? value : [[value as Single]];
  const cells = rows.flat();
  if (cells.every((one) => one === null || one === ""))
    return leftOut(argument, value === null ? "" : "blank", knowledge, tell);
  const wrong = cells.find(isFailure);
  if (wrong) return tell(wrong.error, undefined, { trouble: `${argument.name} has an error in it.` });
  const taken = rows.map((row) =>
    row.map((one) =>
      typeof one === "number"
        ? one
        : typeof one === "string" && one.trim() !== ""
          ? numberOfText(argument, one, evaluate, knowledge)
          : undefined,
    ),
  );
  const numbers = taken.flat().filter((one) => one !== undefined);
  const unit = withUnit(1, argument.kind).replace(/^1\s?/, "");
  const list = numbers.slice(0, 8).map(shown).join("; ") + (numbers.length > 8 ? "; …" : "");
  const words =
    (rows[0]?.length ?? 1) > 1 && rows.length > 1
      ? `${rows.length} rows of ${rows[0]!.length}`
      : `${list} ${unit}`.trim();
  return tell(words, taken);
}
