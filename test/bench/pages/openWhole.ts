import { UniverSheetsConditionalFormattingPreset } from "@univerjs/preset-sheets-conditional-formatting";
import shadingWords from "@univerjs/preset-sheets-conditional-formatting/locales/en-US";
import { UniverSheetsDataValidationPreset } from "@univerjs/preset-sheets-data-validation";
import listWords from "@univerjs/preset-sheets-data-validation/locales/en-US";
import { UniverSheetsDrawingPreset } from "@univerjs/preset-sheets-drawing";
import drawingWords from "@univerjs/preset-sheets-drawing/locales/en-US";
import { openBareGrid } from "./bareGrid";

/** The grid with all the packages that the practice page uses. */
openBareGrid(
  [UniverSheetsDrawingPreset(), UniverSheetsConditionalFormattingPreset(), UniverSheetsDataValidationPreset()],
  [drawingWords, shadingWords, listWords],
);
