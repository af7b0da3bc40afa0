import * as packages from "../../../src/practice/browser/gridPackages";
import { openBareGrid } from "./bareGrid";

/** The grid with all the packages that the practice page uses. */
openBareGrid(
  packages,
  [
    packages.drawing.UniverSheetsDrawingPreset(),
    packages.UniverSheetsConditionalFormattingPreset(),
    packages.UniverSheetsDataValidationPreset(),
  ],
  [packages.drawingLocale, packages.conditionalFormattingLocale, packages.dataValidationLocale],
);
