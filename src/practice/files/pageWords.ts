import type { PageTextPlace } from "../grid/port";

/** The host's words for sizes of paper, by the numbers that files have for them: ECMA-376 18.3.1.63. */
export const papers: Readonly<Record<number, string>> = {
  1: "Letter",
  3: "Tabloid",
  4: "Ledger",
  5: "Legal",
  6: "Statement",
  7: "Executive",
  8: "A3",
  9: "A4",
  11: "A5",
  12: "B4",
  13: "B5",
  14: "Folio",
};

/** The letters before the left, middle and right part of a page's head or foot: ECMA-376 18.3.1.46. */
export const textParts = ["L", "C", "R"] as const;
export const textPlaces = {
  head: ["leftHeader", "centerHeader", "rightHeader"],
  foot: ["leftFooter", "centerFooter", "rightFooter"],
} as const satisfies Record<string, readonly PageTextPlace[]>;

export const pointsPerInch = 72;
