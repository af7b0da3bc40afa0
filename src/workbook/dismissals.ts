import type { Dismissal } from "../review/dismissals";
import { inWorkbook } from "./trouble";

const KEY = "Bedrow.dismissals";

/** Findings that were dismissed in this workbook, with their reasons. One sync. */
export async function readDismissals(): Promise<Dismissal[]> {
  return inWorkbook(async (context) => {
    const setting = context.workbook.settings.getItemOrNullObject(KEY);
    setting.load("value");
    await context.sync();
    try {
      const dismissals: unknown = JSON.parse(setting.isNullObject ? "[]" : String(setting.value));
      return Array.isArray(dismissals) ? dismissals.filter(isDismissal) : [];
    } catch {
      // A record that cannot be read dismisses nothing: the findings show again.
      return [];
    }
  });
}

/** Keeps the dismissals with the workbook. */
export async function writeDismissals(dismissals: readonly Dismissal[]): Promise<void> {
  return inWorkbook(async (context) => {
    context.workbook.settings.add(KEY, JSON.stringify(dismissals));
    await context.sync();
  });
}

function isDismissal(value: unknown): value is Dismissal {
  const { key, reason, title, where, on } = (value ?? {}) as Record<string, unknown>;
  return [key, reason, title, where, on].every((text) => typeof text === "string");
}
