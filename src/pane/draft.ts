import { type BedForm, blankForm, ways } from "../quantities/bed/form";

/** The half-typed form outlives a closed pane, in the browser's own storage. */
const KEY = "Bedrow.form.3";

export function loadDraft(): BedForm {
  try {
    const draft: unknown = JSON.parse(localStorage.getItem(KEY) ?? "null");
    return isForm(draft) ? draft : blankForm();
  } catch {
    // Storage that is off, or text that is no draft: a blank form serves.
    return blankForm();
  }
}

export function saveDraft(form: BedForm): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(form));
  } catch {
    // A draft that cannot be kept costs retyping at most; the workbook holds what was inserted.
  }
}

function isForm(value: unknown): value is BedForm {
  if (typeof value !== "object" || value === null) return false;
  const { name, way, typed, widths, points, cutOuts } = value as Partial<Record<keyof BedForm, unknown>>;
  return (
    typeof name === "string" &&
    typeof way === "string" &&
    way in ways &&
    typeof typed === "object" &&
    typed !== null &&
    Object.values(typed).every(isText) &&
    Array.isArray(widths) &&
    widths.every(isText) &&
    Array.isArray(points) &&
    points.every((point) => isTexts(point, 3)) &&
    Array.isArray(cutOuts) &&
    cutOuts.every((cutOut) => isTexts(cutOut, 4))
  );
}

function isTexts(value: unknown, length: number): boolean {
  return Array.isArray(value) && value.length === length && value.every(isText);
}

function isText(value: unknown): value is string {
  return typeof value === "string";
}
