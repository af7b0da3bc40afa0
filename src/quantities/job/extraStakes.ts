import { must } from "../must";
import { addedUp } from "./addedUp";
import type { Part } from "./asks";
import type { BorderNeed } from "./bedNeeds";

/**
 * Stakes to order beyond those that come with the pieces, for beds together. What comes with the pieces of one bed
 * serves the others; and a piece that is saved brings no stakes along, so there may be more to order than bed by bed.
 *
 * A bed whose pieces or extra stakes were typed by hand keeps its own; the others share what is left.
 *
 * @param part beds whose pieces bring the same number of stakes along.
 * @param pieces ordered for all of them.
 * @example beds that need 14 and 10 stakes, with 9 pieces that bring 2 each: 24 − 18 // 6
 */
export function extraStakes({ asks }: Part<BorderNeed>, pieces: number): number {
  if (asks.length === 1) return must(asks[0]).source.extraStakes.quantity;
  const borders = asks.map(({ source }) => source);
  const isTyped = (border: BorderNeed) => border.extraStakes.typed === true || border.pieces.typed === true;
  const typed = borders.filter(isTyped);
  const others = borders.filter((border) => !isTyped(border));
  const piecesOfOthers = pieces - addedUp(typed.map((border) => border.pieces.quantity));
  const needed = addedUp(others.map(({ stakes }) => stakes));
  return (
    Math.max(0, needed - piecesOfOthers * must(borders[0]).stakesPerPiece) +
    addedUp(typed.map((border) => border.extraStakes.quantity))
  );
}
