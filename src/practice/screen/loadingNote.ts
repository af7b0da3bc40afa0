import { element } from "./element";

/** What the page says while the grid is on its way, and where it does not arrive. */
export class LoadingNote {
  /** Says what is being done just now. */
  step(words: string): void {
    element("practice-step").textContent = words;
  }

  done(): void {
    element("practice-loading").hidden = true;
  }

  fail(error: unknown): void {
    const reason = error instanceof Error ? error.message : String(error);
    const title = element("practice-loading").querySelector("strong");
    if (title) title.textContent = "The practice workbook did not come up.";
    this.step(`${reason} Reload the page to try again; if that does not help, use “Start afresh…” above.`);
    element("practice-progress").hidden = true;
  }
}
