import type { Chance } from "./random";

/** Names that reach into the language itself where someone reads them carelessly. */
const NAMES = ["__proto__", "constructor", "prototype", "toString", "length", "kept", "version", "0", ""] as const;

const PLAIN: readonly unknown[] = [
  null,
  true,
  0,
  -1,
  1.5,
  1e308,
  -0.1,
  "",
  "text",
  "__proto__",
  "constructor",
  "=1+1",
  "\u0000\u202e\ud800",
  [],
  [[]],
  {},
  [null],
];

/** Anything that JSON can tell, now and then deep. */
function anything(chance: Chance, depth = 0): unknown {
  if (depth > 3 || chance.onceIn(2)) return chance.oneOf(PLAIN);
  if (chance.onceIn(2)) return chance.list(0, 4, () => anything(chance, depth + 1));
  return fromPairs(chance.list(0, 3, () => [chance.oneOf(NAMES), anything(chance, depth + 1)] as const));
}

/** An object in which `__proto__` is a member like any other, as JSON makes it. */
function fromPairs(pairs: readonly (readonly [string, unknown])[]): unknown {
  return JSON.parse(`{${pairs.map(([name, value]) => `${JSON.stringify(name)}:${JSON.stringify(value)}`).join(",")}}`);
}

/** A text that is nearly the one given: cut, garbled, or with something else in one or more of its places. */
export function nearly(text: string, chance: Chance): string {
  const kind = chance.whole(0, 9);
  if (kind === 0) return text.slice(0, chance.whole(0, text.length));
  if (kind === 1) {
    const at = chance.whole(0, text.length - 1);
    return text.slice(0, at) + chance.oneOf(['"', "{", "]", "\\u", "9", "\u0000", ""]) + text.slice(at + 1);
  }
  if (kind === 2) return JSON.stringify(anything(chance));
  let content: unknown = JSON.parse(text);
  const changes = chance.whole(1, 3);
  for (let change = 0; change < changes; change++) content = changed(content, chance);
  return JSON.stringify(content);
}

/** The same with one part of it, at any depth, changed. */
function changed(value: unknown, chance: Chance): unknown {
  if (typeof value !== "object" || value === null || chance.onceIn(8)) return anything(chance);
  const pairs = Object.entries(value);
  if (Array.isArray(value)) {
    const at = chance.whole(0, Math.max(0, value.length - 1));
    if (chance.onceIn(6)) return [...value, anything(chance)];
    if (chance.onceIn(6)) return value.filter((_, index) => index !== at);
    return value.map((one: unknown, index) => (index === at ? changed(one, chance) : one));
  }
  if (pairs.length === 0 || chance.onceIn(6)) return fromPairs([...pairs, [chance.oneOf(NAMES), anything(chance)]]);
  const [name] = chance.oneOf(pairs);
  if (chance.onceIn(6)) return fromPairs(pairs.filter(([other]) => other !== name));
  return fromPairs(pairs.map(([other, one]) => [other, other === name ? changed(one, chance) : one] as const));
}
