import { quoted } from "../messages";

const short = (value: number) => String(Number(value.toPrecision(6)));

/** What the solver says about a list it cannot plan. Part of the one catalogue. */
export const cuttingMessages = {
  notPositive: (argument: string, arrived: unknown) =>
    `${argument} arrived as ${quoted(arrived)}. Type a length over 0.`,
  notALoss: (arrived: unknown) => `loss_in arrived as ${quoted(arrived)}. Type the loss of one cut, 0 or more.`,
  notACount: (argument: string, arrived: unknown) =>
    `${argument} arrived as ${quoted(arrived)}. Type a whole number of pieces, 0 for none.`,
  countsDoNotMatch: (counts: number, lengths: number) =>
    `counts has ${counts} and lengths has ${lengths}. Give one count beside each length.`,
  overTheStock: (argument: string, length: number, stock: number) =>
    `${argument} is ${short(length)} ft, longer than the stock of ${short(stock)} ft. ` +
    `Type a longer stock_length, or cut this piece in two.`,
  tooMany: (most: number) =>
    `counts come to more than ${most.toLocaleString("en-US")} pieces. Check what was typed as counts.`,
} as const;
