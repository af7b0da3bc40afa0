const short = (value: number) => String(Number(value.toPrecision(6)));

/** What the solver says about a list it cannot plan. Part of the one catalogue. */
export const cuttingMessages = {
  overTheStock: (argument: string, length: number, stock: number) =>
    `${argument} is ${short(length)} ft, longer than the stock of ${short(stock)} ft. ` +
    `Type a longer stock_length, or split this piece in two.`,
  tooMany: (most: number) => `counts come to more than ${most} pieces. Check the counts.`,
} as const;
