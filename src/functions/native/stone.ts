import { nothingBeside, type Operand, wholeUpOf, withShare } from "./arithmetic";
import { form } from "./form";
import { stone } from "./named";
import { length, lengthOrZero, positive, positiveOrZero, shareUnderOne } from "./numbers";

const USUAL_TOP_GAP_IN = 0.5;

export const STONE_DEPTH = form(
  [length("in"), lengthOrZero("in"), lengthOrZero("in", USUAL_TOP_GAP_IN)],
  (border, trench, gap) => {
    const depth = `${border.text}-${trench.text}-${gap.text}`;
    return { text: depth, when: [[`${depth}>${nothingBeside(border.text)}`]] };
  },
);

export const STONE_DENSITY = form([stone], (weight) => ({ text: weight.text }));

export const STONE_YARDS = form([positive(), length("in"), shareUnderOne(0)], (area, depth, waste) => ({
  text: yardsOf(area, depth, waste),
}));

export const STONE_TONS = form([positive(), length("in"), stone, shareUnderOne(0)], (area, depth, weight, waste) => ({
  text: `${yardsOf(area, depth, waste)}*${weight.text}`,
}));

export const STONE_COVERS = form([positiveOrZero(), length("in"), stone], (tons, depth, weight) => ({
  text: `${tons.text}/${weight.text}*324/${depth.text}`,
  least: "0 or more",
}));

export const STONE_BAGS = form([positive(), length("in"), positive(), shareUnderOne(0)], (area, depth, bag, waste) => ({
  text: wholeUpOf(`${yardsOf(area, depth, waste)}*27/${bag.text}`),
  least: "0 or more",
}));

export const ORDER_UP = form([positiveOrZero(), positive(), positiveOrZero(0)], (amount, step, minimum) => {
  const wanted = minimum.constant === 0 ? amount.text : `MAX(${amount.text},${minimum.text})`;
  return {
    text: `IF(${amount.text}=0,0,MAX(1,${wholeUpOf(`${wanted}/${step.text}`)})*${step.text})`,
    least: "0 or more",
  };
});

function yardsOf(area: Operand, depth: Operand, waste: Operand): string {
  return withShare(`${area.text}*${depth.text}/324`, waste);
}
