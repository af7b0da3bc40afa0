import { type ErrorMessage, messageByCode, TRY_AGAIN } from "./errorMessages";

/** Something that the host would not do, as a message: what happened, and what the person can do. */
export class WorkbookFailure extends Error {
  constructor(message: string, options?: ErrorOptions) {
    super(message, options);
    this.name = "WorkbookFailure";
  }
}

export const NOTHING_CHANGED = "Nothing was changed.";

/** The members that find cells: an argument that the host refuses there is beyond the sheet's last cell. */
const FINDS_CELLS = /\.(getCell|getResizedRange|getOffsetRange|getRangeByIndexes|getColumn|getRow)$/;

/** The host's code of an error; "" where it has none. */
export function codeOf(error: unknown): string {
  return (error as { readonly code?: string }).code ?? "";
}

/** Whether an error of the host has no message here: a retry may get past it. */
export function isUnknown(error: unknown): boolean {
  return codeOf(error) !== "" && !(codeOf(error) in messageByCode);
}

/**
 * The host's error as {@link WorkbookFailure}; one of our own passes through.
 *
 * @param sure what is known of the workbook by now, to be said between what happened and what to do.
 */
export function asFailure(error: unknown, sure = ""): WorkbookFailure {
  if (error instanceof WorkbookFailure) return error;
  const { what, todo } = messageOf(error);
  return new WorkbookFailure([what, sure, todo].filter(Boolean).join(" "), { cause: error });
}

/** What happened, without what to do. */
export function whatHappened(error: unknown): string {
  return error instanceof WorkbookFailure ? error.message : messageOf(error).what;
}

/** The host's own message of an unknown error is for programmers; it stays the cause. */
const REFUSED: ErrorMessage = { what: "The spreadsheet program refused to do this.", todo: TRY_AGAIN };
const FAILED: ErrorMessage = { what: "The add-in couldn't do this.", todo: TRY_AGAIN };

const NO_ROOM: ErrorMessage = {
  what: "It doesn't fit on the sheet.",
  todo: "Select a cell farther up or left, then try again.",
};

function messageOf(error: unknown): ErrorMessage {
  const { debugInfo } = error as { debugInfo?: { readonly errorLocation?: string } };
  if (codeOf(error) === "InvalidArgument" && FINDS_CELLS.test(debugInfo?.errorLocation ?? "")) return NO_ROOM;
  return messageByCode[codeOf(error)] ?? (codeOf(error) || debugInfo ? REFUSED : FAILED);
}

/**
 * Runs a batch against the host, waiting while a cell is being edited.
 *
 * @throws WorkbookFailure that says that nothing was changed: a change says by itself what became of it.
 */
export async function inWorkbook<T>(batch: (context: Excel.RequestContext) => Promise<T>): Promise<T> {
  try {
    return await withLongWaitNotice(() => Excel.run({ delayForCellEdit: true }, batch));
  } catch (error) {
    throw asFailure(error, NOTHING_CHANGED);
  }
}

/** Many times longer than a request takes where the host answers at once. */
const LONG_MS = 2500;

const listeners = new Set<() => void>();

/**
 * Tells when the host takes long to answer, as while a cell is open for typing.
 *
 * @returns stops it.
 */
export function onLongWait(tell: () => void): () => void {
  listeners.add(tell);
  return () => void listeners.delete(tell);
}

/** Runs work with the host, and tells the listeners where it takes long. */
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
