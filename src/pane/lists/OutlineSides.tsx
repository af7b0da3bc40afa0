import type { PointText } from "../../quantities/bed/form";
import { FEWEST_POINTS } from "../../quantities/bed/read";
import { must } from "../../quantities/must";
import { feetIn, SideDrawing } from "../Sides";

interface OutlineSidesProps {
  readonly points: readonly PointText[];
  /** Changes whether there's edging from a corner to the next. */
  readonly onToggle: (index: number) => void;
}

const [WIDE, HIGH] = [138, 84];

/** The outline as far as it's typed, on which the sides with edging can be picked. */
export function OutlineSides({ points, onToggle }: OutlineSidesProps) {
  const places = points.map(([x, y]) => [feetIn(x), feetIn(y)] as const).filter(isPlace);
  // A corner that can't be read yet would shift which side is which.
  if (
    places.length < FEWEST_POINTS ||
    !points.slice(0, places.length).every(([x, y]) => isPlace([feetIn(x), feetIn(y)]))
  )
    return null;
  const [across, out] = [places.map(([x]) => x), places.map(([, y]) => y)];
  const [left, top] = [Math.min(...across), Math.max(...out)];
  const scale = Math.min(WIDE / (Math.max(...across) - left || 1), HIGH / (top - Math.min(...out) || 1));
  const at = (index: number) => {
    const [x, y] = must(places[index % places.length]);
    return `${6 + (x - left) * scale} ${6 + (top - y) * scale}`;
  };
  const sides = places.map((_, index) => ({
    label: String(index + 1),
    path: `M${at(index)}L${at(index + 1)}`,
    isEdged: points[index]?.[2] === "1",
  }));
  return (
    <div class="edged">
      <SideDrawing sides={sides} box={`0 0 ${WIDE + 12} ${HIGH + 12}`} onToggle={onToggle} />
      <p class="below">Click a side for edging on or off.</p>
    </div>
  );
}

const isPlace = (place: readonly [number | undefined, number | undefined]): place is readonly [number, number] =>
  place[0] !== undefined && place[1] !== undefined;
