import { quoted } from "../quantities/bed/evaluate";
import { coveringCautions, SOURCED_STONES } from "../quantities/tableSources";
import type { Caution } from "../quantities/tables";

/**
 * The usual cautions of the work, as the block and the pane show them. Each defers to those who rule: the
 * ticket, local codes, licensed practice. Sources: 49 CFR 196.103 (one call before digging; the operators mark what is
 * theirs, so that lines of the owner's own stay unmarked), 49 CFR 192.353 and 192.355 (meters accessible, vents clear),
 * 29 CFR 1926.1153 (silica), the NIOSH lifting constant of 51 lb, 49 CFR 390.5 (GVWR), IRC R401.3 (6 in of fall within
 * 10 ft).
 */
export const cautions: readonly Omit<Caution, "source">[] = [
  {
    about: "Buried lines",
    text: "Call 811 before you dig, wait for the marks, and dig by hand beside them. Private lines (sprinklers, lights, gas to a grill) aren't marked: ask the owner. Go by the ticket and state law.",
  },
  {
    about: "Meters and vents",
    text: "Keep stone, soil, and fabric off gas meters, valves, vents, and cleanouts. Leave room to read them and shut them off.",
  },
  {
    about: "Dust",
    text: "Crushing or cutting stone makes silica dust. Wet it down, stay upwind, and wear a fitted respirator where rules require it.",
  },
  {
    about: "Lifting",
    text: "A full 6 cu ft wheelbarrow of stone weighs over 500 lb, a bag 50 lb or more. Fill it partway, and lift with a partner.",
  },
  {
    about: "Trailers and trucks",
    text: "Payload is GVWR less empty weight, people, and fuel. Stone reaches it long before the bed looks full.",
  },
  {
    about: "Water",
    text: "Slope soil and edging away from the house, and keep stone below siding and weep holes, as local code requires. Where water ponds, ask a licensed professional.",
  },
];

/**
 * What to mind about the covering that a cell names, as an expression: nothing for stone that asks for no more than the
 * usual. It follows the cell, since a name there is often changed by hand.
 *
 * @param cell such as "{stone}".
 */
export function coveringCautionFormula(cell: string): string {
  const said = Object.values<Caution>(coveringCautions).map((caution) => {
    const own = SOURCED_STONES.filter(({ cautions: all }) => all.includes(caution));
    const isOne = own.map(({ name }) => `TRIM(${cell})=${quoted(name)}`);
    return `IF(OR(${isOne.join(",")}),${quoted(`${caution.text} `)},"")`;
  });
  return `TRIM(${said.join("&")})`;
}
