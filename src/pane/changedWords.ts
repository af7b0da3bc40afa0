import { type FieldKey, fields } from "../quantities/bed/fields";
import { type BedForm, textOf } from "../quantities/bed/form";

/** More than these make a summary of several lines. */
const MOST = 2;

/** Which of some fields were changed from what they usually hold, in a few words; "" where none was. */
export function changedWords(form: BedForm, keys: readonly FieldKey[]): string {
  const changed = keys.filter((key) => {
    const { [key]: _, ...others } = form.typed;
    return form.typed[key] !== undefined && form.typed[key] !== textOf({ ...form, typed: others }, key);
  });
  if (changed.length === 0) return "";
  const named = changed.slice(0, MOST).map((key) => `${fields[key].label} ${textOf(form, key)}`);
  const more = changed.length - named.length;
  return `Changed: ${named.join(", ")}${more > 0 ? `, and ${more} more` : ""}`;
}
