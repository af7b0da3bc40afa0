/**
 * A value that the code around it knows to be there, such as a place within a list. Where it isn't, this stops, so that
 * nothing goes on with "undefined".
 *
 * @throws {Error} where it isn't there: a mistake of this program.
 * @example must([4, 5][1]) // 5
 */
export function must<T>(value: T | undefined): T {
  if (value === undefined) throw new Error("A required value is missing.");
  return value;
}
