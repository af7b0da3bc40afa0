/** How a cell looks that no one has dressed; the host names these where the grid keeps nothing. */
export const lookDefaults = { fill: "#FFFFFF", fontColor: "#000000", fontName: "Arial", fontSize: 11 } as const;
