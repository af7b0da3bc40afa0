/**
 * Something the user gave that cannot be worked with, in words for the user.
 *
 * Every rule in this project that refuses a value throws a Problem, with a message from the catalogue in
 * `messages.ts`: which value, what arrived, what to give instead. The rooms above turn it into what their
 * place shows: a cell error with a message, or a line under a field of the pane.
 */
export class Problem extends Error {
  /**
   * @param kind "value" for a value that cannot be used; "name" for a name that is in no table.
   * @param message the whole message, from the catalogue.
   * @param argument the argument's name, so that a pane can put the message at its field.
   */
  constructor(
    readonly kind: "value" | "name",
    message: string,
    readonly argument?: string,
  ) {
    super(message);
    this.name = "Problem";
  }
}
