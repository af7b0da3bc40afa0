/** What is promised of a measure, and what was measured. */
export interface Claim {
  readonly what: string;
  readonly measured: number;
  readonly most: number;
  /** "times", "ms", "kB", "requests" and so on; "" for an exponent. */
  readonly unit: string;
  /** Against what, and in which way. */
  readonly how: string;
}

/** A table as it is printed. */
export interface Table {
  readonly title: string;
  readonly rows: readonly Readonly<Record<string, string | number>>[];
  /** What of it is promised. */
  readonly claims?: readonly Claim[];
}

/** The middle one of the values. */
export const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)]!;

/** To three digits, for print. */
export const short = (value: number): number => Number(value.toPrecision(3));
