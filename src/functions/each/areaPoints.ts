import { areaPoints } from "../../quantities/outline";
import { points } from "../arguments";
import { declare } from "../declare";
import { isSound } from "../native/crossings";
import { closingSide, hasLength, realSides } from "../native/points";
import { outlineCorners, shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";

export const AREA_POINTS = worksheetFunction(areaPoints, points);

export const areaPointsDeclared = /* @__PURE__ */ declare(AREA_POINTS, {
  name: "AREA_POINTS",
  purpose: "Measure the bed",
  about: "Area inside an outline, from its corner points in order.",
  gives: "area inside an outline",
  returns: "Square feet.",
  kind: "sq ft",
  rule: "By the surveyor's (shoelace) formula: each x times the next y, minus each y times the next x, added up and halved.",
  example: "=BED.AREA_POINTS(A2:B4) gives 6 for 0, 0; 4, 0; 0, 3",
  source: "The surveyor's (shoelace) formula.",
  related: ["EDGE_POINTS", "LAYOUT"],
  native: (outline) => {
    const { first, chain } = outline;
    const { from, to, isThere } = chain;
    // Taken from the first corner, so that the way back to it adds nothing.
    const twice = `((${from.x}-${first.x})*(${to.y}-${first.y})-(${to.x}-${first.x})*(${from.y}-${first.y}))`;
    return {
      text: `ABS(SUMPRODUCT(${isThere}*${twice}))/2`,
      when: [[`${realSides(outline)}+${hasLength(closingSide(outline))}>=3`], isSound(outline)],
    };
  },
  working: (answer, points) => {
    const corners = outlineCorners(points).length;
    return [
      `${corners} corners; x × next y − next x × y, added up: ${shown(answer * 2)}`,
      `${shown(answer * 2)} ÷ 2 = ${shown(answer)} sq ft`,
    ];
  },
});
