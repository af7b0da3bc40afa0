import type { SectionView } from "./drawSection";
import { pathThrough } from "./pen";
import { element } from "./svg";

const FABRIC_WIDTH = 2.2;
const GRASS_STEP = 6;
const GRASS_HEIGHT = 6;

/** Undisturbed earth with the lawn on it, and the earth filled back into the trench. */
export function ground(view: SectionView): string {
  const { pen, levels, left, right, borderX, y, depths, scale, bottom } = view;
  const { soil, lawn, ink } = pen.colors;
  const isCut = depths.edging.drawn === "cut";
  const trenchEnd = Math.min(right, borderX + depths.trenchWidthIn * scale);
  const outline = [
    { x: left, y: y(0) },
    { x: borderX, y: y(0) },
    { x: borderX, y: y(levels.foot) },
    // A cut edge slopes up to the floor.
    ...(isCut ? [] : [{ x: trenchEnd, y: y(levels.foot) }]),
    { x: trenchEnd, y: y(levels.floor) },
    { x: right, y: y(levels.floor) },
  ];
  const earth = [...outline, { x: right, y: bottom }, { x: left, y: bottom }];
  const blades = Math.floor((borderX - left) / GRASS_STEP);
  const grass = Array.from({ length: blades }, (_, i) => {
    const x = left + (i + 0.5) * GRASS_STEP;
    return `M${x - 2} ${y(0) - GRASS_HEIGHT}L${x} ${y(0)}L${x + 2.5} ${y(0) - GRASS_HEIGHT * 0.8}`;
  }).join("");
  const fill = { x: borderX, y: y(levels.floor), width: trenchEnd - borderX, height: y(levels.foot) - y(levels.floor) };
  const dots = pen.part("filled");
  return element(
    "g",
    {},
    element("path", { d: pathThrough(earth, true), fill: soil }),
    element(
      "pattern",
      { id: dots, width: 6, height: 6, patternUnits: "userSpaceOnUse" },
      element("rect", { width: 6, height: 6, fill: soil }),
      element("circle", { cx: 1.5, cy: 1.5, r: 0.9, fill: ink }),
      element("circle", { cx: 4.5, cy: 4.5, r: 0.9, fill: ink }),
    ),
    isCut ? "" : element("rect", { ...fill, fill: `url(#${dots})` }),
    element("path", { d: pathThrough(outline, false), stroke: ink, "stroke-width": 1 }),
    element("path", { d: grass, stroke: lawn, "stroke-width": 1.4, "stroke-linecap": "round" }),
  );
}

/** Stone to scale, the fabric below it and up to the border, and the border with the sand that it is on. */
export function layers(view: SectionView): string {
  const { pen, levels, right, borderX, borderWide, y, depths, scale } = view;
  const { stone, ink, paper, border } = pen.colors;
  const face = borderX + borderWide;
  const size = depths.stoneSizeIn * scale;
  const stones = pen.part("stones");
  const top = y(levels.stone);
  const bed = { x: face, y: top, width: right - face, height: y(levels.floor) - top };
  const pebble = (x: number, row: number) =>
    element("ellipse", {
      cx: x * size,
      cy: row * size,
      rx: size * 0.48,
      ry: size * 0.4,
      fill: stone,
      stroke: ink,
      "stroke-width": 0.7,
    });
  const rows = 1.7;
  // Beside a cut edge stone fills the cut, too.
  const notch =
    depths.edging.drawn === "cut"
      ? [
          { x: face + 1, y: y(levels.floor) },
          { x: face + 1, y: y(levels.foot) },
          { x: Math.min(right, borderX + depths.trenchWidthIn * scale), y: y(levels.floor) },
        ]
      : [];
  return element(
    "g",
    {},
    element(
      "pattern",
      {
        id: stones,
        width: size,
        height: size * rows,
        patternUnits: "userSpaceOnUse",
        // Rows are counted up from the floor, on which the lowest stones lie.
        patternTransform: `translate(${face.toFixed(2)} ${(y(levels.floor) - size * rows).toFixed(2)})`,
      },
      element("rect", { width: size, height: size * rows, fill: paper }),
      pebble(0.5, rows - 0.42),
      pebble(0, 0.43),
      pebble(1, 0.43),
    ),
    element("rect", { ...bed, fill: `url(#${stones})` }),
    notch.length > 0 ? element("path", { d: pathThrough(notch, true), fill: `url(#${stones})` }) : "",
    element("path", { d: `M${face} ${top}H${right}`, stroke: ink, "stroke-width": 0.8, "stroke-dasharray": "5 3" }),
    depths.hasFabric
      ? element("path", {
          d: pathThrough(
            [
              { x: face + 1, y: top },
              ...(notch.length > 0 ? notch.slice(1) : [{ x: face + 1, y: y(levels.floor) }]),
              { x: right, y: y(levels.floor) },
            ],
            false,
          ),
          stroke: ink,
          "stroke-width": FABRIC_WIDTH,
          "stroke-dasharray": "7 2",
        })
      : "",
    sand(view),
    borderWide > 0
      ? element("rect", {
          x: borderX,
          y: y(levels.top),
          width: borderWide,
          height: y(levels.base) - y(levels.top),
          fill: border,
          stroke: ink,
          "stroke-width": 0.8,
        })
      : "",
  );
}

/** Sand under pavers, stippled. */
function sand({ pen, levels, borderX, borderWide, y }: SectionView): string {
  if (levels.base === levels.foot) return "";
  const { ink, paper } = pen.colors;
  const id = pen.part("sand");
  const [top, bottom] = [y(levels.base), y(levels.foot)];
  const grain = (cx: number, cy: number) => element("circle", { cx, cy, r: 0.6, fill: ink });
  return (
    element(
      "pattern",
      { id, width: 4, height: 4, patternUnits: "userSpaceOnUse" },
      element("rect", { width: 4, height: 4, fill: paper }),
      grain(1, 1),
      grain(3, 3),
    ) +
    element("rect", {
      x: borderX,
      y: top,
      width: borderWide,
      height: bottom - top,
      fill: `url(#${id})`,
      stroke: ink,
      "stroke-width": 0.8,
    })
  );
}
