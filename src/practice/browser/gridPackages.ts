/*
 * Everything of the grid that runs on the practice page. The build bundles this file by itself, so no other file may
 * import these packages except for types: a second copy would have its own classes.
 */
export * as core from "@univerjs/core";
export { FUniver } from "@univerjs/core/lib/facade";
export { UniverSheetsConditionalFormattingPreset } from "@univerjs/preset-sheets-conditional-formatting";
export { default as conditionalFormattingLocale } from "@univerjs/preset-sheets-conditional-formatting/locales/en-US";
export * as sheets from "@univerjs/preset-sheets-core";
export { default as sheetsLocale } from "@univerjs/preset-sheets-core/locales/en-US";
export { UniverSheetsDataValidationPreset } from "@univerjs/preset-sheets-data-validation";
export { default as dataValidationLocale } from "@univerjs/preset-sheets-data-validation/locales/en-US";
export * as drawing from "@univerjs/preset-sheets-drawing";
export { default as drawingLocale } from "@univerjs/preset-sheets-drawing/locales/en-US";
