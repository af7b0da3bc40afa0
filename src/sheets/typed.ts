const PLAIN_NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;
const PLAIN_SHARE = /^(\d+\.?\d*|\.\d+)\s*%$/;

/**
 * What to write into a cell so that it holds what a person typed, and nothing else: a plain number or share
 * as a number, anything else as text with the host's text mark, so that `1/2` does not turn into a date and
 * `=cmd` does not turn into a formula. `typed("6-8")` gives `'6-8`; `typed("8%")` gives 0.08.
 */
export function typed(text: string): string | number {
  const trimmed = text.trim();
  if (trimmed === "") return "";
  if (PLAIN_NUMBER.test(trimmed) && Number.isFinite(Number(trimmed))) return Number(trimmed);
  if (PLAIN_SHARE.test(trimmed)) return Number.parseFloat(trimmed) / 100;
  return `'${trimmed}`;
}

/** Text inside a formula: quoted, with its quotes doubled. */
export function quoted(text: string): string {
  return `"${text.replaceAll('"', '""')}"`;
}
