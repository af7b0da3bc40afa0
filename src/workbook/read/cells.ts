/** What the host gives for a cell. */
type Content = string | number | boolean;

interface ReadCells {
  readonly formulas: unknown[][];
  readonly values: unknown[][];
  /** Tells text that reads as an error from one; left out where that does not matter. */
  readonly valueTypes?: unknown[][];
}

/**
 * The contents of cells that were read, a formula with its "=". The host leaves the text mark out of what it gives, so
 * that text such as =cmd would be taken for a formula, and #N/A for an error, and become one where it is written again:
 * such text gets its mark back.
 *
 * @param range with its formulas and values loaded.
 * @example contentsOf({ formulas: [["=A1*2", "=cmd"]], values: [[8, "=cmd"]] }) // [["=A1*2", "'=cmd"]]
 */
export function contentsOf({ formulas, values, valueTypes }: ReadCells): Content[][] {
  return formulas.map((cells, row) =>
    cells.map((content, column) => {
      const isText = () =>
        BEGINS_FORMULA.test(String(content))
          ? // No formula shows itself.
            values[row]?.[column] === content
          : READS_AS_ERROR.test(String(content)) && valueTypes?.[row]?.[column] === "String";
      return typeof content === "string" && isText() ? `'${content}` : (content as Content);
    }),
  );
}

/** The contents of cells that were read, to be written into them again. */
export function contentsAsWritten(range: ReadCells): Content[][] {
  return contentsOf(range).map((cells) => cells.map(asWritten));
}

/** What was read from a cell, to be written as it was: text that would turn into something else keeps its mark. */
export function asWritten(value: Content): Content {
  if (isMarked(value) || isErrorLike(value)) return value;
  const turns = typeof value === "string" && !value.startsWith("=") && /\d|^[+\-@']|^\s*(true|false)\s*$/i.test(value);
  return turns ? `'${value}` : value;
}

/** Text that begins like a formula, whether or not marks are part of it. */
const BEGINS_FORMULA = /^'*=/;

/** The host's errors, such as #N/A, #DIV/0! and #NAME?, whether or not marks come before. */
const READS_AS_ERROR = /^'*#(?:N\/A|GETTING_DATA|[A-Z\d/_]+[!?])$/i;

/** Whether what was read is text that has its mark. */
export const isMarked = (content: unknown): boolean =>
  typeof content === "string" && content.startsWith("'") && (BEGINS_FORMULA.test(content) || isErrorLike(content));

/** Whether what was read is an error, or would be without its mark. */
const isErrorLike = (content: unknown): boolean => typeof content === "string" && READS_AS_ERROR.test(content);

/** Whether most contents of a place are gone: typing over one cell is no move. */
export function areOthers(before: readonly (readonly unknown[])[], now: readonly (readonly unknown[])[]): boolean {
  const stays = before.flatMap((cells, row) =>
    cells.flatMap((cell, column) => (cell === "" ? [] : [now[row]?.[column] === cell])),
  );
  return stays.filter((one) => one).length * 2 < stays.length;
}

/** Whether no cell of a place holds anything. */
export function areBlank(formulas: readonly (readonly unknown[])[]): boolean {
  return formulas.every((cells) => cells.every((cell) => cell === ""));
}
