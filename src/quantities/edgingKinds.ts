import type { FieldKey } from "./bed/fields";
import { must } from "./must";
import { rowNamed, rowOr, type TableRow } from "./tables";

/** Lines of the estimate that depend on what the bed is edged with. */
export type EdgingLine = "edging" | "stakeLine" | "sandLine" | "setEdging";

/** What a bed is edged with, and all that follows from it. */
export interface EdgingKind extends Pick<TableRow, "name"> {
  /** As it is picked from a list. */
  readonly label: string;
  /** The lines that it has, with their words; a line that is left out isn't in the estimate. */
  readonly lines: Readonly<Partial<Record<EdgingLine, { readonly label: string; readonly unit: string }>>>;
  /** Stakes along the run that neighbors share at joints, or so many for each piece by itself; left out: none. */
  readonly fastened?: "along" | "each";
  /** Pieces stand in sand, a joint apart; others lap or butt. */
  readonly inSand?: boolean;
  /** How its edge is drawn. */
  readonly drawn: "band" | "units" | "cut" | "none";
  /** Usual figures where they aren't those of metal edging. Where each comes from is in `edgingSources.ts`. */
  readonly usual: Readonly<Partial<Record<FieldKey, string>>>;
}

const pieces = (label: string, unit: string) => ({ label, unit });
const labor = (label: string) => ({ label, unit: "labor hours" });
const STAKED = { edging: pieces("Edging pieces", "pieces"), stakeLine: pieces("Extra stakes", "stakes") };

/**
 * What beds are edged with, a row a kind. The usual figures set the top of the edge level with the ground, as metal
 * edging is: its height, with sand below it, is the scrape and the trench together.
 */
export const EDGING_KINDS: readonly EdgingKind[] = [
  {
    name: "metal",
    label: "Metal, with stakes",
    lines: { ...STAKED, setEdging: labor("Set edging") },
    fastened: "along",
    drawn: "band",
    usual: {},
  },
  {
    name: "plastic",
    label: "Plastic, with stakes",
    lines: { ...STAKED, setEdging: labor("Set edging") },
    fastened: "along",
    drawn: "band",
    usual: {
      borderHeight: "5",
      trenchDepth: "2.5",
      pieceLength: "20",
      pieceLap: "0",
      stakeSpacing: "48",
      stakesPerPiece: "5",
      edgingRate: "20",
      pieceCost: "28",
      stakeCost: "1.5",
    },
  },
  {
    name: "pavers",
    label: "Pavers or brick, in sand",
    lines: {
      edging: pieces("Pavers", "pavers"),
      sandLine: pieces("Sand", "cu yd"),
      setEdging: labor("Set pavers"),
    },
    inSand: true,
    drawn: "units",
    usual: {
      borderHeight: "2.375",
      trenchDepth: "0.875",
      trenchWidth: "8",
      pieceLength: "4 in",
      edgingRate: "10",
      pieceCost: "0.9",
    },
  },
  {
    name: "timber",
    label: "Timber, with spikes",
    lines: {
      edging: pieces("Timbers", "timbers"),
      stakeLine: pieces("Spikes", "spikes"),
      setEdging: labor("Set timbers"),
    },
    fastened: "each",
    drawn: "band",
    usual: {
      borderHeight: "5.5",
      trenchDepth: "3",
      trenchWidth: "6",
      pieceLength: "8",
      stakeSpacing: "48",
      edgingRate: "8",
      pieceCost: "38",
      stakeCost: "1.6",
    },
  },
  {
    name: "spade cut",
    label: "Spade-cut edge",
    lines: { setEdging: labor("Cut the edge") },
    drawn: "cut",
    usual: { trenchDepth: "2.5", trenchWidth: "4", edgingRate: "25" },
  },
  { name: "none", label: "No edging", lines: {}, drawn: "none", usual: {} },
];

/** The kind that a bed has until another is picked, and that beds of earlier versions have. */
export const METAL = must(EDGING_KINDS.find(({ name }) => name === "metal"));

/** What a bed has as its second edging until one is picked. */
export const NO_EDGING = must(EDGING_KINDS.find(({ name }) => name === "none"));

/** Other names of the trade, to find the kind that was meant. */
const OTHER_NAMES: Readonly<Record<string, string>> = {
  steel: "metal",
  aluminum: "metal",
  poly: "plastic",
  brick: "pavers",
  bricks: "pavers",
  stone: "pavers",
  wood: "timber",
  ties: "timber",
  natural: "spade cut",
  trench: "spade cut",
};

/**
 * The kind of a name; capitals and hyphens don't matter.
 *
 * @throws Problem "name" with the nearest kind, for a name that isn't one.
 * @example edgingKindNamed("Spade-cut").name // "spade cut"
 */
export function edgingKindNamed(name: string, argument: string): EdgingKind {
  return rowNamed(EDGING_KINDS, name, argument, undefined, OTHER_NAMES);
}

/** The same for a name that was read from a cell: metal for none and for one that isn't a kind, which is refused elsewhere. */
export const edgingKindOf = (name: string | undefined): EdgingKind => rowOr(EDGING_KINDS, name, METAL);

/** Whether there is edging to buy, which stands above the ground; a spade-cut edge is only cut. */
export const hasPieces = ({ lines }: EdgingKind): boolean => lines.edging !== undefined;

/** Fields that only some kinds of edging have, each with what a kind must have. */
const ASKED: Readonly<Partial<Record<FieldKey, (kind: EdgingKind) => boolean>>> = {
  edgingProduct: hasPieces,
  borderFinish: hasPieces,
  borderHeight: hasPieces,
  pieceLength: hasPieces,
  pieceCost: hasPieces,
  trenchDepth: ({ lines }) => lines.setEdging !== undefined,
  trenchWidth: ({ lines }) => lines.setEdging !== undefined,
  edgingRate: ({ lines }) => lines.setEdging !== undefined,
  pieceLap: ({ fastened }) => fastened === "along",
  stakesPerPiece: ({ fastened }) => fastened === "along",
  stakeSpacing: ({ fastened }) => fastened !== undefined,
  stakeCost: ({ fastened }) => fastened !== undefined,
  joint: ({ inSand }) => inSand === true,
  sandDepth: ({ inSand }) => inSand === true,
  sandStep: ({ inSand }) => inSand === true,
  sandCost: ({ inSand }) => inSand === true,
};

/** Amounts that only some kinds of edging have. */
const COUNTED: Readonly<Record<string, (kind: EdgingKind) => boolean>> = {
  pieces: hasPieces,
  stakes: ({ fastened }) => fastened !== undefined,
  extraStakes: ({ fastened }) => fastened !== undefined,
  sandYards: ({ inSand }) => inSand === true,
  sandOrder: ({ inSand }) => inSand === true,
};

/** Whether a block of a bed with this edging has a row for the amount. */
export const countsAmount = (kind: EdgingKind, key: string): boolean => COUNTED[key]?.(kind) ?? true;

/** Fields whose usual figures go with what a bed is edged with. */
export const edgingFieldKeys = Object.keys(ASKED) as readonly FieldKey[];

/**
 * Whether a bed with this edging has the field.
 *
 * @example asksField(edgingKindOf("pavers"), "stakeSpacing") // false
 */
export const asksField = (kind: EdgingKind, key: FieldKey): boolean => ASKED[key]?.(kind) ?? true;
