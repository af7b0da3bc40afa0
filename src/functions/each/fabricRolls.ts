import { fabricStrips } from "../../quantities/fabric";
import { fabricCuts, fabricRolls, MOST_PIECES } from "../../quantities/fabricRolls";
import { INCHES_PER_FOOT } from "../../quantities/units";
import { endLapIn, lengthAlong, overlapIn, rollLength, rollWidth, widthAcross } from "../arguments";
import { declare } from "../declare";
import { feetOf, minus, nothingBeside } from "../native/arithmetic";
import { shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";
import { endLapFits } from "./fabricArea";
import { overlapFits, stripLines, stripsFormula } from "./fabricStrips";

/** Strips that are told one by one. */
const MOST_STRIPS_TOLD = 8;
/**
 * As many strips as the formula looks through: at 3 ft each, no bed is so wide. More give an error, since the list
 * of their numbers has to be typed out: a reference to rows would, in some programs, lead back to the formula.
 */
const MOST_STRIPS = 60;

export const FABRIC_ROLLS = worksheetFunction(
  fabricRolls,
  lengthAlong,
  widthAcross,
  rollWidth,
  rollLength,
  overlapIn,
  endLapIn,
);

export const fabricRollsDeclared = /* @__PURE__ */ declare(FABRIC_ROLLS, {
  name: "FABRIC_ROLLS",
  purpose: "Lay and pin fabric",
  about: "Fabric rolls to buy, cut in full-width strips and used up one after another.",
  gives: "fabric rolls",
  returns: "Whole rolls.",
  kind: "count",
  whole: true,
  rule: "Strips are cut full width, roll after roll. Where a roll runs out mid-strip, the next piece laps it by the end lap.",
  example: "=BED.FABRIC_ROLLS(30, 11, 6, 50, 12) gives 2",
  source: "Plain arithmetic, roll after roll. A 12 in end lap is common practice.",
  related: ["FABRIC_CUTS", "FABRIC_AREA", "LAYOUT"],
  // Rolls are used up one after another, so strips repeat: as soon as one ends with a remnant that is scrap, the next
  // begins on a fresh roll, as the first did. The formula finds that strip, counts the rolls up to it, and times them.
  native: (long, wide, roll, rollLength, overlap, endLap) => {
    const countsUp = Array.from({ length: MOST_STRIPS }, (_, place) => place + 1);
    const eachStrip = `{${countsUp.join(",")}}`;
    const eachFromTheEnd = `{${countsUp.toReversed().join(",")}}`;
    const lap = feetOf(endLap);
    const gain = minus(rollLength.text, lap);
    const slack = nothingBeside(long.text);
    const strips = stripsFormula(wide, roll, overlap);
    // Each roll after the first reaches further by its length less the lap.
    const furtherRolls = (count: string) => `MAX(0,-INT((${rollLength.text}+${slack}-${long.text}*${count})/${gain}))`;

    // What is left of the first roll after each strip, with the slack; of a later roll, that in steps of its gain.
    // The list stands first: the practice workbook's engine takes none behind a single number.
    const left = `${eachStrip}*-${long.text}+${rollLength.text}+${slack}`;
    const scrap = `${lap}+2*${slack}`;
    const isScrap = `(MOD(${left},${gain})<=${scrap})*(${left}<=${scrap})`;
    const period = `(${MOST_STRIPS + 1}-SUMPRODUCT(MAX(${isScrap}*${eachFromTheEnd})))`;

    const rest = `MOD(${strips},${period})`;
    const wholePeriods = `INT((${strips})/${period})*(1+${furtherRolls(period)})`;
    return {
      text: `${wholePeriods}+SIGN(${rest})+${furtherRolls(rest)}`,
      when: [
        [...overlapFits(roll, overlap), endLapFits(rollLength, endLap)],
        [`${strips}<=${MOST_STRIPS}`, `(${strips})*(1+${long.text}/${gain})<=${MOST_PIECES}`],
      ],
    };
  },
  working: (answer, length, width, roll, rollLength, overlapIn, endLapIn) => {
    const strips = fabricStrips(width, roll, overlapIn);
    const lines = [
      ...stripLines(strips, width, roll, overlapIn),
      `each ${shown(length)} ft long, off rolls of ${shown(rollLength)} ft; a piece that starts mid-strip laps ${shown(endLapIn / INCHES_PER_FOOT)} ft`,
    ];
    let [onRoll, left] = [0, 0];
    const cuts = fabricCuts(length, width, roll, rollLength, overlapIn, endLapIn);
    cuts.forEach((cut, place) => {
      left = Math.max(0, (cut.roll === onRoll ? left : rollLength) - cut.lengthFt);
      onRoll = cut.roll;
      const isLastOfStrip = cuts[place + 1]?.strip !== cut.strip;
      if (isLastOfStrip && cut.strip <= MOST_STRIPS_TOLD)
        lines.push(`strip ${cut.strip} ends on roll ${cut.roll}, with ${shown(left)} ft left on it`);
    });
    if (strips > MOST_STRIPS_TOLD) lines.push("and so on");
    return [...lines, `${shown(answer)} ${answer === 1 ? "roll" : "rolls"}`];
  },
});
