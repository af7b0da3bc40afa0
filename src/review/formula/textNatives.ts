import { isFailure, isRange, type Single, single, textOf, Unknown, type Value } from "./values";

/** The plain functions that look at text, or find it. */
export const textNatives: Readonly<Record<string, (given: readonly Value[]) => Value>> = {
  TRIM: onText((text) => text.replace(/ +/g, " ").replace(/^ | $/g, "")),
  LEN: onText((text) => text.length),
  LEFT: onText((text, count) => text.slice(0, Number(count ?? 1))),
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
