import { dayShown, shareShown, shown } from "../numbers";
import type { Working } from "./figures";

export const money: Readonly<Record<string, Working>> = {
  PRICE_MARKUP(figures) {
    const [cost, markup] = [figures.number("cost"), figures.number("markup")];
    const answer = cost * (1 + markup);
    const margin = markup / (1 + markup);
    return {
      lines: [
        `${shown(cost)} × (1 + ${shown(markup)}) = ${shown(answer)}`,
        `a markup of ${shareShown(markup)} is a margin of ${shareShown(margin)}`,
      ],
      answer,
    };
  },

  PRICE_MARGIN(figures) {
    const [cost, margin] = [figures.number("cost"), figures.number("margin")];
    const answer = cost / (1 - margin);
    return {
      lines: [
        `${shown(cost)} ÷ (1 − ${shown(margin)}) = ${shown(answer)}`,
        `a margin of ${shareShown(margin)} is a markup of ${shareShown(margin / (1 - margin))}`,
      ],
      answer,
    };
  },

  MARKUP_FOR_MARGIN(figures) {
    const margin = figures.number("margin");
    const answer = margin / (1 - margin);
    return {
      lines: [`${shown(margin)} ÷ (1 − ${shown(margin)}) = ${shown(answer)}, which is ${shareShown(answer)}`],
      answer,
    };
  },

  DIG_DATE(figures) {
    const [notice, needed] = [Math.floor(figures.number("notice_date")), figures.number("working_days")];
    const holidays = new Set(figures.list("holidays").map(Math.floor));
    const isWorking = (day: number) => day % 7 > 1 && !holidays.has(day);
    const counted: number[] = [];
    let day = notice;
    while (counted.length < needed) if (isWorking(++day)) counted.push(day);
    do day++;
    while (!isWorking(day));
    const days =
      counted.length > 6
        ? `${counted.length} working days to ${dayShown(counted.at(-1)!)}`
        : counted.map(dayShown).join(", ");
    return {
      lines: [
        `notice on ${dayShown(notice)}, which is not counted`,
        `full working days: ${days}`,
        `digging may start on ${dayShown(day)}`,
      ],
      answer: day,
    };
  },
};
