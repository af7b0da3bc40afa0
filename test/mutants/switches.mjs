// The two functions that instrumented code calls: is this mutant on, and a note that these mutants were passed.

let on = -1;
let passed = 0;
let limit = 0;

/** A loop that a mutant keeps from ending is left here, long before a clock would notice. */
export class PassedTooOften extends Error {}

globalThis.stryMutAct_9fa48 = (id) => {
  if (id !== on) return false;
  passed += 1;
  if (passed > limit) throw new PassedTooOften();
  return true;
};
globalThis.stryCov_9fa48 = () => {};

/** Turns a mutant on, for so many passes. */
export function turnOn(id, passes) {
  on = id;
  passed = 0;
  limit = passes;
}

export function turnOff() {
  on = -1;
}

/** Whether the mutant that was on last ran into its limit, also where the code under test swallowed the error. */
export const ranOver = () => passed > limit;

/** Counts passes from now on, by mutant, for whatever `countFor` named last. */
export function startCounting() {
  let counts = new Map();
  globalThis.stryCov_9fa48 = (...ids) => {
    for (const id of ids) counts.set(id, (counts.get(id) ?? 0) + 1);
  };
  return {
    countFor: (its) => {
      counts = its;
    },
  };
}
