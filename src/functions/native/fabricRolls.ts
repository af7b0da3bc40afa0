import { feetOf, minus, nothingBeside } from "./arithmetic";
import { endLapFits, overlapFits, stripsOf } from "./fabric";
import { form } from "./form";
import { length, lengthOrZero } from "./numbers";

const USUAL_END_LAP_IN = 12;
/** As many strips as the formula looks through; a bed of so many is some slip of a unit. */
const MOST_STRIPS = 200;
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
    /** How far so many strips reach beyond the first roll, in feet. */
    const beyond = (count: string) => `(${long.text}*${count}-${rollLength.text}-${slack})`;
    const moreRolls = (count: string) => `MAX(0,-INT(-${beyond(count)}/${gain}))`;

    const each = `ROW($1:$${MOST_STRIPS})`;
    const moreForEach = `(${beyond(each)}>0)*-INT(-${beyond(each)}/${gain})`;
    const left = `${rollLength.text}-${long.text}*${each}+${gain}*${moreForEach}`;
    const isScrap = `(${left}<=${lap}+${slack})`;
    const period = `(${MOST_STRIPS + 1}-SUMPRODUCT(MAX(${isScrap}*(${MOST_STRIPS + 1}-${each}))))`;

    const rest = `MOD(${strips},${period})`;
    const wholePeriods = `INT((${strips})/${period})*(1+${moreRolls(period)})`;
    return {
      text: `${wholePeriods}+SIGN(${rest})+${moreRolls(rest)}`,
      when: [
        [...overlapFits(roll, overlap), endLapFits(rollLength, endLap)],
        [`${strips}<=${MOST_STRIPS}`, `(${strips})*(1+${long.text}/${gain})<=${MOST_PIECES}`],
      ],
    };
  },
);
