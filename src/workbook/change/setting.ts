import { asFailure } from "../failure";
import { queueReadText } from "../settings/setting";
import { writing } from "./change";

/** How often another pane may be quicker before the person is asked to try again. */
const MOST_TIMES = 5;

/** What is to be kept, and what the caller gives for it. */
interface Changed<T> {
  readonly text: string;
  readonly result: T;
}

interface WrittenText<T> extends Changed<T> {
  /** What stood there right before; undefined where the host's answer was lost. */
  readonly found: string | undefined;
}

/**
 * Changes what the workbook keeps under a key, as it is by now. Two syncs. What another pane keeps at the same moment
 * stays: each write reads once more what it covers, in the same request, and is done anew upon that.
 *
 * @param change gives the new text for the one that is there, "" for none; it may refuse by throwing.
 */
export async function changeText<T>(
  context: Excel.RequestContext,
  key: string,
  change: (text: string) => Changed<T>,
): Promise<T> {
  const read = queueReadText(context, key);
  await context.sync();
  let base = read();
  let expected = base;
  let covered: string | undefined;
  for (let times = 0; times < MOST_TIMES; times += 1) {
    const { result, text, found } = await writeText(context, key, () => change(base), covered);
    if (found === undefined || found === expected) return result;
    base = found;
    covered = found;
    expected = text;
  }
  throw asFailure({ code: "RequestAborted" });
}

/** @param covered what another pane had kept, and this one wrote over: it comes back where this fails. */
async function writeText<T>(
  context: Excel.RequestContext,
  key: string,
  change: () => Changed<T>,
  covered: string | undefined,
): Promise<WrittenText<T>> {
  let changed: Changed<T> | undefined;
  const write = async () => {
    changed = change();
    const found = queueReadText(context, key);
    context.workbook.settings.add(key, changed.text);
    await context.sync();
    return { ...changed, found: found() };
  };
  const putBack = async (): Promise<WrittenText<T> | undefined> => {
    const there = queueReadText(context, key);
    await context.sync();
    if (changed && there() === changed.text) return { ...changed, found: undefined };
    if (covered === undefined) return undefined;
    context.workbook.settings.add(key, covered);
    await context.sync();
    return undefined;
  };
  return writing(write, putBack, MAY_STAND);
}

const MAY_STAND = "It may have been done all the same. Look at the list before you do it again.";
