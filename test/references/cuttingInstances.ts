/** A published list, or one small enough to work by hand, with its fewest stock lengths. */
export interface Instance {
  readonly name: string;
  readonly source: string;
  readonly stockLength: number;
  readonly lengths: readonly number[];
  readonly counts?: readonly number[];
  readonly fewest: number;
}

const numbers = (text: string) => text.split(" ").map(Number);

/** Lists on which first-fit-decreasing takes one stock too many. */
export const TRAPS: readonly Instance[] = [
  {
    name: "16 from 8 7 6 5 4 2",
    source: "by hand: 8 + 6 + 2 and 7 + 5 + 4",
    stockLength: 16,
    lengths: [8, 7, 6, 5, 4, 2],
    fewest: 2,
  },
  {
    name: "10 from 5 4 4 3 2 2",
    source: "by hand: 5 + 3 + 2 and 4 + 4 + 2",
    stockLength: 10,
    lengths: [5, 4, 4, 3, 2, 2],
    fewest: 2,
  },
  {
    name: "12 from 6 4 4 4 3 3",
    source: "by hand: 6 + 3 + 3 and 4 + 4 + 4",
    stockLength: 12,
    lengths: [6, 4, 4, 4, 3, 3],
    fewest: 2,
  },
];

export const PUBLISHED: readonly Instance[] = [
  {
    name: "PM_u020_01",
    source: "BPPLib (MIT license); optimum by an exact solver",
    stockLength: 150,
    lengths: numbers("52 60 67 23 26 45 76 43 85 82 41 56 25 83 50 72 23 39 21 39"),
    fewest: 7,
  },
  {
    // First-fit in the order given takes 13.
    name: "PM_u030_01",
    source: "BPPLib (MIT license); optimum by an exact solver",
    stockLength: 150,
    lengths: numbers("29 96 98 31 48 54 46 64 92 46 26 81 49 90 97 41 57 40 67 20 28 49 45 67 57 95 65 70 55 32"),
    fewest: 12,
  },
  {
    name: "u120_00",
    source: "Falkenauer, OR-Library, binpack1: 120 pieces of 58 lengths; best known 48, and ⌈total/150⌉ = 48 by hand",
    stockLength: 150,
    lengths: numbers(
      "98 96 94 93 92 91 90 87 86 85 84 83 82 81 80 79 78 76 74 73 72 71 70 69 67 66 64 62 60 59 58 57 55 50 49 47 46 " +
        "45 44 43 42 41 39 38 37 36 35 33 32 30 29 28 27 26 25 24 23 20",
    ),
    counts: numbers(
      "3 2 1 2 1 2 1 1 1 2 5 2 2 1 3 2 4 1 2 4 1 1 3 3 1 1 1 2 2 1 3 4 3 1 3 1 2 2 2 4 5 3 2 3 1 3 1 3 2 3 1 1 2 1 2 1 2 1",
    ),
    fewest: 48,
  },
  {
    // 407,160 mm in all, so 72.7 rolls at least.
    name: "paper mill, 219 widths of 13 kinds",
    source: "encyclopedia article Cutting stock problem: plans of 73 are published",
    stockLength: 5600,
    lengths: numbers("1380 1520 1560 1710 1820 1880 1930 2000 2050 2100 2140 2150 2200"),
    counts: numbers("22 25 12 14 18 18 20 10 12 14 16 18 20"),
    fewest: 73,
  },
  {
    // The fractional plan takes 452.25.
    name: "Chvátal's finals from raws of 100",
    source: "Chvátal, Linear Programming (1983), chapter 13: data read in a copy; the optimum from memory",
    stockLength: 100,
    lengths: [45, 36, 31, 14],
    counts: [97, 610, 395, 211],
    fewest: 453,
  },
];

/**
 * Lists whose fractional plan rounds up to one stock fewer than any whole plan takes, so that only a search proves the
 * optimum. Pieces of 1/3, 1/4 and 1/11 of the stock are the best-known family of them (from memory: Rietz and
 * Scheithauer, Families of Non-IRUP Instances of the One-Dimensional Cutting Stock Problem, 2002).
 *
 * Why 2 of 44, 3 of 33 and 6 of 12 do not come from two stocks of 132, by hand: they come to 259, so each stock would
 * be filled to 127 at least. 44s and 33s come to 11k. With 1 to 5 pieces of 12, 127 to 132 less 12, 24, 36, 48 or 60
 * holds no multiple of 11; with none it holds 132, which is 3 of 44 or 4 of 33, more than there are; with 6 it holds
 * 55, which 44s and 33s do not make.
 */
export const GAPS: readonly Instance[] = [
  {
    name: "44 33 12 from 132",
    source: "by hand, above",
    stockLength: 132,
    lengths: [44, 33, 12],
    counts: [2, 3, 6],
    fewest: 3,
  },
  {
    name: "the same, and 12 full stocks",
    source: "HiGHS; the 12 more are each filled with one length by hand: 3 of 44, 4 of 33, or 11 of 12",
    stockLength: 132,
    lengths: [44, 33, 12],
    counts: [14, 19, 50],
    fewest: 15,
  },
];
