/** The host's error codes for worksheet functions; the code is what the cell shows. */
export const errorCodes = {
  invalidValue: "#VALUE!",
  notAvailable: "#N/A",
  divisionByZero: "#DIV/0!",
  invalidNumber: "#NUM!",
  nullReference: "#NULL!",
  invalidName: "#NAME?",
  invalidReference: "#REF!",
} as const satisfies { [code in keyof typeof CustomFunctions.ErrorCode]: string };

/** What a worksheet function throws to show an error, with its reason, in the cell. */
export class CustomFunctionError extends Error {
  /**
   * @param code One of the host's error codes.
   * @param message The reason; the host shows it for #VALUE! and #N/A only.
   */
  constructor(
    readonly code: string,
    message?: string,
  ) {
    super(message);
    this.name = "CustomFunctions.Error";
  }

  /** The reason as the host shows it: it has room for one with #VALUE! and #N/A only. */
  get shownMessage(): string | undefined {
    const hasRoom = this.code === errorCodes.invalidValue || this.code === errorCodes.notAvailable;
    return hasRoom && this.message !== "" ? this.message : undefined;
  }
}
