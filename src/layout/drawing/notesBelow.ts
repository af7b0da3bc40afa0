import { cutTape, EDGING_STEP_IN } from "../../quantities/cutTape";
import type { Layout } from "../layout";
import { reachOfPins } from "../pins";
import { withoutRepeats } from "../ringPoints";
import { nameOf } from "./borderPart";
import { cutOutInWords } from "./cutOutPart";
import type { Paragraph } from "./flow";
import { coordinate, countOf, cutLength, inches, taped } from "./words";

/** More points than this are given by the list they came from. */
const MOST_POINTS = 40;

/**
 * What stands below the plan in words: lengths to cut, pieces, and where things are.
 *
 * @param letters for each cut-out, the letter by which the plan shows it, if any.
 */
export function notesBelow(layout: Layout, letters: readonly (string | undefined)[]): Paragraph[] {
  return [fabric(layout), pins(layout), ...border(layout), ...setOut(layout, letters), ...remarks(layout)];
}

function fabric({ cuts, counts, rules, directionDegrees }: Layout): Paragraph {
  const { rollWidthFt, overlapFt, endLapFt } = rules;
  const lapped = counts.strips > 1 ? `, strips lap ${inches(overlapFt)}` : "";
  const ends = counts.endLaps > 0 ? `, pieces lap ${inches(endLapFt)}` : "";
  return {
    heading: `Fabric: ${countOf(counts.cuts, "cut")} off a roll ${taped(rollWidthFt)} wide${lapped}${ends}`,
    items: [
      ...cuts.map(({ number, lengthFt, pieces }) => {
        const parts = pieces.map((piece) => cutLength(piece.lengthFt));
        return `${number}: ${parts.length > 1 ? parts.join(" + ") : cutLength(lengthFt)}`;
      }),
      `strips run at ${Math.round(directionDegrees)}°`,
      ...(Number.isFinite(rules.rollLengthFt) ? [countOf(counts.rolls, "roll")] : []),
    ],
  };
}

const pins = ({ counts, rules }: Layout): Paragraph => ({
  heading: `Pins: ${counts.pins}`,
  items: [
    `rows ${inches(rules.pinSpacingFt)} apart or less, and along every overlap`,
    `no spot more than ${cutLength(reachOfPins(rules.pinSpacingFt, rules.bayFt))} from a pin`,
  ],
});

function border({ border: runs, borderFt, borderRules, counts }: Layout): Paragraph[] {
  if (!borderRules || runs.length === 0) return [];
  const { pieceLengthFt, lapFt } = borderRules;
  const pieces = runs.flatMap((run) => run.pieces);
  const whole = pieces.filter(({ isWhole }) => isWhole);
  const lapped = lapFt > 0 ? `, lapped ${inches(lapFt)}` : "";
  return [
    {
      heading: `Edging: ${taped(borderFt)} in ${countOf(counts.pieces, "piece")}, ${countOf(counts.stakes, "stake")}`,
      items: [
        ...(whole.length > 0 ? [`${whole.length} whole, ${taped(pieceLengthFt)}${lapped}`] : []),
        ...pieces
          .filter(({ isWhole }) => !isWhole)
          .map(({ number, lengthFt }) => `${nameOf(number)} cut to ${cutTape(lengthFt, EDGING_STEP_IN)}`),
      ],
    },
  ];
}

/** Points and cut-outs by their distance from x 0, y 0. */
function setOut({ bed, outline }: Layout, letters: readonly (string | undefined)[]): Paragraph[] {
  const items = outline.cutOuts.map((cutOut, i) => cutOutInWords(cutOut, letters[i]));
  const heading = `Cut-outs: x right, y up, from ${zeroOf(bed)}`;
  const found = items.length > 0 ? [{ heading, items, stacked: true }] : [];
  if (bed.kind !== "points") return found;
  const points = withoutRepeats(bed.points);
  if (points.length > MOST_POINTS) return found;
  const list = points.map(({ x, y }, i) => `${i + 1}: ${coordinate(x)}, ${coordinate(y)}`);
  return [{ heading: "Corners: x right, y up", items: list }, ...found];
}

/** Where x and y are measured from. */
function zeroOf({ kind }: Layout["bed"]): string {
  switch (kind) {
    case "rectangle":
      return "the lower left corner";
    case "round":
      return "the middle";
    case "widths":
      return "0 on the base line";
    case "points":
      return "the same zero as the corners";
  }
}

const remarks = ({ notes }: Layout): Paragraph[] =>
  notes.length > 0 ? [{ heading: "Notes", items: notes, stacked: true }] : [];
