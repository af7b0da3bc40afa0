import type { OpenGrid } from "./library";
import type { KeptPort } from "./port";

/** Small named values in the workbook's own file, beside its sheets. */
export class GridKept implements KeptPort {
  constructor(
    private readonly grid: OpenGrid,
    private readonly changed: () => void,
  ) {}

  private all(): Record<string, unknown> {
    const { settings } = this.grid.workbook.getCustomMetadata() ?? {};
    return typeof settings === "object" && settings !== null ? (settings as Record<string, unknown>) : {};
  }

  get(key: string): unknown {
    return this.all()[key];
  }

  keys(): string[] {
    return Object.keys(this.all());
  }

  set(key: string, value: unknown): void {
    this.replace({ ...this.all(), [key]: JSON.parse(JSON.stringify(value)) });
  }

  remove(key: string): void {
    const { [key]: _gone, ...rest } = this.all();
    this.replace(rest);
  }

  private replace(settings: Record<string, unknown>): void {
    this.grid.workbook.setCustomMetadata({ ...this.grid.workbook.getCustomMetadata(), settings });
    this.changed();
  }
}
