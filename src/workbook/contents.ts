/** What the host gives for a cell. */
type Content = string | number | boolean;

interface ReadCells {
  readonly formulas: unknown[][];
  readonly values: unknown[][];
}

/**
 * What stands in cells that were read, a formula with its "=". The host leaves the text mark out of what it gives, so
 * that text such as =cmd would be taken for a formula, and become one where it is written again: it gets its mark back.
 *
 * @param range with its formulas and values loaded.
 * @example contentsOf({ formulas: [["=A1*2", "=cmd"]], values: [[8, "=cmd"]] }) // [["=A1*2", "'=cmd"]]
 */
export function contentsOf({ formulas, values }: ReadCells): Content[][] {
  return formulas.map((cells, row) =>
    cells.map((content, column) => {
      // No formula shows itself.
      const isText = typeof content === "string" && MARKED.test(content) && values[row]?.[column] === content;
      return isText ? `'${content}` : (content as Content);
    }),
  );
}

/** Text that begins like a formula, whether or not marks are part of it. */
const MARKED = /^'*=/;

/** Whether what was read is text that has its mark. */
export const isMarked = (content: unknown): boolean => typeof content === "string" && /^'+=/.test(content);
