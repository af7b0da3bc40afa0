import { shortPieces } from "../edging";
import { edgingKindOf, hasPieces, METAL } from "../edgingKinds";
import { must } from "../must";
import { INCHES_PER_FOOT } from "../units";
import { addedUp } from "./addedUp";
import { type Ask, grouped, ownOf, type Part, partsOf } from "./asks";
import type { BedNeeds, BorderNeed } from "./bedNeeds";
import { type CutsOfPart, cutAcross, cutBedByBed } from "./cutAcross";
import { edgingCuts } from "./edgingCuts";
import { extraStakes } from "./extraStakes";
import { joinCuttings } from "./joinCuttings";
import { lineOf, type OrderedPart } from "./lineOf";
import { orderNotes } from "./messages";
import type { Cutting, OrderLine } from "./order";
import { plain, sameName, spellingOf } from "./plain";

export type BorderOfBed = BorderNeed & { readonly bed: string };

interface OrderedBorder {
  readonly pieces: OrderedPart<BorderOfBed>;
  readonly stakes: OrderedPart<BorderOfBed>;
  readonly cutting: Cutting;
  readonly notes: readonly string[];
}

/**
 * Edging pieces and stakes by height, finish and length of piece. What one bed leaves of a piece is used in another: the
 * last pieces of all runs are cut from as few pieces as they fit in. Every run keeps the pieces and joints it has by
 * itself. Stakes that come with the pieces of one bed serve another.
 *
 * @param cutLossIn what each cut takes, in inches.
 */
export function borderLines(beds: readonly BedNeeds[], cutLossIn: number, steps?: number): OrderLine[] {
  const all = beds.flatMap(({ name, border }) => (border && isWanted(border) ? [{ ...border, bed: name }] : []));
  return grouped(all, keyOf).flatMap((borders) => linesOfOneBorder(borders, cutLossIn, steps));
}

/** Edging that isn't in pieces, a spade-cut edge or none, is nothing to order. */
const isWanted = ({ kind, pieces, extraStakes: extra, runs = [] }: BorderNeed) => {
  const isThere = pieces.quantity > 0 || extra.quantity > 0;
  return isThere || (hasPieces(edgingKindOf(kind)) && runs.some(({ feet }) => feet > 0));
};

const keyOf = ({ kind, heightIn, finish = "", pieceLengthFt }: BorderNeed) =>
  `${kind === undefined ? "" : `${kind}|`}${plain(heightIn)}|${plain(pieceLengthFt)}|${sameName(finish)}`;

/**
 * What sets pieces of edging apart from others, as in the names of a job's kinds.
 *
 * @example edgingSize({ kind: "pavers", heightIn: 2.375, pieceLengthFt: 1 / 3 }) // "pavers, 4 in long, 2.375 in thick"
 */
export function edgingSize({ kind, heightIn, pieceLengthFt }: Pick<BorderNeed, "kind" | "heightIn" | "pieceLengthFt">) {
  const { name, inSand } = edgingKindOf(kind);
  if (inSand) return `${name}, ${plain(pieceLengthFt * INCHES_PER_FOOT)} in long, ${plain(heightIn)} in thick`;
  const size = `${plain(heightIn)} in high, ${plain(pieceLengthFt)} ft long`;
  return name === METAL.name ? size : `${name}, ${size}`;
}

