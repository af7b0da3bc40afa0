import { MOST_TONS_PER_YARD } from "../../quantities/stone";
import { feetOf, wholeUpOf, withShare } from "./arithmetic";
import { form } from "./form";
import { soil } from "./named";
import { length, lengthOrZero, positive, positiveOrZero } from "./numbers";

const USUAL_TRENCH_WIDTH_IN = 4;

export const DIG_YARDS = form(
  [positive(), length("in"), lengthOrZero("ft", 0), length("in", USUAL_TRENCH_WIDTH_IN), lengthOrZero("in", 0)],
  (area, depth, trench, wide, deep) => {
    const scrape = `${area.text}*${depth.text}/324`;
    if (trench.constant === 0 || deep.constant === 0) return { text: scrape };
    return { text: `${scrape}+${trench.text}*(${feetOf(wide)})*(${feetOf(deep)})/27` };
  },
);

export const SPOIL_YARDS = form([positiveOrZero(), soil], (bank, swell) => ({
  text: withShare(bank.text, swell),
  least: "0 or more",
}));

export const LOADS = form(
  [positiveOrZero(), positive(), positiveOrZero(0, MOST_TONS_PER_YARD), positiveOrZero(0)],
  (yards, truck, tons, payload) => {
    const byVolume = wholeUpOf(`${yards.text}/${truck.text}`);
    if (tons.constant === 0 || payload.constant === 0) return { text: byVolume, least: "0 or more" };
    const byWeight = wholeUpOf(`${yards.text}*${tons.text}/${payload.text}`);
    return {
      text: `IF(OR(${tons.text}=0,${payload.text}=0),${byVolume},MAX(${byVolume},${byWeight}))`,
      least: "0 or more",
    };
  },
);
