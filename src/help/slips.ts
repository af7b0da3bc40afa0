import type { DeclaredArgument } from "../functions/declare";
import { call, isError, type Refusal } from "./calls";
import { FILLING, type Probe, probesFor } from "./probes";

/** Something that can go wrong with a function: what was typed, and what its cell then says. */
export interface Slip {
  readonly argument: string;
  readonly words: string;
  readonly error: string;
  readonly message: string;
  /** Other arguments for which the same is said. */
  readonly alsoFor: readonly string[];
}

/**
 * What can go wrong with a function, found by trying: each argument of its example is given mistakes of its kind, and
 * what the function says is told once. So the page says what the function says, and nothing else.
 *
 * @param given the arguments of the example.
 */
export function slipsOf(id: string, known: readonly DeclaredArgument[], given: readonly unknown[]): Slip[] {
  const plain: unknown[] = known.map((_, place) => given[place] ?? null);
  const filled: unknown[] = known.map(({ name }, place) => given[place] ?? FILLING[name] ?? null);
  const slips = new Map<string, Slip>();
  for (const [place, argument] of known.entries()) {
    for (const probe of probesFor(argument)) {
      for (const base of [plain, filled]) {
        const answer = call(id, base.with(place, probe.value));
        if (isError(answer)) note(slips, argument.name, probe, answer);
      }
    }
  }
  return [...slips.values()];
}

function note(slips: Map<string, Slip>, argument: string, probe: Probe, { error, message }: Refusal): void {
  const kind = kindOfMessage(message);
  const known = slips.get(kind);
  if (!known) slips.set(kind, { argument, words: probe.words, error, message, alsoFor: [] });
  else if (known.argument !== argument && !known.alsoFor.includes(argument))
    slips.set(kind, { ...known, alsoFor: [...known.alsoFor, argument] });
}

/**
 * What is left of a message without its particulars, so that two of one kind are alike: no names of arguments, no
 * numbers, nothing quoted.
 */
export function kindOfMessage(message: string): string {
  return message
    .replace(/“[^”]*”/g, "…")
    .replace(/^\w+(?: \([^)]*\))?(?=: )/, "…")
    .replace(/^\w+ (?:\([^)]*\) (?!is blank))?(?=\(|is |has )/, "… ")
    .replace(/such as .*$/, "such as …")
    .replace(/-?\d[\d.,]*(?:e[+-]?\d+)?/g, "0");
}
