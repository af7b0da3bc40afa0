import type { DeclaredArgument } from "../../functions/declare";
import { shareShown, shown } from "../../functions/working";
import { quoted } from "../../quantities/bed/evaluate";
import { must } from "../../quantities/must";
import { isFailure, isRange, type Single, type Value } from "../formula/values";
import { fullName, type Knowledge } from "../knowledge";
import type { Evaluate, ExplainedArgument } from "./explanation";
import { valueShown, withUnit } from "./plain";

/**
 * What is told of one argument of a call.
 *
 * @param text as it is written; "" where it is left out.
 */
export function explainArgument(
  argument: DeclaredArgument,
  text: string,
  evaluate: Evaluate,
  knowledge: Knowledge,
): ExplainedArgument {
  const { name, kind, many } = argument;
  const value = text === "" ? null : evaluate(text);
  const tell: Tell = (words, more = {}) => ({ name, text, value: words, ...more });
  if (value === undefined) return tell("not worked out here");
  if (isFailure(value)) return tell(value.error, { problem: `${name} is an error itself.` });
  if (many) return readRange(argument, value, evaluate, knowledge, tell);
  const one = isRange(value) ? (value.length === 1 && value[0]?.length === 1 ? must(value[0][0]) : undefined) : value;
  if (one === undefined) return tell(valueShown(value), { problem: `${name} is a range of cells. Give one cell.` });
  if (isFailure(one)) return tell(one.error, { problem: `${name} is an error itself.` });
  if (one === null || isBlank(one, argument)) return leftOut(argument, text, knowledge, tell);
  if (typeof one === "boolean") return tell(one ? "TRUE" : "FALSE");
  if (typeof one === "number") return told(argument, one, tell);
  const row = named(argument, one, knowledge);
  if (row) return tell(`${one}: ${figureWords(argument, row.figure)}`, { source: row.source });
  const number = numberOfText(argument, one, evaluate, knowledge);
  if (number === undefined) {
    const isNamed = kind === "stone" || kind === "soil";
    const problem = isNamed ? `${name}: “${one}” isn't in the list.` : `${name}: can't read “${one}”.`;
    return tell(`“${one}”`, isWord(argument, one) ? {} : { problem });
  }
  return tell(`${one}, which is ${withUnit(number, kind)}`);
}

/** Text that is meant as a word. */
function isWord({ kind }: DeclaredArgument, text: string): boolean {
  return kind === "width rule" || (kind === "yes or no" && /^\s*(true|yes|false|no)\s*$/i.test(text));
}

type Tell = (words: string, more?: Partial<ExplainedArgument>) => ExplainedArgument;

/** A 0 counts as blank where 0 makes no sense, as the functions count it. */
function isBlank(one: Single, { zero, kind }: DeclaredArgument): boolean {
  if (one === null || (typeof one === "string" && one.trim() === "")) return true;
  return one === 0 && !zero && kind !== "yes or no";
}

function leftOut(argument: DeclaredArgument, text: string, knowledge: Knowledge, tell: Tell): ExplainedArgument {
  const { name, kind, fallback, blankIs } = argument;
  const instead = fallback ?? blankIs;
  const how = text === "" ? "left out" : "blank";
  if (instead === undefined) return tell(how, { problem: `${name} is ${how}, and it's required.` });
  if (instead === "") return tell(how);
  const row = typeof instead === "string" ? named(argument, instead, knowledge) : undefined;
  if (row) return tell(`${how}: ${instead}, ${figureWords(argument, row.figure)}`, { source: row.source });
  if (typeof instead === "number") return tell(`${how}: ${withUnit(instead, kind)}`);
  return tell(`${how}: ${valueShown(instead).replaceAll(/[“”]/g, "")}`);
}

function told({ name, kind, under, usual, zero }: DeclaredArgument, one: number, tell: Tell): ExplainedArgument {
  const problem =
    one < 0 && !(kind === "ft" && zero)
      ? `${name} is less than 0.`
      : under !== undefined && one >= under
        ? `${name} is ${shown(one)}, and it must be under ${under}. Type 10%, not 10.`
        : undefined;
  const isUnusual = usual && (one < usual[0] || one > usual[1]);
  const words =
    withUnit(one, kind) + (isUnusual && !problem ? `, where ${shown(usual[0])} to ${shown(usual[1])} is typical` : "");
  return tell(words, problem === undefined ? {} : { problem });
}

const figureWords = ({ kind }: DeclaredArgument, figure: number): string =>
  kind === "soil" ? `swells by ${shareShown(figure)}` : withUnit(figure, kind);

/** The row of a table that a name stands for, with its source. */
function named({ kind }: DeclaredArgument, name: string, { stones, soils }: Knowledge) {
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
function numberOfText({ kind }: DeclaredArgument, text: string, evaluate: Evaluate, knowledge: Knowledge) {
  const asked =
    kind === "ft"
      ? evaluate(`${fullName(knowledge, "FEET")}(${quoted(text)})`)
      : kind === "in"
        ? evaluate(`${fullName(knowledge, "INCHES")}(${quoted(text)})`)
        : evaluate(`${quoted(text)}*1`);
  if (typeof asked === "number") return asked;
  const share = /^\s*([\d.]+)\s*%\s*$/.exec(text)?.[1];
  return share === undefined ? undefined : Number(share) / 100;
}

function readRange(
  argument: DeclaredArgument,
  value: Value,
  evaluate: Evaluate,
  knowledge: Knowledge,
  tell: Tell,
): ExplainedArgument {
  const rows = isRange(value) ? value : [[value as Single]];
  const cells = rows.flat();
  if (cells.every((one) => one === null || one === ""))
    return leftOut(argument, value === null ? "" : "blank", knowledge, tell);
  const wrong = cells.find(isFailure);
  if (wrong) return tell(wrong.error, { problem: `${argument.name} has an error in it.` });
  const numbers = cells
    .map((one) =>
      typeof one === "string" && one.trim() !== "" ? numberOfText(argument, one, evaluate, knowledge) : one,
    )
    .filter((one) => typeof one === "number");
  const unit = withUnit(1, argument.kind).replace(/^1\s?/, "");
  const list = numbers.slice(0, 8).map(shown).join("; ") + (numbers.length > 8 ? "; …" : "");
  const words =
    (rows[0]?.length ?? 1) > 1 && rows.length > 1
      ? `${rows.length} rows of ${must(rows[0]).length}`
      : `${list} ${unit}`.trim();
  return tell(words);
}
