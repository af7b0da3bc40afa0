import type { FieldKey } from "../quantities/bed/fields";
import { type BedForm, textOf } from "../quantities/bed/form";
import { type ListKey, listFields, listOf } from "../quantities/bed/officeLists";
import { listedRow } from "../quantities/bed/rates";

/** A choice that fills fields of the form; undefined gives one back to the office's rate. */
export interface ListChoice {
  readonly label: string;
  readonly fills: Readonly<Partial<Record<FieldKey, string | undefined>>>;
}

/** The rows of one of the office's lists as choices, the usual rates first; undefined where the office has no such list. */
export function listChoices(form: BedForm, list: ListKey): readonly ListChoice[] | undefined {
  const listed = form.rates?.lists?.[list];
  if (!listed) return undefined;
  const { picks } = listOf(list);
  const followed = Object.fromEntries(listFields(list).map((key) => [key, undefined]));
  return [
    { label: "From Rates", fills: { ...followed, [picks]: undefined } },
    ...listed.rows.map(({ name, isSample }) => ({
      label: `${name}, from Rates${isSample ? " (sample)" : ""}`,
      fills: { ...followed, [picks]: name },
    })),
  ];
}

/** Which of these choices a bed has; undefined where a figure was typed for it, or it names no row. */
export function listChosen(form: BedForm, list: ListKey): number | undefined {
  const { picks } = listOf(list);
  if (!form.rates || listFields(list).some((key) => form.typed[key] !== undefined)) return undefined;
  if (form.typed[picks] === undefined) return 0;
  const row = listedRow(form.rates, list, textOf(form, picks));
  return row && 1 + (form.rates.lists?.[list]?.rows.indexOf(row) ?? 0);
}
