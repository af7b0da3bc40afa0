import { addedUp } from "./addedUp";
import type { Cutting } from "./order";

/** The cuttings of several lots as one list. */
export function joinCuttings(cuttings: readonly Cutting[]): Cutting {
  return {
    whole: cuttings.flatMap(({ whole }) => whole),
    stocks: cuttings.flatMap(({ stocks }) => stocks),
    moreJoints: addedUp(cuttings.map(({ moreJoints }) => moreJoints)),
    proven: cuttings.every(({ proven }) => proven),
  };
}
