import { type BedForm, blankForm } from "../src/quantities/bed/form";

const form = (changes: Partial<BedForm>): BedForm => ({ ...blankForm(), name: "Front walk", ...changes });

/** Invented beds: each way of measuring, with its trickier cases, in tape text. */
export const bedsOfEachWay: Readonly<Record<string, BedForm>> = {
  "rectangle, rounded": form({
    typed: { length: `18' 6"`, width: "5", cornerRadius: "2", roundedCorners: "2", stoneSize: "3/4" },
  }),
  "rectangle, plain": form({ typed: { length: `41' 2"`, width: "9 ft" } }),
  ring: form({ way: "round", typed: { diameter: `7' 6"`, innerDiameter: "1.5", innerBorder: "1" } }),
  "widths, to a point": form({
    way: "widths",
    typed: { spacing: "4" },
    widths: ["3'", `4' 6"`, "5.5", "4 ft", "0", ""],
  }),
  "widths, with cut-outs": form({
    way: "widths",
    typed: { spacing: "4" },
    widths: ["0", "5.5", "7", "6", "4.5", "6.5", "0"],
    cutOuts: [
      ["8", "1.5", "1.5", "2"],
      ["", "", "", ""],
      [`16'`, "2", `8"`, ""],
    ],
  }),
  points: form({
    way: "points",
    typed: { cutOuts: "4", cutAround: "8" },
    points: [
      ["0", "0", "0"],
      [`12'`, "0", "1"],
      ["12", `6' 6"`, "1"],
      ["-2", "3 1/2", "1"],
      [`-1' 6"`, "1", "1"],
    ],
  }),
  "area from a plan": form({
    way: "area",
    typed: { area: "210", edge: "44", longest: "30", widest: "8", stone: "1.4", waste: "5 %", crewRate: "52,5" },
  }),
};
