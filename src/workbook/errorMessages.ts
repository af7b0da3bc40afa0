/** What a refusal of the host means, and what the person can do. */
export interface ErrorMessage {
  readonly what: string;
  readonly todo: string;
}

export const TRY_AGAIN = "Try again. If it happens again, save the workbook, close it, and open it again.";
const TOO_MUCH: ErrorMessage = {
  what: "That's more than the spreadsheet program can take at once.",
  todo: "Select fewer cells, then try again.",
};
const STANDS_IN_THE_WAY: ErrorMessage = {
  what: "Merged or filtered cells, or a pivot table, are in the way.",
  todo: "Choose another place, then try again.",
};
const NOT_IN_THIS_VERSION: ErrorMessage = {
  what: "This version of the spreadsheet program can't do that.",
  todo: "Update the program, then try again.",
};
const LINKS_BLOCKED: ErrorMessage = {
  what: "The spreadsheet program blocks links to other workbooks here.",
  todo: "Allow the links in this workbook, then try again.",
};
const ADD_IN_ERROR: ErrorMessage = { what: "The add-in made a mistake.", todo: TRY_AGAIN };

/**
 * By the host's codes: `Excel.ErrorCodes` and `OfficeExtension.ErrorCodes` of its client library and its type package.
 * test/contracts/error-words.test.ts fails on a code of theirs that is missing here.
 */
export const messageByCode: Readonly<Record<string, ErrorMessage>> = {
  InvalidOperationInCellEditMode: {
    what: "A cell is being edited.",
    todo: "Press Enter or Esc on the sheet, then try again.",
  },
  AccessDenied: {
    what: "The sheet or the workbook is protected.",
    todo: "Unprotect it, or choose another sheet, then try again.",
  },
  ItemNotFound: {
    what: "The sheet this was for is gone or was renamed.",
    todo: "Check the workbook, then try again.",
  },
  ItemAlreadyExists: {
    what: "A name it needs is now used for something else.",
    todo: "Check what's there, then try again.",
  },
  InvalidArgument: {
    what: "The spreadsheet program refused part of what was to be written.",
    todo: "Try again, or choose another place.",
  },
  InvalidSelection: {
    what: "The selection isn't one cell or one block of cells.",
    todo: "Select one cell, then try again.",
  },
  InactiveWorkbook: { what: "Another workbook is in front.", todo: "Bring this one to the front, then try again." },
  RequestAborted: { what: "The spreadsheet program stopped the request.", todo: "Try again." },
  GeneralException: { what: "The spreadsheet program couldn't do this.", todo: TRY_AGAIN },
  OperationCellsExceedLimit: TOO_MUCH,
  RangeExceedsLimit: TOO_MUCH,
  RangeImageExceedsLimit: TOO_MUCH,
  RequestPayloadSizeLimitExceeded: TOO_MUCH,
  ResponsePayloadSizeLimitExceeded: TOO_MUCH,
  FilteredRangeConflict: STANDS_IN_THE_WAY,
  MergedRangeConflict: STANDS_IN_THE_WAY,
  PivotTableRangeConflict: STANDS_IN_THE_WAY,

  ActivityLimitReached: {
    what: "The spreadsheet program is getting too many requests.",
    todo: "Wait a minute, then try again.",
  },
  Conflict: { what: "Someone else changed the workbook at the same time.", todo: "Check the sheet, then try again." },
  ConnectionFailure: {
    what: "The connection to the spreadsheet program dropped.",
    todo: "Check your internet connection, then try again.",
  },
  InvalidOrTimedOutSession: {
    what: "Your session with the spreadsheet program has expired.",
    todo: "Refresh the page, or close the workbook and open it again.",
  },
  Timeout: { what: "The spreadsheet program took too long to answer.", todo: TRY_AGAIN },
  WriteNotSupportedWhenModalDialogOpen: {
    what: "A dialog box is open in the spreadsheet program.",
    todo: "Close it, then try again.",
  },

  InsertDeleteConflict: {
    what: "Cells can't be added or removed there.",
    todo: "Choose another place, then try again.",
  },
  NonBlankCellOffSheet: {
    what: "There isn't enough room: cells with contents would be pushed off the sheet.",
    todo: "Clear the last rows or columns of the sheet, then try again.",
  },
  InvalidReference: {
    what: "A formula refers to cells that don't exist.",
    todo: "Check that no sheet or name was removed, then try again.",
  },
  FormulaLengthExceedsLimit: {
    what: "A formula is too long for the spreadsheet program.",
    todo: "Shorten the sheet name or the texts in it, then try again.",
  },
  DirtySupportingFormula: {
    what: "Some formulas haven't been calculated yet.",
    todo: "Recalculate the workbook with F9, then try again.",
  },
  EmptyChartSeries: { what: "A chart has no data.", todo: "Check the cells that it uses, then try again." },
  InvalidBinding: {
    what: "The cells that this was linked to have been removed.",
    todo: "Select a cell, then try again.",
  },
  InvalidOperation: {
    what: "The spreadsheet program doesn't allow that here.",
    todo: "Choose another cell or sheet, then try again.",
  },
  UnsupportedOperation: {
    what: "The spreadsheet program doesn't support that here.",
    todo: "Choose another cell or sheet, then try again.",
  },
  UnsupportedSheet: {
    what: "This kind of sheet can't be used; it may be a chart or macro sheet.",
    todo: "Choose a worksheet, then try again.",
  },
  UnsupportedFillType: {
    what: "A cell has a pattern or gradient fill that the add-in can't read.",
    todo: "Give the cell a solid fill, then try again.",
  },
  OpenWorkbookLinksBlocked: LINKS_BLOCKED,
  RefreshWorkbookLinksBlocked: LINKS_BLOCKED,
  PowerQueryRefreshResourceChallenge: {
    what: "A data connection in the workbook asks you to sign in.",
    todo: "Refresh the connection in the Data tab, then try again.",
  },
  ApiNotFound: NOT_IN_THIS_VERSION,
  NotImplemented: NOT_IN_THIS_VERSION,
  UnsupportedFeature: NOT_IN_THIS_VERSION,

  CannotRegisterEvent: {
    what: "The add-in can't follow changes in the workbook.",
    todo: "Close the pane and open it again.",
  },
  CannotUpdateReadOnlyProperty: ADD_IN_ERROR,
  InvalidObjectPath: ADD_IN_ERROR,
  InvalidRequestContext: ADD_IN_ERROR,
  PropertyNotLoaded: ADD_IN_ERROR,
  RunMustReturnPromise: ADD_IN_ERROR,
  ValueNotLoaded: ADD_IN_ERROR,
};
