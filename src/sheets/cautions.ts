/**
 * The usual cautions of the work, as the block and the pane show them. Each defers to those who rule: the
 * ticket, local codes, licensed practice. Sources: 49 CFR 196.103 (one call before digging; the operators mark what is
 * theirs, so that lines of the owner's own stay unmarked), 49 CFR 192.353 and 192.355 (meters accessible, vents clear),
 * 29 CFR 1926.1153 (silica), the NIOSH lifting constant of 51 lb, 49 CFR 390.5 (GVWR), IRC R401.3 (6 in of fall within
 * 10 ft).
 */
export const cautions: readonly { readonly about: string; readonly text: string }[] = [
  {
    about: "Buried lines",
    text: "Call 811 before any digging, wait for the marks, and dig by hand beside them. Private lines (sprinklers, lights, a grill's gas) are not marked: ask the owner. The ticket and local law rule.",
  },
  {
    about: "Meters and vents",
    text: "No stone, soil or fabric on a gas meter, valve or vent, nor over a cleanout. Leave room to read and shut off.",
  },
  {
    about: "Dust",
    text: "Crushed stone and cutting it give silica dust. Wet it down, stay upwind, wear a fitted respirator where the rule asks for it.",
  },
  {
    about: "Lifting",
    text: "A full 6 cu ft barrow of stone is over 500 lb, a bag 50 lb or more. Fill part way, lift in pairs.",
  },
  {
    about: "Trailers and trucks",
    text: "Payload is the GVWR less empty weight, people and fuel. Stone fills it long before the box looks full.",
  },
  {
    about: "Water",
    text: "Keep ground and border falling away from the house, and stone below siding and weep holes, as local code asks. Ask a licensed person where water stands.",
  },
];
