import { declarations } from "../../src/functions/declarations";
import type { DeclaredArgument } from "../../src/functions/declare";
import * as functions from "../../src/functions/index";
import { messages } from "../../src/quantities/messages";
import { FakeCellError } from "../fakeCustomFunctions";
import { Chance } from "./random";
import { valueFor } from "./values";

/** What came of trying one function many times. */
export interface Fuzzed {
  readonly calls: number;
  readonly answers: number;
  readonly refusals: number;
  /** Calls whose outcome is neither a right kind of answer nor a worded refusal, told in words. */
  readonly faults: readonly string[];
  /** The messages that came, each once. */
  readonly messages: ReadonlySet<string>;
  readonly slowestMs: number;
  readonly slowest: string;
}

const MOST_FAULTS = 5;
const LOOKS_LIKE_AN_ERROR = /^#[A-Z/0]+[!?]?/;

/** Calls a function with random and hostile values, the same ones for the same seed. */
export function fuzz(id: keyof typeof functions, calls: number, seed = 1): Fuzzed {
  const chance = new Chance(seed);
  const known = declarations.find(({ name }) => name === id)!;
  const called = functions[id] as (...given: unknown[]) => unknown;
  const told = new Set<string>();
  const faults: string[] = [];
  let answers = 0;
  let slowestMs = 0;
  let slowest = "";
  for (let call = 0; call < calls; call++) {
    const given = argumentsFor(known.arguments, chance);
    const start = performance.now();
    const outcome = outcomeOf(called, given);
    const ms = performance.now() - start;
    if (ms > slowestMs) [slowestMs, slowest] = [ms, inWords(given)];
    if ("answer" in outcome) answers++;
    else told.add(outcome.message);
    const fault = "answer" in outcome ? faultOfAnswer(outcome.answer) : faultOfRefusal(outcome);
    const changed = call % 97 === 0 && !same(outcome, outcomeOf(called, given)) ? "another answer the second time" : "";
    if ((fault || changed) && faults.length < MOST_FAULTS) faults.push(`${id}(${inWords(given)}): ${fault || changed}`);
  }
  return { calls, answers, refusals: calls - answers, faults, messages: told, slowestMs, slowest };
}

/** A call is mostly right but for one argument, or hostile throughout. */
function argumentsFor(known: readonly DeclaredArgument[], chance: Chance): unknown[] {
  const odd = chance.oneOf([2, 8, 30, 1000]);
  const given = known.map((argument) => valueFor(argument, chance, odd));
  while (given.length > 0 && given.at(-1) === undefined && chance.onceIn(2)) given.pop();
  return given;
}

type Outcome =
  | { readonly answer: unknown }
  | { readonly code: string; readonly message: string; readonly thrown: unknown };

function outcomeOf(called: (...given: unknown[]) => unknown, given: readonly unknown[]): Outcome {
  try {
    return { answer: called(...given) };
  } catch (thrown) {
    if (thrown instanceof FakeCellError) return { code: thrown.code, message: thrown.message, thrown };
    return { code: "", message: String(thrown), thrown };
  }
}

function faultOfAnswer(answer: unknown): string | undefined {
  if (typeof answer === "number") return faultOfNumber(answer, 0);
  if (!Array.isArray(answer)) return `it gives ${typeof answer}`;
  const [headings, ...rows] = answer as unknown[][];
  if (!headings?.every((heading) => typeof heading === "string" && heading !== "")) return "the list has no headings";
  for (const row of rows) {
    if (row.length !== headings.length) return "a row is not as wide as the headings";
    for (const one of row) {
      const fault = typeof one === "number" ? faultOfNumber(one, Number.NEGATIVE_INFINITY) : faultOfText(one);
      if (fault) return fault;
    }
  }
  return undefined;
}

function faultOfNumber(value: number, least: number): string | undefined {
  if (!Number.isFinite(value)) return `it gives ${value}`;
  if (value < least) return `it gives ${value}, less than 0`;
  return Object.is(value, -0) ? "it gives -0" : undefined;
}

function faultOfText(value: unknown): string | undefined {
  if (typeof value !== "string") return `a cell of the list is ${value === null ? "null" : typeof value}`;
  return LOOKS_LIKE_AN_ERROR.test(value) ? `a cell of the list looks like an error: ${value}` : undefined;
}

function faultOfRefusal({ code, message, thrown }: Exclude<Outcome, { answer: unknown }>): string | undefined {
  if (!(thrown instanceof FakeCellError)) return `it throws ${message.slice(0, 80)}`;
  if (code !== "#VALUE!" && code !== "#N/A") return `the error is ${code}`;
  if (message === messages.unforeseen()) return "the error was not foreseen";
  if (!/^\S[\s\S]*\.$/.test(message)) return `the error is not a sentence: ${message.slice(0, 80)}`;
  // The host shows a message beside the cell, in a small box.
  if (message.length > 300) return `the message has ${message.length} letters: ${message.slice(0, 80)}`;
  return /NaN|Infinity|undefined|\[object/.test(message.replace(/“[^”]*”/g, "").replace(/-?(?:NaN|Infinity)/, ""))
    ? `the message shows the program's insides: ${message}`
    : undefined;
}

const same = (one: Outcome, other: Outcome): boolean =>
  "answer" in one
    ? "answer" in other && JSON.stringify(one.answer) === JSON.stringify(other.answer)
    : !("answer" in other) && one.message === other.message;

/** The arguments of a call, as short as they can be told. */
function inWords(given: readonly unknown[]): string {
  const text = JSON.stringify(given, (_, value: unknown) => {
    if (typeof value === "string")
      return value.length > 60 ? `${value.slice(0, 20)}… (${value.length} letters)` : value;
    if (typeof value === "number")
      return Number.isFinite(value) && !Object.is(value, -0) ? value : String(value === 0 ? "-0" : value);
    return value === undefined || ["bigint", "symbol", "function"].includes(typeof value) ? String(value) : value;
  });
  return text.slice(1, -1).slice(0, 400);
}
