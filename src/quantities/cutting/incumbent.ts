import { type Plan, stocksIn } from "./job";

/** How matters stand: the best plan so far, and what is proven. Kept up to date, so that work can stop anywhere. */
export class Incumbent {
  constructor(
    public plan: Plan,
    public atLeast: number,
  ) {}

  get stocks(): number {
    return stocksIn(this.plan);
  }

  /** Whether a better plan is still thinkable. */
  get isOpen(): boolean {
    return this.stocks > this.atLeast;
  }

  offer(plan: Plan): void {
    if (stocksIn(plan) < this.stocks) this.plan = plan;
  }

  prove(atLeast: number): void {
    this.atLeast = Math.max(this.atLeast, atLeast);
  }
}
