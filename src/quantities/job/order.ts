/** Kinds of suppliers, in the order in which an order sheet lists them. */
export const suppliers = ["stone yard", "border", "fabric and pins", "hauling", "other"] as const;
export type Supplier = (typeof suppliers)[number];

/** One line of a job's order. */
export interface OrderLine {
  /** The same for the same item whatever the beds and their order: tells lines apart. */
  readonly key: string;
  readonly supplier: Supplier;
  readonly item: string;
  readonly specification: string;
  /** All beds together, before rounding; beds that tell no more than their whole pieces are not in it. */
  readonly needed: number;
  readonly neededUnit: string;
  /** How much of what is needed is allowance, in the same unit. */
  readonly allowance: number;
  readonly order: number;
  readonly orderUnit: string;
  /** What the beds' own lines come to: the order bed by bed. */
  readonly bedByBed: number;
  /** `bedByBed` less `order`. Under 0 for stakes alone, where pieces saved no longer bring theirs along. */
  readonly saved: number;
  /** Cost before markup in whole cents; undefined where a bed gives no unit cost. */
  readonly money: LineMoney | undefined;
  /** Short tons of what is ordered or hauled, where its weight is known. */
  readonly weightTons?: number;
  /** Loose cubic yards of what is ordered, and the weights of one that tons were counted by, for what the yard may sell either way. */
  readonly volume?: { readonly yards: number; readonly tonsPerYard: readonly number[] };
  readonly whereUsed: readonly UsedIn[];
  /** How pieces and rolls are cut. */
  readonly cutting?: Cutting;
  /** In sentences: what is ordered apart and why, what was typed by hand, what is not known. */
  readonly notes: readonly string[];
  /** Of these, what is worth a change before it is bought or cut: the crew reads it, too. */
  readonly warnings?: readonly string[];
}

export interface LineMoney {
  readonly orderCents: number;
  readonly bedByBedCents: number;
  readonly savedCents: number;
}

export interface UsedIn {
  readonly bed: string;
  /** In the line's unit of need; undefined where the bed tells no more than what it orders. */
  readonly needed: number | undefined;
  /** On the bed's own line, in the line's unit of order. */
  readonly ownQuantity: number;
  readonly typed: boolean;
}

/** How pieces or rolls are cut for all the beds of a line. */
export interface Cutting {
  /** Used uncut. */
  readonly whole: readonly WholePieces[];
  /** One for each piece or roll that is cut. */
  readonly stocks: readonly Stock[];
  /** Joints more than each run or strip has where it is ordered alone: 0 for border. */
  readonly moreJoints: number;
  /** Nothing takes fewer pieces or rolls without more joints than this has; false where that is not proven. */
  readonly proven: boolean;
}

export interface WholePieces {
  readonly bed: string;
  /** The number in the bed's drawing: of the last piece of a run, or of a cut of fabric. */
  readonly part: number;
  readonly count: number;
  /** Of each, as the supplier sells it. */
  readonly lengthFt: number;
}

export interface Stock {
  readonly cuts: readonly StockCut[];
  readonly leftOverFt: number;
}

export interface StockCut {
  readonly bed: string;
  readonly part: number;
  readonly lengthFt: number;
}

export interface JobOrder {
  /** By kind of supplier. */
  readonly lines: readonly OrderLine[];
  /** Of the lines whose money is known. */
  readonly money: LineMoney;
  /** Items without a unit cost, which the sums leave out. */
  readonly unpriced: readonly string[];
  /** About trucks and trailers, in sentences, each with the key of its line. */
  readonly warnings: readonly { readonly line: string; readonly text: string }[];
}
