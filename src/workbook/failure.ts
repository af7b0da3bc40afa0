import { type ErrorMessage, messageByCode, TRY_AGAIN } from "./errorMessages";

/** Something the host would not do, in words: what happened, and what the person can do. */
export class WorkbookFailure extends Error {
  constructor(message: string, options?: ErrorOptions) {
    super(message, options);
    this.name = "WorkbookFailure";
  }
}

export const NOTHING_CHANGED = "Nothing was changed.";

const NO_ROOM: ErrorMessage = {
  what: "The place does not fit on the sheet.",
  todo: "Select a cell further up or left, then try again.",
};

/** The members that find cells: an argument that the host does not take there lies beyond the sheet's last cell. */
const FINDS_CELLS = /\.(getCell|getResizedRange|getOffsetRange|getRangeByIndexes|getColumn|getRow)$/;

/** The host's code of an error; "" where it has none. */
export function codeOf(error: unknown): string {
  return (error as { readonly code?: string }).code ?? "";
}

/** Whether an error is one of the host's that has no words here: nobody can say that it will not pass. */
export function isUnknown(error: unknown): boolean {
  return codeOf(error) !== "" && !(codeOf(error) in messageByCode);
}

/**
 * The host's error as {@link WorkbookFailure}; a message of our own passes through.
 *
 * @param sure what is known of the workbook by now, to be said between what happened and what to do.
 */
export function asFailure(error: unknown, sure = ""): WorkbookFailure {
  if (error instanceof WorkbookFailure) return error;
  const { what, todo } = wordsOf(error);
  return new WorkbookFailure([what, sure, todo].filter(Boolean).join(" "), { cause: error });
}

/** What happened, without what to do. */
export function whatHappened(error: unknown): string {
  return error instanceof WorkbookFailure ? error.message : wordsOf(error).what;
}

/** Of an error that is not known here its own words are for programmers; they stay its cause. */
const REFUSED: ErrorMessage = { what: "The spreadsheet program refused to do this.", todo: TRY_AGAIN };
const FAILED: ErrorMessage = { what: "The add-in could not do this.", todo: TRY_AGAIN };

function wordsOf(error: unknown): ErrorMessage {
  const { debugInfo } = error as { debugInfo?: { readonly errorLocation?: string } };
  if (codeOf(error) === "InvalidArgument" && FINDS_CELLS.test(debugInfo?.errorLocation ?? "")) return NO_ROOM;
  return messageByCode[codeOf(error)] ?? (codeOf(error) || debugInfo ? REFUSED : FAILED);
}

/**
 * Runs a batch against the host, waiting while a cell is being edited, with the host's refusals put into words. What
 * fails once something was changed is put into words by itself: here, nothing was.
 */
export async function inWorkbook<T>(batch: (context: Excel.RequestContext) => Promise<T>): Promise<T> {
  try {
    return await withLongWaitNotice(() => Excel.run({ delayForCellEdit: true }, batch));
  } catch (error) {
    throw asFailure(error, NOTHING_CHANGED);
  }
}

/** So long a request takes where the host does what it is asked at once, and many times over. */
const LONG_MS = 2500;

const listeners = new Set<() => void>();

/**
 * Tells when the host takes long to answer, as while a cell is open for typing.
 *
 * @returns a function that ends it.
 */
export function onLongWait(tell: () => void): () => void {
  listeners.add(tell);
  return () => void listeners.delete(tell);
}

/** Does something with the host, and has the listeners told where it takes long. */
export async function withLongWaitNotice<T>(work: () => Promise<T>): Promise<T> {
  const late = setTimeout(() => {
    for (const tell of listeners) tell();
  }, LONG_MS);
  try {
    return await work();
  } finally {
    clearTimeout(late);
  }
}
