import { shareShown, shown } from "../numbers";
import { type Figures, roundedUp, upTo, type Working } from "./figures";

const SQUARE_FOOT_INCHES_PER_YARD = 324;
const CUBIC_FEET_PER_YARD = 27;

export const stone: Readonly<Record<string, Working>> = {
  STONE_DEPTH(figures) {
    const [border, trench, gap] = [
      figures.number("border_height_in"),
      figures.number("trench_depth_in"),
      figures.number("top_gap_in"),
    ];
    const answer = border - trench - gap;
    return {
      lines: [`border ${shown(border)} − trench ${shown(trench)} − gap ${shown(gap)} = ${shown(answer)} in`],
      answer,
    };
  },

  STONE_DENSITY(figures) {
    const answer = figures.number("stone");
    return { lines: [`${shown(answer)} short tons a loose cubic yard`], answer };
  },

  STONE_YARDS: (figures) => yardsOf(figures),

  STONE_TONS(figures) {
    const yards = yardsOf(figures);
    const weight = figures.number("stone");
    const answer = yards.answer * weight;
    return {
      lines: [...yards.lines, `${shown(yards.answer)} × ${shown(weight)} tons a cubic yard = ${shown(answer)} tons`],
      answer,
    };
  },

  STONE_COVERS(figures) {
    const [tons, depth, weight] = [figures.number("tons"), figures.number("depth_in"), figures.number("stone")];
    const yards = tons / weight;
    const answer = (yards * SQUARE_FOOT_INCHES_PER_YARD) / depth;
    return {
      lines: [
        `${shown(tons)} ÷ ${shown(weight)} = ${shown(yards)} cu yd`,
        `${shown(yards)} × 324 ÷ ${shown(depth)} = ${shown(answer)} sq ft`,
      ],
      answer,
    };
  },

  STONE_BAGS(figures) {
    const [yards, bag] = [yardsOf(figures), figures.number("bag_cubic_ft")];
    const feet = yards.answer * CUBIC_FEET_PER_YARD;
    const bags = roundedUp(`${shown(feet)} ÷ ${shown(bag)}`, feet / bag);
    return {
      lines: [...yards.lines, `${shown(yards.answer)} × 27 = ${shown(feet)} cu ft`, `${bags.line} bags`],
      answer: bags.whole,
    };
  },

  ORDER_UP(figures) {
    const [amount, step, minimum] = [figures.number("amount"), figures.number("step"), figures.number("minimum")];
    if (amount === 0) return { lines: ["nothing is needed, so nothing is ordered"], answer: 0 };
    const steps = (needed: number) => Math.max(1, upTo(needed / step)) * step;
    const answer = Math.max(steps(amount), steps(minimum));
    const lines = [`up to the next ${shown(step)}: ${shown(steps(amount))}`];
    if (minimum > amount) lines.push(`the yard's minimum is ${shown(minimum)}: ${shown(answer)}`);
    return { lines, answer };
  },
};

function yardsOf(figures: Figures) {
  const [area, depth, waste] = [figures.number("area"), figures.number("depth_in"), figures.number("waste")];
  const bare = (area * depth) / SQUARE_FOOT_INCHES_PER_YARD;
  const lines = [`${shown(area)} × ${shown(depth)} ÷ 324 = ${shown(bare)} cu yd`];
  const answer = bare * (1 + waste);
  if (waste > 0)
    lines.push(`and ${shareShown(waste)} waste: ${shown(bare)} × ${shown(1 + waste)} = ${shown(answer)} cu yd`);
  return { lines, answer };
}
