/** The vocabularies of a workbook's parts: ECMA-376 part 1, annex A; [MS-XLSX] for the one of 2017. */
export const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
export const RELATIONSHIPS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
export const PACKAGE = "http://schemas.openxmlformats.org/package/2006";
export const DRAWING = "http://schemas.openxmlformats.org/drawingml/2006";
export const SPILLS = "http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray";
export const OFFICE_TYPES = "application/vnd.openxmlformats-officedocument";
/**
 * What add-ins keep with the workbook stands in a part of its own, so that it comes along. Spreadsheet programs leave
 * such a part alone and keep it.
 */
export const SETTINGS = "urn:practice-workbook:settings";
