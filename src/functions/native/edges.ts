import { withSlack } from "./arithmetic";
import { form } from "./form";
import { choose, flag } from "./named";
import { count, length, lengthOrZero } from "./numbers";
import { closingSide, points, realSides } from "./points";
import { sides, widths } from "./ranges";

export const EDGE_LENGTH = form(
  [sides, lengthOrZero("ft", 0), count(Number.POSITIVE_INFINITY, 0)],
  (along, radius, corners) => {
    if (radius.constant === 0 || corners.constant === 0) return { text: along.text };
    return {
      text: `${along.text}-${corners.text}*(2-PI()/2)*${radius.text}`,
      when: [[`${corners.text}*${radius.text}<=${withSlack(`${along.text}/2`)}`]],
    };
  },
);

export const EDGE_WIDTHS = form([length("ft"), widths], (spacing, taped) => ({
  text: `SUMPRODUCT(SQRT(${spacing.text}^2+(${taped.steps})^2))`,
}));

export const EDGE_POINTS = form([points, flag(true)], (outline, closed) => {
  const { first, last, from, to } = outline;
  const along = `SUMPRODUCT(SQRT((${to.x}-${from.x})^2+(${to.y}-${from.y})^2))`;
  const back = `SQRT((${last.x}-${first.x})^2+(${last.y}-${first.y})^2)`;
  const real = realSides(outline);
  return {
    text: `${along}+${choose(closed, back, "0")}`,
    when: [[choose(closed, `${real}+${closingSide(outline)}>=3`, `${real}>=1`)]],
  };
});
