/**
 * The host's `CustomFunctions` global, as little of it as the functions use: its error, the codes, and
 * `associate`, which collects what was announced.
 */
export interface FakeCustomFunctions {
  readonly Error: new (code: string, message?: string) => { readonly code: string; readonly message: string };
  readonly ErrorCode: Readonly<Record<"invalidValue" | "notAvailable" | "divisionByZero", string>>;
  associate(id: string, called: (...given: never[]) => unknown): void;
  /** What was announced, by id. */
  readonly associated: Map<string, (...given: never[]) => unknown>;
}

/** What a function throws into a cell. The host's own class is no `Error` of the language either. */
export class FakeCellError {
  constructor(
    readonly code: string,
    readonly message = "",
  ) {}
}

/** A fresh stand-in for the global. */
export function fakeCustomFunctions(): FakeCustomFunctions {
  const associated: FakeCustomFunctions["associated"] = new Map();
  return {
    Error: FakeCellError,
    // The codes of the host, from its type package (@types/custom-functions-runtime).
    ErrorCode: { invalidValue: "#VALUE!", notAvailable: "#N/A", divisionByZero: "#DIV/0!" },
    associate: (id, called) => {
      associated.set(id, called);
    },
    associated,
  };
}

/** Puts a fresh stand-in where the functions look for the host's global, and gives it back. */
export function standInForCustomFunctions(): FakeCustomFunctions {
  const fake = fakeCustomFunctions();
  Object.assign(globalThis, { CustomFunctions: fake });
  return fake;
}

/**
 * The error that a call puts into its cell.
 *
 * @throws where the call gives a value, or throws anything but a cell error.
 */
export function cellErrorOf(call: () => unknown): FakeCellError {
  let given: unknown;
  try {
    given = call();
  } catch (reason) {
    if (reason instanceof FakeCellError) return reason;
    throw reason;
  }
  throw new Error(`expected a cell error, got ${String(given)}`);
}
