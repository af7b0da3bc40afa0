import { withSlack } from "./arithmetic";
import { form } from "./form";
import { choose, flag } from "./named";
import { count, length, lengthOrZero } from "./numbers";
import { closingSide, hasLength, lengthOf, points, realSides } from "./points";
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
  const along = `SUMPRODUCT(${lengthOf(outline.chain)})`;
  const closing = closingSide(outline);
  const real = realSides(outline);
  return {
    text: closed.constant === false ? along : `${along}+${choose(closed, lengthOf(closing), "0")}`,
    when: [[choose(closed, `${real}+${hasLength(closing)}>=3`, `${real}>=1`)]],
  };
});
