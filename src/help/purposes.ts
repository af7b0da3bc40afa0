/** What the functions are for, in the order of a job, and which serve it. */
export const PURPOSES: readonly { readonly title: string; readonly functions: readonly string[] }[] = [
  { title: "Read the tape", functions: ["FEET", "INCHES"] },
  {
    title: "Measure the bed",
    functions: ["AREA_RECTANGLE", "AREA_TRIANGLE", "AREA_ROUND", "AREA_WIDTHS", "AREA_POINTS"],
  },
  { title: "Measure the border", functions: ["EDGE_LENGTH", "EDGE_WIDTHS", "EDGE_POINTS"] },
  { title: "Dig and haul", functions: ["DIG_DATE", "DIG_YARDS", "SPOIL_YARDS", "LOADS"] },
  { title: "Set the border", functions: ["EDGING_PIECES", "STAKES"] },
  {
    title: "Lay fabric and pins",
    functions: ["FABRIC_STRIPS", "FABRIC_AREA", "FABRIC_ROLLS", "FABRIC_CUTS", "PINS", "PIN_MAP"],
  },
  {
    title: "Lay out a bed of any shape",
    functions: ["LAYOUT", "LAYOUT_WIDTHS", "LAYOUT_RECTANGLE", "LAYOUT_ROUND", "LAYOUT_CUTS", "LAYOUT_PINS"],
  },
  {
    title: "Order stone",
    functions: ["STONE_DEPTH", "STONE_YARDS", "STONE_TONS", "STONE_BAGS", "STONE_COVERS", "STONE_DENSITY", "ORDER_UP"],
  },
  { title: "Barrow it", functions: ["BARROW_TRIPS", "HAUL_HOURS"] },
  { title: "Cut from stock lengths", functions: ["CUT_COUNT", "CUT_LIST"] },
  { title: "Price it", functions: ["PRICE_MARKUP", "PRICE_MARGIN", "MARKUP_FOR_MARGIN"] },
];
