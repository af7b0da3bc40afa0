import { cutTape, EDGING_STEP_IN } from "../../quantities/cutTape";
import type { OrderedCut, OrderedCuts } from "../../quantities/job/cutsOfBed";
import { printTape } from "../../quantities/tape";
import type { Layout } from "../layout";
import { reachOfPins } from "../pins";
import { cross, SAME_FT } from "../plane";
import { withoutRepeats } from "../ringPoints";
import { headingAt, type Run, runLength } from "../runs";
import { edgingOfLayout, hasNames, nameOf } from "./borderPart";
import { cutOutInWords } from "./cutOutPart";
import { edgings, edgingWords } from "./describe";
import type { Paragraph } from "./flow";
import { coordinate, countOf, cutLength, inches, oneOf, taped } from "./words";

/** More points than this are given by the list they came from. */
const MOST_POINTS = 40;

/**
 * What is below the plan in words: lengths to cut, pieces, and where things are.
 *
 * @param ordered what the job's order cuts this bed's pieces and strips from, where that is known.
 * @param letters for each cut-out, the letter by which the plan shows it, if any.
 */
export function notesBelow(
  layout: Layout,
  letters: readonly (string | undefined)[],
  ordered: OrderedCuts = { edging: [], fabric: [] },
): Paragraph[] {
  return [
    ...(layout.cuts.length > 0 ? [fabric(layout, ordered.fabric), pins(layout)] : []),
    ...edgings(layout).flatMap((one) => border(one, one.isSecond ? [] : ordered.edging)),
    ...[...setOut(layout, letters), ...remarks(layout)],
  ];
}

function fabric(layout: Layout, ordered: readonly OrderedCut[]): Paragraph {
  const { cuts, counts, rules, layers = 1 } = layout;
  const each = layers > 1 ? `${layers} layers, each ` : "";
  const { rollWidthFt, overlapFt, endLapFt } = rules;
  const lapped = counts.strips > 1 ? `, strips lap ${inches(overlapFt)}` : "";
  const ends = counts.endLaps > 0 ? `, pieces lap ${inches(endLapFt)}` : "";
  return {
    heading: `Fabric: ${each}${countOf(counts.cuts, "cut")} off a roll ${taped(rollWidthFt)} wide${lapped}${ends}`,
    items: [
      ...cuts.map(({ number, lengthFt, pieces }) => {
        const own = ordered.filter(({ part }) => part === number);
        if (own.length > 0) return `${number}: ${own.map(offRoll).join(layers > 1 ? "; " : " + ")}`;
        const parts = pieces.map((piece) => cutLength(piece.lengthFt));
        return `${number}: ${parts.length > 1 ? parts.join(" + ") : cutLength(lengthFt)}`;
      }),
      `strips run at ${Math.round(layout.directionDegrees)}°${alongSide(layout)}`,
      ...(Number.isFinite(rules.rollLengthFt) && ordered.length === 0 ? [countOf(layers * counts.rolls, "roll")] : []),
    ],
  };
}

/** The side along which slanted strips run: it is why they are longer than the bed is from left to right. */
function alongSide({ direction, outline }: Layout): string {
  if (Math.min(Math.abs(direction.x), Math.abs(direction.y)) < SAME_FT) return "";
  const isBeside = (run: Run) =>
    run.kind === "straight" && Math.abs(cross({ x: 0, y: 0 }, headingAt(run, 0), direction)) < SAME_FT;
  const beside = outline.ring.runs.filter(isBeside);
  return beside.length > 0 ? `, along the side of ${taped(Math.max(...beside.map(runLength)))}` : "";
}

const offRoll = ({ length, stock }: OrderedCut) => `${length} ${stock ? `off roll ${stock}` : "whole roll"}`;

function pins({ counts, rules, notDrawn }: Layout): Paragraph {
  const elsewhere = notDrawn?.pins ?? 0;
  return {
    heading: `Pins: ${counts.pins + elsewhere}`,
    items: [
      ...(elsewhere > 0 ? [`${counts.pins} drawn, and ${elsewhere} around other areas, which aren't drawn`] : []),
      `rows ${inches(rules.pinSpacingFt)} apart or less, and along every overlap`,
      `no spot more than ${cutLength(reachOfPins(rules.pinSpacingFt, rules.bayFt))} from a pin`,
    ],
  };
}

function border(layout: Layout, ordered: readonly OrderedCut[]): Paragraph[] {
  const { border: runs, borderRules } = layout;
  if (!borderRules || runs.length === 0) return [];
  const heading = edgingWords(layout, ": ", ", ");
  if (edgingOfLayout(layout).drawn === "cut") return [{ heading, items: [] }];
  const { pieceLengthFt, lapFt } = borderRules;
  const pieces = runs.flatMap((run) => run.pieces);
  const whole = pieces.filter(({ isWhole }) => isWhole);
  const lapped = lapFt > 0 ? `, lapped ${inches(lapFt)}` : lapFt < 0 ? `, ${printTape(-lapFt)} apart` : "";
  const one = oneOf(edgingOfLayout(layout).lines.edging?.unit ?? "pieces");
  const called = (number: number) => (hasNames(layout) ? nameOf(number) : "last one");
  return [
    {
      heading,
      items: [
        ...(whole.length > 0 ? [`${whole.length} whole, ${taped(pieceLengthFt)}${lapped}`] : []),
        ...pieces
          .filter(({ isWhole }) => !isWhole)
          .map(({ number, lengthFt }) => {
            const cut = ordered.find(({ part }) => part === number);
            const from = cut && ` from ${cut.isOffCut ? "the offcut of " : ""}${one} ${cut.stock}`;
            return `${called(number)} cut to ${cut?.length ?? cutTape(lengthFt, EDGING_STEP_IN)}${from ?? ""}`;
          }),
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
