import { shown } from "../numbers";
import { FEET_IN, type Figures, inFeet, roundedUp, TOLERANCE, upTo, type Working } from "./figures";

/** Strips that are told one by one. */
const MOST_STRIPS = 8;

export const supplies: Readonly<Record<string, Working>> = {
  EDGING_PIECES: (figures) => piecesOf(figures),

  STAKES(figures) {
    const { answer: pieces, lines, gain } = piecesOf(figures);
    if (pieces === 0) return { lines, answer: 0 };
    const [edge, spacing] = [figures.number("edge_length"), figures.number("stake_spacing_in") / FEET_IN];
    const [corners, isClosed] = [figures.number("corners"), figures.flag("closed")];
    const last = edge - (pieces - 1) * gain;
    const [each, end] = [upTo(gain / spacing), Math.max(1, upTo(last / spacing))];
    const answer = (pieces - 1) * each + end + (isClosed ? 0 : 1) + corners;
    return {
      lines: [
        ...lines,
        `${shown(each)} a piece of ${shown(gain)} ft at most ${shown(spacing)} ft apart, ${shown(end)} on the last ${shown(last)} ft`,
        `${shown(pieces - 1)} × ${shown(each)} + ${shown(end)}${isClosed ? "" : " + 1 at the end"} + ${shown(corners)} at corners = ${shown(answer)} stakes`,
      ],
      answer,
    };
  },

  FABRIC_STRIPS: (figures) => stripsOf(figures, "bed_width"),

  FABRIC_AREA(figures) {
    const strips = stripsOf(figures, "width");
    const [length, width, lap] = [
      figures.number("length"),
      figures.number("width"),
      figures.number("overlap_in") / FEET_IN,
    ];
    const [roll, end] = [figures.maybe("roll_length"), figures.number("end_lap_in") / FEET_IN];
    const pieces = roll === undefined || length <= roll ? 1 : upTo((length - end) / (roll - end));
    const [across, along] = [width + (strips.answer - 1) * lap, length + (pieces - 1) * end];
    const answer = across * along;
    return {
      lines: [
        ...strips.lines,
        `across: ${shown(width)} + ${shown(strips.answer - 1)} × ${shown(lap)} = ${shown(across)} ft`,
        `along, ${shown(pieces)} ${pieces === 1 ? "piece" : "pieces"}: ${shown(length)} + ${shown(pieces - 1)} × ${shown(end)} = ${shown(along)} ft`,
        `${shown(across)} × ${shown(along)} = ${shown(answer)} sq ft`,
      ],
      answer,
    };
  },

  PINS(figures) {
    const strips = stripsOf(figures, "width");
    const [length, width, roll] = [figures.number("length"), figures.number("width"), figures.number("roll_width")];
    const [spacing, bay, round] = [
      figures.number("spacing_in") / FEET_IN,
      figures.number("bay_ft"),
      figures.number("cut_around_ft"),
    ];
    const n = strips.answer;
    const bays = upTo(Math.min(roll, width) / bay);
    const m = Math.max(1, upTo(length / spacing));
    const singles = Math.floor(m / 2);
    const pairs = singles + 1 + (m % 2);
    const [edges, between, middle, seams] = [2 * pairs, n * (bays - 1) * pairs, n * bays * singles, (n - 1) * (m + 1)];
    const around = upTo(round / spacing);
    const answer = edges + between + middle + seams + around;
    return {
      lines: [
        ...strips.lines,
        `${shown(bays)} ${bays === 1 ? "bay" : "bays"} across a strip; ${shown(m)} intervals along: ${shown(pairs)} rows of pairs, ${shown(singles)} of singles`,
        `edges 2 × ${shown(pairs)} = ${shown(edges)}, between bays ${shown(between)}, in the middle ${shown(middle)}, on overlaps ${shown(seams)}, round what is cut out ${shown(around)}`,
        `together ${shown(answer)} pins`,
      ],
      answer,
    };
  },

  FABRIC_ROLLS(figures) {
    const strips = stripsOf(figures, "width");
    const [length, roll, end] = [
      figures.number("length"),
      figures.number("roll_length"),
      figures.number("end_lap_in") / FEET_IN,
    ];
    const lines = [
      ...strips.lines,
      `each ${shown(length)} ft long, off rolls of ${shown(roll)} ft; a piece that begins inside a strip laps ${shown(end)} ft`,
    ];
    const slack = TOLERANCE * length;
    let [rolls, left] = [0, 0];
    for (let strip = 1; strip <= strips.answer; strip++) {
      for (let from = 0; ; from += left - end, left = 0) {
        // What is no longer than a lap is scrap.
        if (left <= end + slack) [rolls, left] = [rolls + 1, roll];
        if (left < length - from - slack) continue;
        left = Math.max(0, left - (length - from));
        break;
      }
      if (strip <= MOST_STRIPS) lines.push(`strip ${strip} ends on roll ${rolls}, with ${shown(left)} ft left on it`);
    }
    if (strips.answer > MOST_STRIPS) lines.push("and so on");
    lines.push(`${shown(rolls)} ${rolls === 1 ? "roll" : "rolls"}`);
    return { lines, answer: rolls };
  },

  CUT_COUNT(figures) {
    const [stock, lengths, counts] = [figures.number("stock_length"), figures.list("lengths"), figures.list("counts")];
    const pieces = lengths.map((length, place) => ({ length, count: counts.length > 0 ? (counts[place] ?? 0) : 1 }));
    const total = pieces.reduce((sum, { length, count }) => sum + length * count, 0);
    const least = roundedUp(`together ${shown(total)} ft ÷ ${shown(stock)}`, total / stock);
    // The search itself cannot be shown in lines; what it cannot fall below can.
    return { lines: [`${least.line} stock lengths at the very least`], answer: Number.NaN };
  },
};

function stripsOf(figures: Figures, widthName: string) {
  const [width, roll, overlap] = [
    figures.number(widthName),
    figures.number("roll_width"),
    figures.number("overlap_in"),
  ];
  if (width <= roll) return { lines: [`1 strip: the roll is as wide as the bed`], answer: 1 };
  const lap = overlap / FEET_IN;
  const strips = roundedUp(
    `(${shown(width)} − ${shown(lap)}) ÷ (${shown(roll)} − ${shown(lap)})`,
    (width - lap) / (roll - lap),
  );
  const lines = overlap > 0 ? [inFeet(overlap), `strips: ${strips.line}`] : [`strips: ${strips.line}`];
  return { lines, answer: strips.whole };
}

function piecesOf(figures: Figures) {
  const [edge, piece, lap] = [
    figures.number("edge_length"),
    figures.number("piece_length"),
    figures.number("lap_in") / FEET_IN,
  ];
  const gain = piece - lap;
  if (edge === 0) return { lines: ["no edge, no pieces"], answer: 0, gain };
  const isClosed = figures.flag("closed");
  const first = lap > 0 ? [`each next piece reaches ${shown(piece)} − ${shown(lap)} = ${shown(gain)} ft further`] : [];
  const needed = isClosed ? edge / gain : (edge - lap) / gain;
  const how =
    isClosed || lap === 0 ? `${shown(edge)} ÷ ${shown(gain)}` : `(${shown(edge)} − ${shown(lap)}) ÷ ${shown(gain)}`;
  const pieces = roundedUp(how, needed);
  const answer = Math.max(1, pieces.whole);
  return { lines: [...first, `pieces: ${pieces.line}`], answer, gain };
}
