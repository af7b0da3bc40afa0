import type { FieldKey } from "../quantities/bed/fields";
import { type BedForm, givenWidths, textOf } from "../quantities/bed/form";
import { pickedCorners, pickedSides } from "../quantities/bed/pickSides";
import { must } from "../quantities/must";
import { feetIn } from "../quantities/tape";

/** A side or corner of a sketch, with its number where it can be picked. */
interface Line {
  readonly path: string;
  readonly isEdged: boolean;
  readonly side?: number;
  readonly corner?: number;
}

const [WIDE, HIGH, EDGE] = [300, 110, 8];

/** A bed that can't be laid out yet, as far as it's typed: its sides, thick where they have edging. */
export function Sketch({ form }: { readonly form: BedForm }) {
  const lines = linesOf(form);
  return (
    <svg class="sketch" viewBox={`0 0 ${WIDE} ${HIGH}`} aria-hidden="true">
      {lines.map(({ path, isEdged }) => (
        <path key={path} d={path} class={isEdged ? "thick" : "bare"} />
      ))}
      {lines.map(({ path, side, corner }) =>
        (side ?? corner) ? (
          <path key={path} d={path} class="hit" stroke-width="18" data-side={side} data-corner={corner} />
        ) : null,
      )}
    </svg>
  );
}

function linesOf(form: BedForm): readonly Line[] {
  switch (form.way) {
    case "rectangle": {
      const [length, width] = [feet(form, "length", 16), feet(form, "width", 6)];
      const scale = Math.min((WIDE - 2 * EDGE) / length, (HIGH - 2 * EDGE) / width);
      const [wide, high] = [Math.max(40, length * scale), Math.max(24, width * scale)];
      const [left, top] = [(WIDE - wide) / 2, (HIGH - high) / 2];
      const sides = [`M${left} ${top + high}h${wide}`, `M${left + wide} ${top}v${high}`, `M${left} ${top}h${wide}`];
      const corners = [
        [left, top],
        [left + wide, top],
        [left, top + high],
        [left + wide, top + high],
      ];
      const edged = pickedSides(form);
      return [
        ...[...sides, `M${left} ${top}v${high}`].map((path, side) => ({
          path,
          isEdged: edged[side]?.isOn === true,
          side: side + 1,
        })),
        ...pickedCorners(form).map(({ isOn }, corner) => ({
          path: `M${must(corners[corner]).join(" ")}h0.01`,
          isEdged: isOn,
          corner: corner + 1,
        })),
      ];
    }
    case "round":
      return [
        { path: circle(46), isEdged: true },
        ...pickedSides(form).map(({ isOn }) => ({ path: circle(18), isEdged: isOn, side: 1 })),
      ];
    case "widths": {
      const typed = givenWidths(form).map((text) => feetIn(text) ?? 0);
      const taped = typed.length > 1 && Math.max(...typed) > 0 ? typed : [3, 5, 4, 5];
      const step = (WIDE - 2 * EDGE) / (taped.length - 1);
      const base = HIGH - EDGE;
      const at = (index: number) =>
        `${EDGE + index * step} ${base - ((taped[index] ?? 0) / Math.max(...taped)) * (HIGH - 2 * EDGE)}`;
      const paths = [
        `M${EDGE} ${base}H${WIDE - EDGE}`,
        `M${WIDE - EDGE} ${base}L${at(taped.length - 1)}`,
        `M${taped.map((_, index) => at(index)).join("L")}`,
        `M${EDGE} ${base}L${at(0)}`,
      ];
      return pickedSides(form).map(({ isOn }, side) => ({ path: must(paths[side]), isEdged: isOn, side: side + 1 }));
    }
    case "points":
      return outline(form);
    case "area":
      return [];
  }
}

/** The corners as far as they're typed, joined in their order. */
function outline({ points }: BedForm): readonly Line[] {
  const places = points.map(([x, y]) => [feetIn(x), feetIn(y)] as const);
  // A corner that can't be read yet would shift which side is which.
  const known = places.slice(0, places.findIndex(([x, y]) => x === undefined || y === undefined) >>> 0) as [
    number,
    number,
  ][];
  if (known.length < 2) return [];
  const [across, out] = [known.map(([x]) => x), known.map(([, y]) => y)];
  const [left, top] = [Math.min(...across), Math.max(...out)];
  const scale = Math.min(
    (WIDE - 2 * EDGE) / (Math.max(...across) - left || 1),
    (HIGH - 2 * EDGE) / (top - Math.min(...out) || 1),
  );
  const at = (index: number) => {
    const [x, y] = must(known[index % known.length]);
    return `${EDGE + (x - left) * scale} ${EDGE + (top - y) * scale}`;
  };
  return known.map((_, index) => ({
    path: `M${at(index)}L${at(index + 1)}`,
    isEdged: points[index]?.[2] === "1",
    side: index + 1,
  }));
}

const circle = (radius: number) =>
  `M${WIDE / 2 - radius} ${HIGH / 2}a${radius} ${radius} 0 1 0 ${2 * radius} 0a${radius} ${radius} 0 1 0 ${-2 * radius} 0`;

/** A length as far as it's typed, and something like it before. */
const feet = (form: BedForm, field: FieldKey, otherwise: number) => feetIn(textOf(form, field)) || otherwise;
