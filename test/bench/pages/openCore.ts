import { openBareGrid } from "./bareGrid";

/** The grid's core package alone: what would be left if pictures, colour rules and lists were fetched later. */
openBareGrid([], []);
