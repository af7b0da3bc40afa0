import { must } from "../../quantities/must";
import {
  type Failure,
  isFailure,
  isRange,
  numberOf,
  type Single,
  single,
  textOf,
  truthOf,
  Unknown,
  type Value,
} from "./values";

/** The plain functions that estimating sheets are made of. Everything else stays unknown, and is said to be. */
export const natives: Readonly<Record<string, (given: readonly Value[]) => Value>> = {
  SUM: overNumbers((numbers) => numbers.reduce((sum, number) => sum + number, 0)),
  AVERAGE: overNumbers((numbers) =>
    numbers.length === 0 ? { error: "#DIV/0!" } : numbers.reduce((sum, number) => sum + number, 0) / numbers.length,
  ),
  MIN: overNumbers((numbers) =>
    numbers.length === 0 ? 0 : numbers.reduce((least, number) => Math.min(least, number)),
  ),
  MAX: overNumbers((numbers) => (numbers.length === 0 ? 0 : numbers.reduce((most, number) => Math.max(most, number)))),
  COUNT: (given) => flat(given).filter((value) => typeof value === "number").length,
  COUNTA: (given) => flat(given).filter((value) => value !== null && value !== "").length,
  SUBTOTAL: ([task, ...given]) => {
    const name = { 1: "AVERAGE", 2: "COUNT", 3: "COUNTA", 4: "MAX", 5: "MIN", 9: "SUM" }[Number(task) % 100];
    const native = name === undefined ? undefined : natives[name];
    if (!native) throw new Unknown("SUBTOTAL");
    return native(given);
  },
  SUMIF: ([range, criterion, sums]) => {
    if (range === undefined || criterion === undefined || !isRange(range)) throw new Unknown("SUMIF");
    const added = sums === undefined ? range : sums;
    if (!isRange(added)) throw new Unknown("SUMIF");
    const meets = criterionOf(single(criterion));
    let sum = 0;
    for (const [r, row] of range.entries()) {
      for (const [c, value] of row.entries()) {
        const number = added[r]?.[c];
        if (meets(value) && typeof number === "number") sum += number;
      }
    }
    return sum;
  },
  SUMPRODUCT: (given) => {
    const ranges = given.map((value) => (isRange(value) ? value : [[value]])) as Single[][][];
    const factor = (value: Single | undefined) => (typeof value === "number" ? value : 0);
    let sum = 0;
    for (const [r, row] of (ranges[0] ?? []).entries()) {
      for (const c of row.keys()) sum += ranges.reduce((product, range) => product * factor(range[r]?.[c]), 1);
    }
    return sum;
  },
  PRODUCT: overNumbers((numbers) => numbers.reduce((product, number) => product * number, 1)),
  ROUND: rounding((number) => Math.round(number)),
  ROUNDUP: rounding(Math.ceil),
  ROUNDDOWN: rounding(Math.floor),
  TRUNC: rounding(Math.floor),
  INT: onNumbers((number) => Math.floor(must(number))),
  CEILING: onNumbers((number, step = 1) => (step === 0 ? 0 : Math.ceil(tidy(must(number) / step)) * step)),
  FLOOR: onNumbers((number, step = 1) => (step === 0 ? 0 : Math.floor(tidy(must(number) / step)) * step)),
  ABS: onNumbers((number) => Math.abs(must(number))),
  SQRT: onNumbers((number) => (must(number) < 0 ? { error: "#NUM!" } : Math.sqrt(must(number)))),
  MOD: onNumbers((number, by = 0) =>
    by === 0 ? { error: "#DIV/0!" } : must(number) - by * Math.floor(must(number) / by),
  ),
  POWER: onNumbers((number, power = 0) => must(number) ** power),
  PI: () => Math.PI,
  ROWS: ([range]) => (range !== undefined && isRange(range) ? range.length : 1),
  COLUMNS: ([range]) => (range !== undefined && isRange(range) ? (range[0]?.length ?? 0) : 1),
  INDEX: ([range, row = null, column = null]) => {
    if (range === undefined || !isRange(range)) throw new Unknown("INDEX");
    const [down, across] = [Number(row ?? 0), Number(column ?? 0)];
    // In one row or one column the only number counts along it.
    const cells = range.length === 1 && column === null ? range[0]?.[down - 1] : range[down - 1]?.[(across || 1) - 1];
    return cells === undefined ? { error: "#REF!" } : cells;
  },
  AND: (given) => truths(given, (all) => all.every(Boolean)),
  OR: (given) => truths(given, (all) => all.some(Boolean)),
  NOT: ([value]) => truths([value ?? null], ([one]) => !one),
  N: ([value]) => (typeof value === "number" ? value : 0),
  ISBLANK: ([value]) => single(value ?? null) === null,
  ISNUMBER: ([value]) => typeof single(value ?? null) === "number",
  ISTEXT: ([value]) => typeof single(value ?? null) === "string",
  ISERROR: ([value]) => isFailure(single(value ?? null)),
  TRUE: () => true,
  FALSE: () => false,
  // What looks at text, or finds it.
  TRIM: onText((text) => text.replace(/ +/g, " ").replace(/^ | $/g, "")),
  LEN: onText((text) => text.length),
  LEFT: onText((text, count) => text.slice(0, Number(count ?? 1))),
  MID: onText((text, first, count) => text.slice(Number(first) - 1, Number(first) - 1 + Number(count))),
  REPT: onText((text, times) => text.repeat(Number(times))),
  SUBSTITUTE: onText((text, old, fresh, place) => {
    if (place !== undefined) throw new Unknown("SUBSTITUTE");
    return asText(old) === "" ? text : text.replaceAll(asText(old), () => asText(fresh));
  }),
  EXACT: onText((text, other) => text === asText(other)),
  COUNTIF: ([range, criterion]) => {
    if (range === undefined || !isRange(range)) throw new Unknown("COUNTIF");
    const meets = likeText(single(criterion ?? null));
    return range.flat().filter(meets).length;
  },
  MATCH: ([wanted, range, kind]) => {
    if (range === undefined || !isRange(range) || Number(kind) !== 0) throw new Unknown("MATCH");
    const sought = single(wanted ?? null);
    if (isFailure(sought)) return sought;
    const meets = typeof sought === "string" ? likeText(sought) : (value: Single) => value === sought;
    const place = range.flat().findIndex(meets);
    return place < 0 ? { error: "#N/A" } : place + 1;
  },
};

