/*
 * How much the practice workbook takes from a file: so much that an office's own workbooks go in with room to spare, and
 * so little that a file made to choke a program is turned away before it does. Tried by hand, not taken from anywhere.
 */
export const mostFileBytes = 25_000_000;
export const mostUnpackedBytes = 150_000_000;
export const mostParts = 2_000;
export const mostCells = 200_000;
export const mostSheets = 100;
export const mostPictures = 200;
