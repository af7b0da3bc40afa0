import type { InTheWay } from "../workbook/change/place";

/** Longer lists of addresses are cut. */
const MOST_CHARACTERS = 80;

/**
 * What is in the way of something that was to be written.
 *
 * @param what what was to be written: "block".
 * @returns the sentence before the list, the things in the list, and where it can go instead, as a button has it.
 */
export function inTheWayWords({ address, sheetName, obstacles, nearestFree }: InTheWay, what: string) {
  return {
    lead: `Nothing was written. The ${what} needs ${address} on ${sheetName}, where there ${obstacles.length > 1 ? "are" : "is"}:`,
    things: obstacles.map(({ what: thing, where }) => `${thing}: ${cut(where)}`),
    instead: nearestFree && `Put it at ${nearestFree.address.split(":")[0]}`,
  };
}

/** The same as one text, for a screen that offers no other place. */
export function inTheWayText(inTheWay: InTheWay, what: string): string {
  const { lead, things } = inTheWayWords(inTheWay, what);
  return `${lead} ${things.join("; ")}. Make room there, then try again.`;
}

const cut = (where: string) => (where.length > MOST_CHARACTERS ? `${where.slice(0, MOST_CHARACTERS)}…` : where);
