import type { AssociatedFunction } from "./metadata";

/**
 * Keeps what add-ins associate until the grid is up, and passes on what comes later. An add-in's script runs at once,
 * long before there is a grid.
 */
export class Associations {
  private readonly byId = new Map<string, AssociatedFunction>();
  private readonly listeners: ((id: string) => void)[] = [];

  add(id: string, call: AssociatedFunction): void {
    this.byId.set(id.toUpperCase(), call);
    for (const listener of this.listeners) listener(id.toUpperCase());
  }

  get(id: string): AssociatedFunction | undefined {
    return this.byId.get(id.toUpperCase());
  }

  /** Calls `listener` with the id of each function that is associated from now on. */
  onAdded(listener: (id: string) => void): void {
    this.listeners.push(listener);
  }
}
