/*
 * What one bed of a job takes, as its block or its row on the sheet says: the needs behind each line, so that they can
 * be added before they are rounded to what is sold, and beside them what the bed's own line orders.
 *
 * Lengths in feet, small dimensions in inches, areas in square feet, volumes in loose cubic yards, weights in short
 * tons, money on the sheet's own currency. Every number is finite and 0 or more.
 */

/** A quantity as it is on a line of the bed's own sheet, rounded to what is sold. */
export interface OwnQuantity {
  readonly quantity: number;
  /** Someone typed it over what was worked out. It is then ordered as typed, beside what is worked out together. */
  readonly typed?: boolean;
  /** Cost of one, before markup; left out where the sheet gives none. */
  readonly unitCost?: number;
}

export interface BedNeeds {
  /** As the estimator calls the bed. Two beds may share a name. */
  readonly name: string;
  readonly stone?: StoneNeed;
  readonly border?: BorderNeed;
  readonly sand?: SandNeed;
  readonly fabric?: FabricNeed;
  readonly pins?: PinNeed;
  readonly spoil?: SpoilNeed;
  /** What the estimator added to the bed by hand: plants, edging of another kind, a permit. */
  readonly others?: readonly OtherNeed[];
  readonly work?: BedWork;
}

export interface StoneNeed {
  /** Its name, such as "river rock". */
  readonly kind: string;
  /** The largest stone, in inches. */
  readonly sizeIn: number;
  /** Short tons needed, allowance included. */
  readonly tons: number;
  /** Waste and low spots as a share of the net amount, 0 up to 1: 8 % is 0.08. */
  readonly allowance: number;
  /** Short tons in a loose cubic yard, more than 0. */
  readonly tonsPerYard: number;
  /** What it is sold by; left out: tons. */
  readonly soldBy?: SoldByNeed;
  /** The yard sells in steps of so many, more than 0, and no less than its minimum. */
  readonly yardStep: number;
  readonly yardMinimum: number;
  /** How much is on the bed's own line. */
  readonly order: OwnQuantity;
  readonly truck: Truck;
  /** Deliveries on the bed's own line, in loads. */
  readonly deliveries: OwnQuantity;
}

/** What stone is sold by, other than tons. */
export interface SoldByNeed {
  /** Such as "bags". */
  readonly unit: string;
  /** After the stone's name and size, such as ", in bags of 0.5 cu ft". */
  readonly words: string;
  /** Short tons in one, more than 0. */
  readonly tonsEach: number;
}

/** A truck or trailer, and what it may carry. */
export interface Truck {
  /** What the box holds, more than 0. */
  readonly yards: number;
  /** What may be loaded; 0 where it is not known. */
  readonly payloadTons: number;
}

export interface BorderNeed {
  /** What it is, by its name in `edgingKinds.ts`; left out: metal. */
  readonly kind?: string;
  readonly heightIn: number;
  /** Color or metal, as the office writes it. */
  readonly finish?: string;
  readonly pieceLengthFt: number;
  /** Lap at a joint; under 0 where pieces stand a joint apart. */
  readonly lapIn: number;
  /** Runs set without a break; left out where no more is known than the pieces. */
  readonly runs?: readonly BorderRunNeed[];
  /** Stakes needed, those that come with the pieces included. */
  readonly stakes: number;
  readonly stakesPerPiece: number;
  readonly pieces: OwnQuantity;
  /** Stakes beyond those that come with the pieces. */
  readonly extraStakes: OwnQuantity;
}

export interface BorderRunNeed {
  readonly feet: number;
  /** It comes back to where it began, so that its last piece laps its first. */
  readonly closed: boolean;
}

/** Sand that pavers are set in. */
export interface SandNeed {
  /** Cubic yards needed. */
  readonly yards: number;
  /** It is sold in steps of so many cubic yards, more than 0. */
  readonly step: number;
  readonly order: OwnQuantity;
}

export interface FabricNeed {
  readonly rollWidthFt: number;
  readonly rollLengthFt: number;
  /** Lap of two pieces end to end, where a roll runs out inside a strip. */
  readonly endLapIn: number;
  /** Lengths to cut, full roll width, end laps not included; left out where no more is known than the rolls. */
  readonly stripsFt?: readonly number[];
  /** Layers that these strips make up; left out: 1. */
  readonly layers?: number;
  readonly rolls: OwnQuantity;
}

export interface PinNeed {
  readonly count: number;
  readonly pinsPerBox: number;
  readonly boxes: OwnQuantity;
}

export interface SpoilNeed {
  /** Loose cubic yards to haul. */
  readonly yards: number;
  /** Weight once dug; 0 where it is not known. */
  readonly tonsPerYard: number;
  readonly truck: Truck;
  /** Loads on the bed's own lines: hauled, and paid for at the tip. */
  readonly haul: OwnQuantity;
  readonly dump?: OwnQuantity;
}

export interface OtherNeed {
  readonly item: string;
  readonly unit: string;
  readonly order: OwnQuantity;
}

/** What the crew does in a bed. */
export interface BedWork {
  readonly areaSqFt: number;
  /** To dig, measured in the ground. */
  readonly bankYards: number;
  readonly fabricSqFt: number;
  readonly stoneYards: number;
  readonly barrowTrips: number;
  /** Person-hours by step, as on the bed's lines; a step that is left out takes none of its own. */
  readonly hours: Readonly<Partial<Record<HoursStep, number>>>;
  /** Hours that the estimator added by hand, by what they are for. */
  readonly otherHours?: readonly {
    readonly label: string;
    readonly hours: number;
    /** Done before everything else, such as taking out old shrubs. */
    readonly comesFirst?: boolean;
  }[];
}

/** Steps that have hours of their own. */
export const hoursSteps = ["scrape", "border", "fabric", "stone", "cleanUp"] as const;
export type HoursStep = (typeof hoursSteps)[number];