function linesOfOneBorder(borders: readonly BorderOfBed[], cutLossIn: number, steps: number | undefined): OrderLine[] {
  const first = must(borders[0]);
  const finish = spellingOf(borders.map((border) => border.finish ?? ""));
  const size = edgingSize(first);
  const { lines, fastened } = edgingKindOf(first.kind);
  const { edging: words, stakeLine } = lines;
  const specification = finish === "" ? size : `${size}, ${finish}`;
  const ordered = partsOf(borders.map(askOf)).map((part) => orderPart(part, cutLossIn, steps));
  const cutting = joinCuttings(ordered.map((part) => part.cutting));
  const head = { supplier: "border", specification } as const;
  const pieces = lineOf(
    {
      ...head,
      key: `border|${keyOf(first)}`,
      item: words?.label ?? "Edging pieces",
      neededUnit: "lin ft",
      orderUnit: words?.unit ?? "pieces",
    },
    ordered.map((part) => part.pieces),
    {
      cutting,
      notes: [...ordered.flatMap(({ notes }) => notes), ...(cutting.proven ? [] : [orderNotes.unproven()])],
      warnings: borders.flatMap(({ bed, runs = [], pieceLengthFt, lapIn, pieces: own }) =>
        (own.typed ? [] : shortPieces(runs, pieceLengthFt, lapIn)).map((piece) => orderNotes.shortPiece(bed, piece)),
      ),
    },
  );
  const stakeParts = ordered.map((part) => part.stakes);
  const stakes = lineOf(
    {
      ...head,
      key: `stakes|${keyOf(first)}`,
      item: stakeLine?.label ?? "Extra stakes",
      neededUnit: stakeLine?.unit ?? "stakes",
      orderUnit: stakeLine?.unit ?? "stakes",
    },
    stakeParts,
    { notes: fastened === "along" ? [orderNotes.withPieces(stakesAlong(ordered))] : [] },
  );
  return [pieces, ...(stakes.order > 0 || stakes.bedByBed > 0 ? [stakes] : [])];
}

const stakesAlong = (ordered: readonly OrderedBorder[]) =>
  addedUp(ordered.map(({ pieces }) => pieces.order * must(pieces.asks[0]).source.stakesPerPiece));

function askOf(border: BorderOfBed): Ask<BorderOfBed> {
  const { bed, runs, pieces, extraStakes: extra, stakesPerPiece } = border;
  return {
    bed,
    source: border,
    needed: runs && addedUp(runs.map(({ feet }) => feet)),
    own: pieces,
    canJoin: runs !== undefined,
    // A blank for no price: two beds without one agree.
    terms: { "stakes included per piece": stakesPerPiece, "price per stake": extra.unitCost ?? "" },
  };
}

function orderPart(part: Part<BorderOfBed>, cutLossIn: number, steps: number | undefined): OrderedBorder {
  const { joined, beside, asks, bedByBed } = part;
  const { pieceLengthFt, pieces: firstPieces, extraStakes: firstStakes } = must(asks[0]).source;
  const besideCuts = cutBedByBed(pieceLengthFt, beside.flatMap(cutsOf));
  const apart = withStakes(part, bedByBed, cutBedByBed(pieceLengthFt, asks.flatMap(cutsOf)));
  if (joined.length < 2) return apart;
  const { count, ...cutting } = cutAcross(pieceLengthFt, joined.flatMap(cutsOf), cutLossIn, steps);
  if (count >= ownOf(joined)) return apart;
  const across = withStakes(part, addedUp([count, ownOf(beside)]), joinCuttings([cutting, besideCuts]));
  const costOf = ({ pieces, stakes }: OrderedBorder) =>
    pieces.order * (firstPieces.unitCost ?? 0) + stakes.order * (firstStakes.unitCost ?? 0);
  const isPriced = firstPieces.unitCost !== undefined && firstStakes.unitCost !== undefined;
  if (isPriced && costOf(across) > costOf(apart)) return { ...apart, notes: [orderNotes.piecesApart()] };
  return across;
}

function withStakes(part: Part<BorderOfBed>, pieces: number, cutting: Cutting): OrderedBorder {
  const asks = part.asks.map((ask): Ask<BorderOfBed> => {
    const { stakes, extraStakes: own } = ask.source;
    return { ...ask, needed: stakes, own, canJoin: true };
  });
  return {
    pieces: { ...part, order: pieces },
    // Beds that join here share all that bears on stakes, so the lots stay as they are.
    stakes: { asks, joined: asks, beside: [], bedByBed: ownOf(asks), order: extraStakes(part, pieces) },
    cutting,
    notes: [],
  };
}

/** What the runs of a bed are cut from. The last piece of a run has the number that it has in the bed's drawing. */
function cutsOf({ bed, source }: Ask<BorderOfBed>): CutsOfPart[] {
  let pieces = 0;
  return (source.runs ?? []).map((run) => {
    const cuts = edgingCuts(run, source.pieceLengthFt, source.lapIn);
    pieces += cuts.whole + (cuts.lastFt === undefined ? 0 : 1);
    return { bed, part: pieces, ...cuts };
  });
}
