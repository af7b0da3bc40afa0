import { must } from "../../quantities/must";
import { edgePoints } from "../../quantities/outline";
import { may } from "../argument";
import { points } from "../arguments";
import { declare } from "../declare";
import { choose } from "../native/named";
import { closingSide, hasLength, lengthOf, realSides } from "../native/points";
import { flag } from "../read";
import { outlineCorners, sumLines } from "../working";
import { worksheetFunction } from "../worksheetFunction";

export const EDGE_POINTS = worksheetFunction(edgePoints, points, may("closed", flag, true));

export const edgePointsDeclared = /* @__PURE__ */ declare(EDGE_POINTS, {
  name: "EDGE_POINTS",
  purpose: "Measure the edging",
  about: "Length along an outline, from its corner points.",
  gives: "length of an outline",
  returns: "Feet.",
  kind: "ft",
  rule: "Straight from point to point, and back to the first if the outline is closed.",
  example: "=BED.EDGE_POINTS(A2:B4) gives 12 for 0, 0; 4, 0; 0, 3",
  source: "Plane geometry.",
  related: ["AREA_POINTS", "EDGING_PIECES", "STAKES"],
  arguments: {
    closed: { about: "TRUE to include the side from the last point back to the first. Default: TRUE." },
  },
  native: (outline, closed) => {
    const along = `SUMPRODUCT(${lengthOf(outline.chain)})`;
    const closing = closingSide(outline);
    const real = realSides(outline);
    return {
      text: closed.constant === false ? along : `${along}+${choose(closed, lengthOf(closing), "0")}`,
      when: [[choose(closed, `${real}+${hasLength(closing)}>=3`, `${real}>=1`)]],
    };
  },
  working: (answer, points, closed) => {
    const corners = closed ? outlineCorners(points) : points;
    const next = closed ? [...corners.slice(1), must(corners[0])] : corners.slice(1);
    const sides = next.map(([x, y], place) => Math.hypot(x - must(corners[place])[0], y - must(corners[place])[1]));
    return sumLines("from each point to the next" + (closed ? ", and back to the first" : ""), sides, answer);
  },
});
