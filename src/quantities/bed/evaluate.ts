import { must } from "../must";

/** What an expression works with. Lists stand for ranges of cells. */
export type Value = number | string | boolean | readonly Value[];

/** Where an expression gets its values and its functions from. */
export interface Scope {
  /** What `{key}` is. */
  readonly value: (key: string) => Value;
  /** Functions by name, such as "MAX" or "BED.PINS". */
  readonly functions: Readonly<Record<string, (...given: never[]) => Value>>;
}

/** A text as a formula holds it. */
export const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;

/** Texts are the same whatever their case, as in a sheet. */
export function isSame(one: Value, other: Value): boolean {
  return typeof one === "string" && typeof other === "string"
    ? one.toLowerCase() === other.toLowerCase()
    : one === other;
}

type Evaluate = (scope: Scope) => Value;

const TOKEN = /\s*(\{[\w.]+\}|"(?:[^"]|"")*"|\d+(?:\.\d+)?|[A-Z][A-Z_.]*|<>|<=|>=|[-+*/^=<>(),&])/y;

/** Operators by how loosely they bind, loosest first. */
const LEVELS: readonly Readonly<Record<string, (one: Value, other: Value) => Value>>[] = [
  {
    "=": isSame,
    "<>": (one, other) => !isSame(one, other),
    "<=": (one, other) => one <= other,
    ">=": (one, other) => one >= other,
    "<": (one, other) => one < other,
    ">": (one, other) => one > other,
  },
  { "&": (one, other) => `${one}${other}` },
  { "+": (one, other) => Number(one) + Number(other), "-": (one, other) => Number(one) - Number(other) },
  { "*": (one, other) => Number(one) * Number(other), "/": (one, other) => Number(one) / Number(other) },
  { "^": (one, other) => Number(one) ** Number(other) },
];

const compiled = new Map<string, Evaluate>();

/**
 * The value of an expression: a worksheet formula without its "=", in which `{key}` stands for a value. It knows the
 * operators + - * / ^ & and comparisons, texts, TRUE and FALSE, IF, and the functions of its scope.
 *
 * @throws {Error} for an expression that it can't read, which is a mistake of this program; and whatever the scope's
 *   functions throw.
 * @example evaluate("MAX({a},2)*3", { value: () => 5, functions: { MAX: Math.max } }) // 15
 */
export function evaluate(expression: string, scope: Scope): Value {
  let run = compiled.get(expression);
  if (!run) {
    run = compile(expression);
    compiled.set(expression, run);
  }
  return run(scope);
}

function compile(expression: string): Evaluate {
  const tokens = tokensOf(expression);
  let place = 0;
  const isNext = (token: string) => tokens[place] === token;
  const take = (token: string) => {
    if (tokens[place++] !== token) throw new Error(`"${token}" is missing in ${expression}`);
  };

  function binary(level: number): Evaluate {
    const operators = LEVELS[level];
    if (!operators) return operand();
    let left = binary(level + 1);
    for (let work = operators[tokens[place] ?? ""]; work; work = operators[tokens[place] ?? ""]) {
      place++;
      const [one, other, both] = [left, binary(level + 1), work];
      left = (scope) => both(one(scope), other(scope));
    }
    return left;
  }

  function operand(): Evaluate {
    const token = tokens[place++] ?? "";
    if (token === "-") {
      const of = operand();
      return (scope) => -Number(of(scope));
    }
    if (token === "(") {
      const inside = binary(0);
      take(")");
      return inside;
    }
    if (token.startsWith("{")) return ({ value }) => value(token.slice(1, -1));
    if (token.startsWith('"')) return () => token.slice(1, -1).replaceAll('""', '"');
    if (/^\d/.test(token)) return () => Number(token);
    if (token === "TRUE" || token === "FALSE") return () => token === "TRUE";
    return call(token);
  }

  function call(name: string): Evaluate {
    take("(");
    const given: Evaluate[] = [];
    while (!isNext(")")) {
      // A blank place between commas is an argument that is left out.
      given.push(isNext(",") ? () => "" : binary(0));
      if (isNext(",")) place++;
      else break;
    }
    take(")");
    if (name === "IF") {
      const [condition, yes, no] = given as [Evaluate, Evaluate, Evaluate];
      return (scope) => (condition(scope) ? yes(scope) : no(scope));
    }
    return (scope) => {
      const work = scope.functions[name] as ((...given: Value[]) => Value) | undefined;
      if (!work) throw new Error(`No function ${name} for ${expression}`);
      return work(...given.map((argument) => argument(scope)));
    };
  }

  const whole = binary(0);
  if (place < tokens.length) throw new Error(`Can't read "${tokens[place]}" in ${expression}`);
  return whole;
}

function tokensOf(expression: string): string[] {
  const tokens: string[] = [];
  TOKEN.lastIndex = 0;
  while (TOKEN.lastIndex < expression.length) {
    const at = TOKEN.lastIndex;
    const found = TOKEN.exec(expression);
    if (!found) throw new Error(`Can't read ${expression} from place ${at}`);
    tokens.push(must(found[1]));
  }
  return tokens;
}
