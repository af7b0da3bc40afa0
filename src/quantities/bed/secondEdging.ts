import type { FieldKey } from "./fields";

/*
 * A second edging on the outline of a bed, along sides that have none of the first. What it takes is worked out as for the
 * first, with each field and amount of the first exchanged for its own.
 */

/** The fields of the second edging, by those of the first. */
const fieldsOfSecond = {
  edgingKind: "secondKind",
  houseEdging: "secondHouse",
  rightEdging: "secondRight",
  frontEdging: "secondFront",
  leftEdging: "secondLeft",
  baseEdging: "secondBase",
  lastEdging: "secondLast",
  outerEdging: "secondOuter",
  firstEdging: "secondFirst",
  edge: "secondLength",
  edgingProduct: "secondProduct",
  borderFinish: "secondFinish",
  borderHeight: "secondHeight",
  trenchDepth: "secondTrenchDepth",
  trenchWidth: "secondTrenchWidth",
  pieceLength: "secondPieceLength",
  pieceLap: "secondPieceLap",
  joint: "secondJoint",
  stakeSpacing: "secondStakeSpacing",
  stakesPerPiece: "secondStakesPerPiece",
  sandDepth: "secondSandDepth",
  edgingRate: "secondRate",
  pieceCost: "secondPieceCost",
  stakeCost: "secondStakeCost",
} as const satisfies Partial<Record<FieldKey, FieldKey>>;

/** Its amounts and lines, by those of the first. */
const othersOfSecond = {
  borderRun: "secondRun",
  pieces: "secondPieces",
  stakes: "secondStakes",
  extraStakes: "secondExtraStakes",
  sandYards: "secondSandYards",
  edgingTime: "secondTime",
  edging: "secondEdging",
  stakeLine: "secondStakeLine",
  setEdging: "setSecondEdging",
} as const;

const ofSecond: Readonly<Record<string, string>> = { ...fieldsOfSecond, ...othersOfSecond };
const ofFirst: ReadonlyMap<string, string> = new Map(
  Object.entries(ofSecond).map(([first, second]) => [second, first]),
);

/** What the second edging has in place of a field, an amount, or a line of the first; the same for anything else. */
export const secondKey = <Key extends string>(key: Key): Key => (ofSecond[key] ?? key) as Key;

/** Which key of the first edging one of the second stands for; undefined for any other. */
export const firstKey = (key: string): string | undefined => ofFirst.get(key);
export const firstField = (key: FieldKey): FieldKey | undefined => firstKey(key) as FieldKey | undefined;

/** An expression of the first edging as one of the second. Its corners are in its length. */
export const exchanged = (expression: string): string =>
  expression.replaceAll("{corners}", "0").replace(/\{(\w+)/g, (_, key: string) => `{${secondKey(key)}`);
