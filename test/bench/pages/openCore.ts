import { openBareGrid } from "./bareGrid";
import * as packages from "./core/gridPackages";

/** The grid's core package alone: what would be left if pictures, color rules and lists were fetched later. */
openBareGrid(packages, [], []);
