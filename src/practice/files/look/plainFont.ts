/** What a cell of a file is set in where nobody chose a font. The grid then takes its own. */
export const plainFont = { name: "Calibri", size: 11 } as const;
