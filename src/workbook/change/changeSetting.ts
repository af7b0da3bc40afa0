import { asFailure } from "../failure";
import { queueReadText } from "../settings/setting";
import { applyChange } from "./change";

/** How often another pane may be quicker before the person is asked to try again. */
const MOST_TIMES = 5;
const MAY_BE_DONE = "It may have been done anyway. Check the list before you try again.";

/** What is to be kept, and what the caller returns for it. */
interface NewText<T> {
  readonly text: string;
  readonly result: T;
}

interface WrittenText<T> extends NewText<T> {
  /** The text that was overwritten; undefined where the host's answer was lost. */
  readonly overwritten: string | undefined;
}

/**
 * Changes what the workbook keeps under a key, as it is by now. Two requests. What another pane keeps at the same moment
 * stays: where a write has overwritten it, the change is made again, on top of that.
 *
 * @param change gives the new text for the one that is there, "" for none; it may refuse by throwing.
 */
export async function changeSetting<T>(
  context: Excel.RequestContext,
  key: string,
  change: (text: string) => NewText<T>,
): Promise<T> {
  const read = queueReadText(context, key);
  await context.sync();
  let base = read();
  let expected = base;
  let lost: string | undefined;
  for (let times = 0; times < MOST_TIMES; times += 1) {
    const { result, text, overwritten } = await writeSetting(context, key, () => change(base), lost);
    if (overwritten === undefined || overwritten === expected) return result;
    base = overwritten;
    lost = overwritten;
    expected = text;
  }
  throw asFailure({ code: "RequestAborted" });
}

/**
 * @param lost what another pane had kept, and this one has overwritten before: it is restored where this fails.
 */
function writeSetting<T>(
  context: Excel.RequestContext,
  key: string,
  change: () => NewText<T>,
  lost: string | undefined,
): Promise<WrittenText<T>> {
  let changed: NewText<T> | undefined;
  return applyChange<WrittenText<T>>({
    apply: async () => {
      changed = change();
      const overwritten = queueReadText(context, key);
      context.workbook.settings.add(key, changed.text);
      await context.sync();
      return { ...changed, overwritten: overwritten() };
    },
    undo: async () => {
      const now = queueReadText(context, key);
      await context.sync();
      if (changed && now() === changed.text) return { ...changed, overwritten: undefined };
      if (lost === undefined) return undefined;
      context.workbook.settings.add(key, lost);
      await context.sync();
      return undefined;
    },
    leftover: MAY_BE_DONE,
  });
}
