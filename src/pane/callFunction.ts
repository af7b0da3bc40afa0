import type { CallFunction } from "../review/book";

type WorksheetFunction = (...given: unknown[]) => unknown;

/** The worksheet functions as functions.js leaves them for this page, by their names without the namespace. */
declare const BedrowFunctions: Readonly<Record<string, WorksheetFunction>> | undefined;

/** Calls a worksheet function once more, as the cell did; an error comes back with its message. */
export const callFunction: CallFunction = (name, given) => {
  const called = typeof BedrowFunctions === "undefined" ? undefined : BedrowFunctions[name.replace(/^.*\./, "")];
  if (!called) return undefined;
  try {
    return called(...given) as ReturnType<CallFunction>;
  } catch (reason) {
    const { code, message } = reason as { readonly code?: string; readonly message?: string };
    return { error: code ?? "#VALUE!", ...(message && { message }) };
  }
};
