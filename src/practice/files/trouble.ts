/** Why a file cannot be opened or made, in words for the person. */
export class FileTrouble extends Error {
  override readonly name = "FileTrouble";
}

/** What is said of a file that does not hold together. @param cause what failed while it was read. */
export const damaged = (what: string, cause?: unknown): FileTrouble =>
  new FileTrouble(`The file is damaged: ${what}. Nothing was opened; ask for the file once more, or save it anew.`, {
    cause,
  });
