/** Something whose work grows: what it is made of, how many at 1×, and a way to make so many ready. */
export interface Growing {
  readonly what: string;
  readonly of: string;
  readonly least: number;
  /**
   * Nothing is promised of its growth. Cutting the border of a whole job gets harder with every other length, as such
   * puzzles do, until its limit of steps.
   */
  readonly isPuzzle?: true;
  /** Gives the work itself, so that what only prepares it is not measured. */
  readonly ready: (size: number) => Work | Promise<Work>;
}

export type Work = () => unknown;

/** A list of beds as offices keep it: seven columns, the last three worked out. */
export const jobHeadings = ["Bed", "Length (ft)", "Width (ft)", "Depth (in)", "Area (sq ft)", "Stone (tons)", "Cost"];

/** A row of such a list, which is on the sheet's row `place + 2`. */
export function jobRow(place: number): (string | number)[] {
  const r = place + 2;
  const [length, width] = [20 + (place % 30), 4 + (place % 3)];
  return [
    `Bed ${place + 1}`,
    length,
    width,
    2.5,
    `=B${r}*C${r}`,
    `=BED.STONE_TONS(E${r},D${r},"river rock")`,
    `=F${r}*62`,
  ];
}

export const jobRows = (rows: number) => [jobHeadings, ...Array.from({ length: rows }, (_, place) => jobRow(place))];
