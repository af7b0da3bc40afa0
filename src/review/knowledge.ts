import { declarations } from "../functions/declarations";
import type { Declaration } from "../functions/declare";

/** A row of a published table: a name, and where its figure comes from. */
export interface KnownRow {
  readonly name: string;
  readonly source: string;
}

/** What of the other rooms is handed to a check or an explanation, since this room asks none of them. */
export interface Knowledge {
  /** What is before the dot in the names of the functions: "BED". */
  readonly namespace: string;
  readonly functions: readonly Declaration[];
  /** The table of stone; weights in short tons a loose cubic yard. */
  readonly stones: readonly (KnownRow & {
    readonly tonsPerYard: number;
    readonly low: number;
    readonly high: number;
  })[];
  /** The table of soils; swell as a share. */
  readonly soils: readonly (KnownRow & { readonly swell: number })[];
}

/**
 * The knowledge of a check, from the tables of stone and soil.
 *
 * @example knowledgeOf(STONES, SOILS)
 */
export function knowledgeOf(stones: Knowledge["stones"], soils: Knowledge["soils"], namespace = "BED"): Knowledge {
  return { namespace, functions: declarations, stones, soils };
}

/** The function that a formula calls by its full name, such as `BED.STONE_TONS`; undefined for any other. */
export function knownFunction({ namespace, functions }: Knowledge, called: string): Declaration | undefined {
  const name = called.toUpperCase();
  const prefix = `${namespace.toUpperCase()}.`;
  return name.startsWith(prefix) ? functions.find((one) => prefix + one.name === name) : undefined;
}

/** The name of a function as it is called: `fullName(knowledge, "FEET")` is `BED.FEET`. */
export const fullName = ({ namespace }: Knowledge, name: string): string => `${namespace}.${name}`;
