import { useMemo, useState } from "preact/hooks";
import { type FieldKey, shapeFields } from "../quantities/bed/fields";
import { type BedForm, blankForm, withFilled } from "../quantities/bed/form";
import type { Rates } from "../quantities/bed/rates";
import type { FormPlace } from "../quantities/bed/read";
import { draft } from "./draft";
import { useStored } from "./keep/useStored";
import { previewOf } from "./preview";

const BLANK = blankForm();

/**
 * The form with what it comes to. Blanks are named only once the person has tried to insert.
 *
 * @param rates the office's rates, which are in the fields that no one typed into; the draft never keeps them.
 */
export function useForm(rates: Rates | undefined) {
  const { value: form, setValue: setForm, unkept } = useStored(draft, BLANK);
  const [tried, setTried] = useState(false);
  const preview = useMemo(() => previewOf(rates ? { ...form, rates } : form), [form, rates]);
  const shown = preview.problems.filter(({ unfinished }) => tried || !unfinished);
  return {
    form: preview.form,
    /** As it was typed, without what the plan filled in. */
    typedForm: form,
    preview,
    shownProblems: shown,
    /** Why what is typed is not kept over a closed pane, where it is not. */
    unkept,
    problemAt: (place: FormPlace) => shown.find((problem) => problem.place === place)?.message,
    /** Changes the form as typed; what the plan filled in does not count as typed. */
    change: (next: Partial<BedForm>) => setForm((now) => ({ ...now, ...next })),
    /** What is in fields as if typed; undefined gives a field back to its rate or starting value. */
    fill: (typed: Readonly<Partial<Record<FieldKey, string | undefined>>>) =>
      setForm((now) => ({ ...now, typed: withFilled(rates ? { ...now, rates } : now, typed) })),
    showAll: () => setTried(true),
    /** Another form in place of this one. */
    load: (next: BedForm) => {
      setTried(false);
      setForm(() => next);
    },
    /** A new bed keeps what the office chose and forgets what was taped. */
    startNewBed: () => {
      setTried(false);
      setForm((now) => ({ ...blankForm(), way: now.way, typed: withoutShape(now.typed) }));
    },
  };
}

function withoutShape(typed: BedForm["typed"]): BedForm["typed"] {
  return Object.fromEntries(Object.entries(typed).filter(([key]) => !(key in shapeFields)));
}
