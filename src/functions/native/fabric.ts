import { feetOf, minus, type Operand, wholeUpOf, withoutSlack } from "./arithmetic";
import { form } from "./form";
import { length, lengthOrZero } from "./numbers";

const USUAL_END_LAP_IN = 12;
const USUAL_PIN_SPACING_IN = 12;
const USUAL_BAY_FT = 4;

export const FABRIC_STRIPS = form([length("ft"), length("ft"), lengthOrZero("in")], (bed, roll, overlap) => ({
  text: stripsOf(bed, roll, overlap),
  when: [overlapFits(roll, overlap)],
}));

export const FABRIC_AREA = form(
  [
    length("ft"),
    length("ft"),
    length("ft"),
    lengthOrZero("in"),
    length("ft", Number.POSITIVE_INFINITY),
    lengthOrZero("in", USUAL_END_LAP_IN),
  ],
  (long, wide, roll, overlap, rollLength, endLap) => {
    const lap = feetOf(endLap);
    const across =
      overlap.constant === 0 ? wide.text : `(${wide.text}+(${stripsOf(wide, roll, overlap)}-1)*${feetOf(overlap)})`;
    if (rollLength.constant === Number.POSITIVE_INFINITY)
      return { text: `${across}*${long.text}`, when: [overlapFits(roll, overlap)] };
    const pieces = `IF(${long.text}<=${rollLength.text},1,${wholeUpOf(`${minus(long.text, lap)}/${minus(rollLength.text, lap)}`)})`;
    return {
      text: `${across}*(${long.text}+(${pieces}-1)*${lap})`,
      when: [[...overlapFits(roll, overlap), endLapFits(rollLength, endLap)]],
    };
  },
);

export const PINS = form(
  [
    length("ft"),
    length("ft"),
    length("ft"),
    lengthOrZero("in"),
    length("in", USUAL_PIN_SPACING_IN),
    lengthOrZero("ft", 0),
    length("ft", USUAL_BAY_FT),
  ],
  (long, wide, roll, overlap, spacing, cutAround, bay) => {
    const apart = `(${feetOf(spacing)})`;
    const strips = `(${stripsOf(wide, roll, overlap)})`;
    const bays = `(${wholeUpOf(`MIN(${roll.text},${wide.text})/${bay.text}`)})`;
    const intervals = `MAX(1,${wholeUpOf(`${long.text}/${apart}`)})`;
    // Edge rows E = ⌊(m + 1)/2⌋ + 1 and middle rows C = ⌊m/2⌋, as the pattern has them.
    const edges = `(INT((${intervals}+1)/2)+1)*(2+${strips}*(${bays}-1))`;
    const middles = `${strips}*${bays}*INT(${intervals}/2)`;
    const seams = `(${strips}-1)*(${intervals}+1)`;
    const around = cutAround.constant === 0 ? "" : `+(${wholeUpOf(`${cutAround.text}/${apart}`)})`;
    return { text: `${edges}+${middles}+${seams}${around}`, when: [overlapFits(roll, overlap)] };
  },
);

/** Strips side by side across a bed. */
export function stripsOf(bed: Operand, roll: Operand, overlap: Operand): string {
  const lap = feetOf(overlap);
  return `IF(${bed.text}<=${roll.text},1,${wholeUpOf(`${minus(bed.text, lap)}/${minus(roll.text, lap)}`)})`;
}

export function overlapFits(roll: Operand, overlap: Operand): readonly string[] {
  return overlap.constant === 0 ? [] : [`${feetOf(overlap)}<${roll.text}`];
}

/** A whole roll must not be used up by the end lap. */
export function endLapFits(rollLength: Operand, endLap: Operand): string {
  return `${feetOf(endLap)}<${withoutSlack(rollLength.text)}`;
}
