/** Something the host would not do, in words: what happened, and what the person can do. */
export class WorkbookTrouble extends Error {
  constructor(message: string) {
    super(message);
    this.name = "WorkbookTrouble";
  }
}

const wordsByCode: Readonly<Record<string, string>> = {
  InvalidOperationInCellEditMode: "A cell is being edited. Press Enter or Esc in the sheet, then try again.",
  AccessDenied: "The sheet or workbook is protected. Lift the protection, or choose another sheet, then try again.",
  ItemNotFound: "The sheet that this was meant for is gone. Choose another place, then try again.",
  InvalidArgument: "The place does not fit on the sheet. Select a cell further up or left, then try again.",
  RequestAborted: "The spreadsheet program broke off the request. Try again.",
  GeneralException: "The spreadsheet program could not do this. Try again, or take another sheet.",
};

/** The host's error as {@link WorkbookTrouble}; a message of our own passes through. */
export function inWords(error: unknown): WorkbookTrouble {
  if (error instanceof WorkbookTrouble) return error;
  const { code, message } = error as { code?: string; message?: string };
  return new WorkbookTrouble(
    wordsByCode[code ?? ""] ?? `The spreadsheet program refused: ${message ?? String(error)} Nothing was changed.`,
  );
}

/** Runs a batch against the host, waiting while a cell is being edited, with the host's refusals put into words. */
export async function inWorkbook<T>(batch: (context: Excel.RequestContext) => Promise<T>): Promise<T> {
  try {
    return await Excel.run({ delayForCellEdit: true }, batch);
  } catch (error) {
    throw inWords(error);
  }
}
