import { nearly } from "./hostileJson";
import { Chance } from "./random";
import type { Store } from "./stores";

/** What came of reading many texts from one store. */
export interface FuzzedStore {
  readonly kept: number;
  readonly refused: number;
  /** Texts that made the product fail, told in words. */
  readonly faults: readonly string[];
  readonly slowestMs: number;
}

const MOST_FAULTS = 5;

/** Reads texts that are nearly right, the same ones for the same seed. */
export function fuzzStore({ sound, read }: Store, texts: number, seed = 1): FuzzedStore {
  const chance = new Chance(seed);
  const faults: string[] = [];
  const came = { kept: 0, refused: 0 };
  let slowestMs = 0;
  for (let count = 0; count < texts; count++) {
    const text = nearly(sound, chance);
    const start = performance.now();
    try {
      came[read(text)]++;
    } catch (error) {
      if (faults.length < MOST_FAULTS) faults.push(`${text.slice(0, 300)}: ${String(error)}`);
    }
    slowestMs = Math.max(slowestMs, performance.now() - start);
  }
  const spoilt = Object.keys(Object.prototype);
  if (spoilt.length > 0) faults.push(`Every object has ${spoilt.join(", ")} now.`);
  return { ...came, faults, slowestMs };
}
