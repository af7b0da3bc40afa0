import { nothingBeside, numberText, type Operand, withSlack } from "./arithmetic";
import { isSound } from "./crossings";
import { form } from "./form";
import { choose, trapezoid } from "./named";
import { count, length, lengthOrZero } from "./numbers";
import { closingSide, hasLength, points, realSides } from "./points";
import { areas, type Widths, widths } from "./ranges";

const CORNERS_OF_A_RECTANGLE = 4;

export const AREA_RECTANGLE = form(
  [length("ft"), length("ft"), lengthOrZero("ft", 0), count(CORNERS_OF_A_RECTANGLE, 0), areas],
  (long, wide, radius, corners, cutOuts) => {
    const isRounded = radius.constant !== 0 && corners.constant !== 0;
    const rounded = isRounded ? `-${corners.text}*(1-PI()/4)*${radius.text}^2` : "";
    const whole = `${long.text}*${wide.text}${rounded}`;
    const fits = withSlack(`MIN(${long.text},${wide.text})/IF(${corners.text}>1,2,1)`);
    if (cutOuts.constant === 0)
      return { text: whole, when: [isRounded ? [orNone(corners, `${radius.text}<=${fits}`)] : []] };
    return {
      text: `${whole}-${cutOuts.text}`,
      when: [
        isRounded ? [orNone(corners, `${radius.text}<=${fits}`)] : [],
        [`${whole}-${cutOuts.text}>${nothingBeside(whole)}`],
      ],
    };
  },
);

/** A condition that only matters where some corner is rounded. */
function orNone(corners: Operand, condition: string): string {
  return corners.constant === undefined ? `OR(${corners.text}=0,${condition})` : condition;
}

/** A triangle flatter than this share of its longest side encloses nothing. */
const FLAT = numberText(1e-12);

export const AREA_TRIANGLE = form([length("ft"), length("ft"), length("ft")], (...sides) => {
  const all = sides.map(({ text }) => text).join(",");
  const [longest, middle, shortest] = [`MAX(${all})`, `MEDIAN(${all})`, `MIN(${all})`];
  const spare = `(${shortest}-(${longest}-${middle}))`;
  const product = `(${longest}+(${middle}+${shortest}))*${spare}*(${shortest}+(${longest}-${middle}))*(${longest}+(${middle}-${shortest}))`;
  return { text: `SQRT(${product})/4`, when: [[`${spare}>${FLAT}*${longest}`]] };
});

export const AREA_ROUND = form([length("ft"), lengthOrZero("ft", 0)], (across, inner) => {
  if (inner.constant === 0) return { text: `PI()/4*${across.text}^2` };
  return {
    text: `PI()/4*(${across.text}+${inner.text})*(${across.text}-${inner.text})`,
    when: [[`${inner.text}<${across.text}`]],
  };
});

export const AREA_WIDTHS = form([length("ft"), widths, trapezoid], (spacing, taped, straight) => {
  const area = choose(straight, weighed(taped, 0), weighed(taped, taped.count - 1 - ((taped.count - 1) % 2)));
  return { text: `${spacing.text}*${area}`, when: [[taped.someWidth]] };
});

/** Simpson's rule over the intervals up to one of them, the trapezoidal rule from there on. */
function weighed(taped: Widths, simpsonEnd: number): string {
  const last = taped.count - 1;
  // In sixths of the spacing: a third and four thirds by the one rule, halves by the other.
  const sixths = Array.from({ length: taped.count }, () => 0);
  const add = (place: number, weight: number) => {
    sixths[place] = sixths[place]! + weight;
  };
  for (let place = 0; place < last; place++) {
    if (place >= simpsonEnd) [add(place, 3), add(place + 1, 3)];
    else if (place % 2 === 0) [add(place, 2), add(place + 1, 8), add(place + 2, 2)];
  }
  const shared = sixths.every((weight) => weight % 3 === 0) ? 3 : sixths.every((weight) => weight % 2 === 0) ? 2 : 1;
  return `${taped.weighed(sixths.map((weight) => weight / shared))}/${6 / shared}`;
}

export const AREA_POINTS = form([points], (outline) => {
  const { first, chain } = outline;
  const { from, to, isThere } = chain;
  // Taken from the first corner, so that the way back to it adds nothing.
  const twice = `((${from.x}-${first.x})*(${to.y}-${first.y})-(${to.x}-${first.x})*(${from.y}-${first.y}))`;
  return {
    text: `ABS(SUMPRODUCT(${isThere}*${twice}))/2`,
    when: [[`${realSides(outline)}+${hasLength(closingSide(outline))}>=3`], isSound(outline)],
  };
});
