import type { Page } from "./page";

/** The numbers of the one method and the two events that pass between the library and the spreadsheet program. */
export const EXECUTE_REQUEST = 93;
export const SELECTION_CHANGED = 2;
export const MESSAGE = 33;

/** The requirement sets the program says it has: those of the stand-in, and waiting while a cell is being edited. */
export const SETS: Readonly<Record<string, string>> = {
  ExcelApi: "1.14",
  SharedRuntime: "1.1",
  CustomFunctionsRuntime: "1.3",
  DelayForCellEdit: "1.1",
};

/** A request as the library sends it: its mark, method, path, headers, body, the kind of its sender, and flags. */
export type RequestArray = readonly [string, string, string, readonly string[], string, number, number, ...unknown[]];
/** An answer as the library takes it: HTTP status, headers, body. */
export type AnswerArray = readonly [number, readonly string[], string];

/** The spreadsheet program behind a page, whichever way the page reaches it. */
export interface Program {
  answer(request: RequestArray): Promise<AnswerArray>;
  /** The page starts to listen to an event, or stops. */
  listen(eventId: number, isListening: boolean): void;
}

/** A message of the program to the library: its category, its type, whom it is for, and what it says. */
export type ProgramMessage = readonly [category: number, type: number, target: string, text: string];

/** A page with the library in it, and the program's way to tell it something. */
export interface Connection {
  readonly page: Page;
  selectionChanged(): void;
  send(messages: readonly ProgramMessage[]): void;
}