/** Numbers of ranges, and single values that can be read as numbers; the first error among them is the answer. */
function overNumbers(work: (numbers: readonly number[]) => Value) {
  return (given: readonly Value[]): Value => {
    const numbers: number[] = [];
    for (const value of given) {
      if (!isRange(value)) {
        const number = numberOf(value);
        if (typeof number !== "number") return number;
        if (value !== null) numbers.push(number);
        continue;
      }
      for (const one of value.flat()) {
        if (isFailure(one)) return one;
        if (typeof one === "number") numbers.push(one);
      }
    }
    return work(numbers);
  };
}

function onNumbers(work: (...numbers: (number | undefined)[]) => number | Failure) {
  return (given: readonly Value[]): Value => {
    const numbers = given.map(numberOf);
    const wrong = numbers.find((number) => typeof number !== "number");
    return wrong ?? work(...(numbers as number[]));
  };
}

/** Rounds the size of a number to a place; the sign is put back, as the host does it. */
function rounding(round: (number: number) => number) {
  return onNumbers((number, places = 0) => {
    const factor = 10 ** Math.trunc(places);
    return (Math.sign(must(number)) * round(tidy(Math.abs(must(number)) * factor))) / factor;
  });
}

/** Takes off what binary arithmetic adds, such as 1.1 × 10 = 11.000000000000002. */
const tidy = (number: number) => Number(number.toPrecision(15));

function truths(given: readonly Value[], work: (all: readonly boolean[]) => boolean): Value {
  const all: boolean[] = [];
  for (const value of flat(given)) {
    const truth = truthOf(value);
    if (typeof truth !== "boolean") return truth;
    all.push(truth);
  }
  return work(all);
}

const flat = (given: readonly Value[]): Single[] => given.flatMap((value) => (isRange(value) ? value.flat() : [value]));

function criterionOf(criterion: Single): (value: Single) => boolean {
  if (criterion === null || isFailure(criterion)) throw new Unknown("a criterion");
  const [, operator = "=", rest = ""] = /^(<>|<=|>=|=|<|>)?(.*)$/s.exec(textOf(criterion)) ?? [];
  if (/[*?]/.test(rest)) throw new Unknown("a wildcard");
  const number = rest.trim() === "" ? Number.NaN : Number(rest);
  return (value) => {
    if (Number.isNaN(number)) {
      const same = (value === null || isFailure(value) ? "" : textOf(value)).toLowerCase() === rest.toLowerCase();
      if (operator === "=") return same;
      if (operator === "<>") return !same;
      throw new Unknown("an order of texts");
    }
    if (typeof value !== "number") return operator === "<>";
    return {
      "=": value === number,
      "<>": value !== number,
      "<": value < number,
      ">": value > number,
      "<=": value <= number,
      ">=": value >= number,
    }[operator] as boolean;
  };
}

function onText(work: (text: string, ...others: Single[]) => string | number | boolean) {
  return (given: readonly Value[]): Value => {
    const [first = null, ...others] = given.map(single);
    const wrong = [first, ...others].find(isFailure);
    return wrong ?? work(asText(first), ...others);
  };
}

const asText = (value: Single | undefined): string =>
  value === undefined || value === null || isFailure(value) ? "" : textOf(value);

/** Whether a text is like a pattern, in which * stands for anything and ? for one character. */
function likeText(pattern: Single): (value: Single) => boolean {
  // A comparison such as ">5" asks for more than likeness.
  if (typeof pattern !== "string" || /^[<>=]/.test(pattern)) throw new Unknown("a criterion");
  const source = pattern
    .replace(/[.+^${}()|[\]\\]/g, "\\$&")
    .replaceAll("*", ".*")
    .replaceAll("?", ".");
  const like = new RegExp(`^${source}$`, "is");
  return (value) => typeof value === "string" && like.test(value);
}
