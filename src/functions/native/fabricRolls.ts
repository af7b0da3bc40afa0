import { feetOf, minus, nothingBeside } from "./arithmetic";
import { endLapFits, overlapFits, stripsOf } from "./fabric";
import { form } from "./form";
import { length, lengthOrZero } from "./numbers";

const USUAL_END_LAP_IN = 12;
/**
 * As many strips as the formula looks through: at 3 ft each, no bed is so wide. More give an error, since the list
 * of their numbers has to be typed out: a reference to rows would, in some programs, lead back to the formula.
 */
export const MOST_STRIPS = 60;
const countsUp = Array.from({ length: MOST_STRIPS }, (_, place) => place + 1);
const EACH_STRIP = `{${countsUp.join(",")}}`;
const EACH_FROM_THE_END = `{${countsUp.toReversed().join(",")}}`;
const MOST_PIECES = 100_000;

/*
 * Rolls are used up one after another, so strips repeat: as soon as one ends with a remnant that is scrap, the next
 * begins on a fresh roll, as the first did. The formula finds that strip, counts the rolls up to it, and times them.
 */
export const FABRIC_ROLLS = form(
  [length("ft"), length("ft"), length("ft"), length("ft"), lengthOrZero("in"), lengthOrZero("in", USUAL_END_LAP_IN)],
  (long, wide, roll, rollLength, overlap, endLap) => {
    const lap = feetOf(endLap);
    const gain = minus(rollLength.text, lap);
    const slack = nothingBeside(long.text);
    const strips = stripsOf(wide, roll, overlap);
    // Each roll after the first reaches further by its length less the lap.
    const furtherRolls = (count: string) => `MAX(0,-INT((${rollLength.text}+${slack}-${long.text}*${count})/${gain}))`;

    // What is left of the first roll after each strip, with the slack; of a later roll, that in steps of its gain.
    // The list stands first: the practice workbook's engine takes none behind a single number.
    const left = `${EACH_STRIP}*-${long.text}+${rollLength.text}+${slack}`;
    const scrap = `${lap}+2*${slack}`;
    const isScrap = `(MOD(${left},${gain})<=${scrap})*(${left}<=${scrap})`;
    const period = `(${MOST_STRIPS + 1}-SUMPRODUCT(MAX(${isScrap}*${EACH_FROM_THE_END})))`;

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
);
