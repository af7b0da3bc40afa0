import { parseA1Ref, stringifyA1Ref, tokenize } from "@borgar/fx";
import type { Reference } from "./reference";

/** How far each edge of one reference moves. */
export interface Shift {
  /** Fix the reference with "$", too. */
  readonly fixed?: boolean;
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
}

const REFERENCES = new Set(["range", "range_beam", "range_ternary", "range_named", "structured"]);

/**
 * A formula with its references moved.
 *
 * @param formula with its "=".
 * @param references of that formula, in the order in which they are written.
 * @param shiftOf how far the edges of one reference move; undefined leaves it as it is.
 * @returns undefined where the formula cannot be rewritten: a reference would leave the sheet.
 */
export function shifted(
  formula: string,
  references: readonly Reference[],
  shiftOf: (reference: Reference, place: number) => Shift | undefined,
): string | undefined {
  const tokens = tokenize(formula, { withLocation: true, mergeRefs: true });
  const inText = tokens.filter(({ type }) => REFERENCES.has(type));
  // Names of LET are no references, and then the places do not match.
  if (inText.length !== references.length) return undefined;
  const written: string[] = [];
  let place = 0;
  for (const token of tokens) {
    if (!REFERENCES.has(token.type)) {
      written.push(token.value);
      continue;
    }
    const shift = shiftOf(references[place]!, place);
    const moved = shift === undefined ? token.value : move(token.value, shift);
    if (moved === undefined) return undefined;
    written.push(moved);
    place++;
  }
  return written.join("");
}

function move(text: string, shift: Shift): string | undefined {
  const read = parseA1Ref(text, { allowNamed: false });
  if (!read || !("range" in read)) return text;
  const { range } = read;
  const by = (at: number | null | undefined, distance: number) =>
    at === null || at === undefined ? at : at + distance;
  const held = shift.fixed ? { $top: true, $left: true, $bottom: true, $right: true } : {};
  const moved = {
    ...range,
    ...held,
    top: by(range.top, shift.top) ?? null,
    left: by(range.left, shift.left) ?? null,
    bottom: by(range.bottom ?? range.top, shift.bottom) ?? null,
    right: by(range.right ?? range.left, shift.right) ?? null,
  };
  if ([moved.top, moved.left, moved.bottom, moved.right].some((at) => typeof at === "number" && at < 0))
    return undefined;
  return stringifyA1Ref({ ...read, range: moved });
}
