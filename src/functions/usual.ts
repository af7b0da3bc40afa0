/** What is taken for an argument of fabric and pins that is left out: common practice, no source. */
export const USUAL_END_LAP_IN = 12;
export const USUAL_PIN_SPACING_IN = 12;
export const USUAL_BAY_FT = 4;
