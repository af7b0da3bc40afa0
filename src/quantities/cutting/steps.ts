/** Thrown where the steps allowed are used up. It never leaves the solver. */
export class StepsSpent extends Error {}

/**
 * Work is counted in steps, not in time, so that the same list gives the same answer on every machine. A step
 * is about what it takes to try one piece in one place.
 */
export class Steps {
  taken = 0;

  constructor(private readonly allowed: number) {}

  spend(steps: number): void {
    this.taken += steps;
    if (this.taken > this.allowed) throw new StepsSpent();
  }
}
