/*
 * What blocks made by earlier versions say, and what the same cells say today. Workbooks keep their words, so a block is
 * found, opened, and updated by either.
 */
export const olderTexts: Readonly<Record<string, string>> = {
  "Border and stakes": "Edging and stakes",
  "Cautions: local codes, the ticket and licensed practice rule":
    "Cautions: local codes, the locate ticket, and licensed professionals come first",
  // Labels.
  "Long sides with border": "Long sides with edging",
  "Short sides with border": "Short sides with edging",
  "Border round the inside": "Edging around the inside",
  "Spacing of the widths": "Spacing between widths",
  "Ends with border": "Ends with edging",
  "Border run": "Edging",
  "Border run inside": "Edging, inside",
  "Longest run": "Overall length",
  "Widest place": "Overall width",
  "Square corners in the border": "Square corners in the edging",
  "Square corners in the run": "Corners with their own stake",
  "Other area without stone": "Other areas to deduct",
  "Fabric edge round it": "Edge to pin around them",
  Scrape: "Scrape depth",
  "Border height": "Edging height",
  "Yard sells stone by": "Order increment",
  "Smallest stone order": "Minimum stone order",
  "Border finish": "Edging finish",
  "Border piece": "Edging piece length",
  "Stakes at most apart": "Stake spacing, max",
  "Stakes that come with a piece": "Stakes included per piece",
  "Overlap of strips": "Strip overlap",
  "Lap at a roll's end": "End lap of rolls",
  "Strips run at": "Strip direction",
  "Pin rows at most apart": "Pin row spacing, max",
  "Pins in a box": "Pins per box",
  "Haul-off load": "Haul-off truck size",
  "Delivery load": "Delivery truck size",
  "People in the crew": "Crew size",
  "Barrow tray": "Wheelbarrow tray",
  "Barrow load limit": "Wheelbarrow load limit",
  "Barrow run, one way": "Wheelbarrow distance",
  "Smallest job charge": "Minimum charge",
  "Longest, along": "Along the strips",
  "Length, longest": "Along the strips",
  "Widest, across": "Across the strips",
  "Width, widest": "Across the strips",
  "Stone weighs": "Stone weight",
  "Border pieces": "Edging pieces",
  "Strips side by side": "Fabric strips",
  "Fabric lying in the bed": "Fabric laid",
  "Dig, in the ground": "Excavation, bank",
  "Barrow trips": "Wheelbarrow trips",
  "Barrow and spread": "Wheelbarrow and spread",
  Sums: "Totals",
  "Markup, on cost": "Markup on cost",
  "Margin, on price": "Margin on price",
  Counted: "Fabric and pins counted",
  // Units.
  "person-h": "labor hours",
  "per person-h": "per labor hour",
  // The cell beside it shows the percent sign.
  share: "",
  "h/cu yd": "hr/cu yd",
  "ft/h": "lin ft/hr",
  "sq ft/h": "sq ft/hr",
  "a job": "per job",
  "Clean-up": "Cleanup",
  "Edging, ft": "Edging, lin ft",
  // Notes.
  "0 to 4, all of the same radius": "0 to 4, all with the same radius",
  "share of the cost of the lines": "% of the cost of the lines",
  "Pieces, the cheaper of both with their stakes": "Pieces, the cheaper way with its stakes",
};

const today = new Map<unknown, string>(Object.entries(olderTexts));

/**
 * A text of a block as today's blocks have it; any other content as it is.
 *
 * @example currentText("Barrow and spread") // "Wheelbarrow and spread"
 */
export function currentText<Content>(text: Content): Content | string {
  return today.get(text) ?? text;
}
