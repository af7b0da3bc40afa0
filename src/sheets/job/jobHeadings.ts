/** The first cell of every job block, by which it is found again. */
export const JOB_TITLE = "Stone bed job";

/** Headings of the block's parts, as they are in its first column. */
export const jobHeadings = {
  beds: "Beds",
  lines: "Lines",
  price: "Price",
  options: "Options side by side",
  cautions: "Cautions: local codes, the locate ticket, and licensed professionals come first",
  settings: "Markups, crew, trucks, and boxes",
  working: "From each bed",
  kinds: "Kinds ordered together",
} as const;

/** Which version of a job a block is, and whether it is the one that gets built. */
export const OPTION_LABEL = "Option";
export const CHOSEN_LABEL = "Chosen";

/** Blank lines for the estimator's own, before the standard lines and after them. */
export const OWN_BEFORE = 2;
export const OWN_AFTER = 3;

/** The row of the working that says what each bed's block says of sample prices. */
export const SAMPLE_WORDS = "Sample prices";
