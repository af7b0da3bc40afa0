import { distance, type Point } from "./plane";

/** Why a pin stands where it does; "row" is the dice-five pattern between the others. */
export type PinKind = "corner" | "edge" | "cutOut" | "seam" | "row";

export interface Pin extends Point {
  readonly kind: PinKind;
}

/** Two pins nearer than this are one, in feet: the same place, worked out in two ways. */
const SAME_PIN_FT = 1e-5;

/** More than there are cells across any bed, so that no two cells share a number. */
const CELLS_ACROSS = 2 ** 24;

/** The pins placed so far, found quickly by place. */
export class PinBoard {
  readonly pins: Pin[] = [];
  private readonly cells = new Map<number, Pin[]>();

  /** @param nearFt how near pins are asked about, at most. */
  constructor(private readonly nearFt: number) {}

  /** Places a pin, unless one stands right there. */
  add({ x, y }: Point, kind: PinKind): void {
    if (this.hasNear({ x, y }, SAME_PIN_FT)) return;
    const pin = { x, y, kind };
    this.pins.push(pin);
    const key = this.key(this.cellOf(x), this.cellOf(y));
    const cell = this.cells.get(key);
    if (cell) cell.push(pin);
    else this.cells.set(key, [pin]);
  }

  /** Whether a pin stands nearer than this. */
  hasNear(point: Point, withinFt = this.nearFt): boolean {
    const [column, row] = [this.cellOf(point.x), this.cellOf(point.y)];
    for (let i = column - 1; i <= column + 1; i++)
      for (let j = row - 1; j <= row + 1; j++)
        if (this.cells.get(this.key(i, j))?.some((pin) => distance(pin, point) < withinFt)) return true;
    return false;
  }

  private cellOf(value: number): number {
    return Math.floor(value / Math.max(this.nearFt, SAME_PIN_FT));
  }

  private key(column: number, row: number): number {
    return column * CELLS_ACROSS + row;
  }
}
