/**
 * What a 0 means that is taken where an argument is left out or its cell is blank. No error tells of it, so the pages
 * do: of each such argument, by its name.
 */
export const ZERO_MEANS: Readonly<Record<string, string>> = {
  corner_radius: "the corners are square",
  rounded_corners: "no corner is rounded, whatever the radius",
  inner_diameter: "a full circle, not a ring",
  waste: "nothing is added for waste or low spots",
  minimum: "no minimum, so you can order one step",
  trench_length: "no edging trench",
  trench_depth_in: "no edging trench, however long it is",
  tons_per_yard: "weight isn't checked. Only volume counts, so the truck can be overloaded",
  payload_tons: "weight isn't checked. Only volume counts, so the truck can be overloaded",
  loss_in: "cuts take nothing",
  lap_in: "pieces meet end to end",
  joint_in: "pavers touch",
  corners: "no extra stakes at corners",
  first_side: "not known, so each corner gets a stake of its own",
  next_side: "no second side",
  piece_length: "edging isn't counted",
  stake_spacing_in: "edging isn't counted",
  long_sides: "no edging along the long sides",
  short_sides: "no edging along the short sides",
  end_sides: "no edging across the ends",
  cut_around_ft: "no pins around cut-outs",
};

/** Whether 0 is taken for an argument without a word. */
export const isSilentZero = (argument: { readonly fallback?: unknown; readonly blankIs?: number }): boolean =>
  argument.fallback === 0 || argument.blankIs === 0;
