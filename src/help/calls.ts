import * as functions from "../functions/index";

/** What a call puts into its cell where it works: a number, or a list of rows. */
export type Result = number | readonly (readonly (string | number)[])[];

/** What a call puts into its cell where it does not. */
export interface Refusal {
  readonly error: string;
  readonly message: string;
}

export type Answer = Result | Refusal;

class CellError {
  constructor(
    readonly code: string,
    readonly message = "",
  ) {}
}

const STAND_IN = { Error: CellError, ErrorCode: { invalidValue: "#VALUE!", notAvailable: "#N/A" } };

/** Calls a worksheet function as the host does, where there is no host: in the build. */
export function call(id: string, given: readonly unknown[]): Answer {
  const called = (functions as unknown as Readonly<Record<string, (...given: readonly unknown[]) => Answer>>)[id];
  if (!called) throw new Error(`${id} is no function of the entry file src/functions/index.ts.`);
  const before = Reflect.get(globalThis, "CustomFunctions");
  Reflect.set(globalThis, "CustomFunctions", STAND_IN);
  try {
    return called(...given);
  } catch (reason) {
    if (reason instanceof CellError) return { error: reason.code, message: reason.message };
    throw reason;
  } finally {
    Reflect.set(globalThis, "CustomFunctions", before);
  }
}

export const isError = (answer: Answer): answer is Refusal => typeof answer === "object" && "error" in answer;
