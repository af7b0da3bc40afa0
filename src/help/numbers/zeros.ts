/**
 * What a 0 means that is taken where an argument is left out or its cell is blank. No error tells of it, so the pages
 * do: of each such argument, by its name.
 */
export const ZERO_MEANS: Readonly<Record<string, string>> = {
  corner_radius: "the corners are square",
  rounded_corners: "no corner is rounded, whatever the radius",
  inner_diameter: "a full circle, and no ring",
  waste: "nothing is added for what is lost, packed down or left on the pile",
  minimum: "the yard sells as little as one step",
  trench_length: "no trench is dug for the border",
  trench_depth_in: "no trench is dug for the border, however long it is",
  tons_per_yard: "weight is not looked at. What the box holds alone counts, and the truck can be overloaded",
  payload_tons: "weight is not looked at. What the box holds alone counts, and the truck can be overloaded",
  loss_in: "a cut takes nothing away",
  lap_in: "pieces meet end to end",
  corners: "no corner gets a stake of its own",
  cut_around_ft: "no pins are set round what stands in the bed",
};

/** Whether 0 is taken for an argument without a word. */
export const isSilentZero = (argument: { readonly fallback?: unknown; readonly blankIs?: number }): boolean =>
  argument.fallback === 0 || argument.blankIs === 0;
