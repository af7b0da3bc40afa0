/** A source of chance that gives the same for the same seed: mulberry32, public domain, by T. Ettinger (from memory). */
export class Chance {
  constructor(private state: number) {}

  /** From 0 up to, but not including, 1. */
  share(): number {
    this.state = (this.state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(this.state ^ (this.state >>> 15), 1 | this.state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  }

  /** A whole number from least to most. */
  whole(least: number, most: number): number {
    return least + Math.floor(this.share() * (most - least + 1));
  }

  oneOf<Value>(values: readonly Value[]): Value {
    return values[Math.floor(this.share() * values.length)]!;
  }

  /** True once in so many times. */
  onceIn(times: number): boolean {
    return this.share() * times < 1;
  }

  list<Value>(least: number, most: number, make: () => Value): Value[] {
    return Array.from({ length: this.whole(least, most) }, make);
  }
}
