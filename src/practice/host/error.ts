/** The host's own words for each of its error codes. */
const words = {
  AccessDenied: "You cannot perform the requested operation.",
  GeneralException: "There was an internal error while processing the request.",
  InvalidArgument: "The argument is invalid or missing or has an incorrect format.",
  InvalidObjectPath:
    'The object path isn\'t working for what you\'re trying to do. If you\'re using the object across multiple "context.sync" calls and outside the sequential execution of a ".run" batch, please use the "context.trackedObjects.add()" and "context.trackedObjects.remove()" methods to manage the object\'s lifetime.',
  InvalidOperationInCellEditMode:
    "Excel is in cell-editing mode. Please exit the edit mode by pressing ENTER or TAB or selecting another cell, and then try again.",
  InvalidRequestContext: "Cannot use the object across different request contexts.",
  InvalidSelection: "The current selection is invalid for this operation.",
  ItemAlreadyExists: "The resource being created already exists.",
  ItemNotFound: "The requested resource doesn't exist.",
  PropertyNotLoaded: "The property isn't available.",
  RunMustReturnPromise:
    'The batch function passed to the ".run" method didn\'t return a promise. The function must return a promise, so that any automatically-tracked objects can be released at the completion of the batch operation. Typically, you return a promise by returning the response from "context.sync()".',
  ValueNotLoaded:
    'The value of the result object has not been loaded yet. Before reading the value property, call "context.sync()" on the associated request context.',
} as const;

export type ErrorCode = keyof typeof words;

/** The error with which the host refuses something; `code` and `debugInfo.errorLocation` say what. */
export class HostError extends Error implements Omit<OfficeExtension.Error, "innerError" | "stack"> {
  readonly code: ErrorCode;
  readonly debugInfo: OfficeExtension.DebugInfo;
  readonly traceMessages: string[] = [];
  readonly innerError: OfficeExtension.Error | null = null;

  /**
   * @param errorLocation The member that was refused, such as `Range.values`; the host names none for some.
   * @param detail Words that say more than the host's own.
   * @param cause What the grid itself said.
   */
  constructor(code: ErrorCode, errorLocation?: string, detail?: string, cause?: unknown) {
    const message = detail ?? words[code];
    super(message, { cause });
    // The type package says "OfficeExtension.Error"; the client library names them so.
    this.name = "RichApi.Error";
    this.code = code;
    this.debugInfo = { code, message, ...(errorLocation !== undefined && { errorLocation }) };
  }
}

/** Raised where something is asked of an "or null" object that is not there. */
export class NullObjectError extends HostError {
  constructor() {
    super("ItemNotFound", "");
  }
}

/** The same error, told of the member in which it came up; anything else becomes an error of the host. */
export function atLocation(error: unknown, errorLocation: string): HostError {
  if (error instanceof HostError) {
    return error.debugInfo.errorLocation ? error : new HostError(error.code, errorLocation, error.message);
  }
  // What was found before a sheet was deleted is looked for again by the host, and not found.
  const code = (error as { readonly name?: string }).name === "SheetGone" ? "ItemNotFound" : "GeneralException";
  return new HostError(code, errorLocation, undefined, error);
}

/** For a reason that is found where the member is not known; the location is filled in at sync. */
export function refuse(code: ErrorCode, detail?: string): HostError {
  return new HostError(code, "", detail);
}
