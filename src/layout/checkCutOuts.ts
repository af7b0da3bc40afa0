import { must } from "../quantities/must";
import { Problem } from "../quantities/problem";
import { piecesOf } from "./boundary";
import { layoutMessages as messages } from "./messages";
import { netArea, type Outline, type OutlineCutOut, ringsOf } from "./outline";
import { between, cross, distance, type Point, SAME_FT } from "./plane";

/**
 * Refuses cut-outs that do not lie in the bed, or overlap. Touching is no overlap: a meter pad may stand against
 * the house wall, and two pads side by side.
 *
 * @throws Problem that names the cut-out and the place.
 */
export function checkCutOuts(outline: Outline): void {
  const fail = (message: string): never => {
    throw new Problem("value", message, "cut_outs");
  };
  const { cutOuts } = outline;
  const named = (index: number): OutlineCutOut => must(cutOuts[index - 1]);
  const pieces = piecesOf(ringsOf(outline));
  for (const piece of pieces) {
    const middle = between(piece.from, piece.to, 0.5);
    if (piece.ring > 0 && piece.lies(0) === "outside") fail(messages.cutOutLeavesBed(named(piece.ring).name, middle));
    for (let other = 1; other <= cutOuts.length && piece.ring > 0; other++) {
      if (other === piece.ring) continue;
      const lies = piece.lies(other);
      if (lies === "inside" || (lies === "on" && onSameSide(piece.from, piece.to, named(other).ring.points)))
        fail(messages.cutOutsOverlap(...sorted(piece.ring, other, named), middle));
    }
  }
  if (netArea(outline) <= SAME_FT) fail(messages.nothingLeft());
}

/** Two cut-outs that share a stretch overlap where both lie on the same side of it: both rings run it the same way. */
function onSameSide(from: Point, to: Point, ring: readonly Point[]): boolean {
  const middle = between(from, to, 0.5);
  return ring.some((a, i) => {
    const b = must(ring[(i + 1) % ring.length]);
    const length = distance(a, b);
    const along = ((middle.x - a.x) * (b.x - a.x) + (middle.y - a.y) * (b.y - a.y)) / length;
    const isHere = Math.abs(cross(a, b, middle)) <= SAME_FT * length && along >= 0 && along <= length;
    return isHere && (to.x - from.x) * (b.x - a.x) + (to.y - from.y) * (b.y - a.y) > 0;
  });
}

function sorted(one: number, other: number, named: (index: number) => OutlineCutOut): [string, string] {
  return [named(Math.min(one, other)).name, named(Math.max(one, other)).name];
}
