import type { Dismissal } from "../../review/dismissals";
import { isObject, readKeptText, textToKeep } from "../../sheets/kept";
import { type KeptList, listToKeep, NO_ITEMS, readList } from "../../sheets/keptList";
import { changeSetting } from "../change/changeSetting";
import { inWorkbook } from "../failure";
import { changeable, damagedMessage, type KeptSetting, laterVersionMessage, queueReadKept } from "./setting";

export const DISMISSALS: KeptSetting<KeptList<Dismissal>> = {
  key: "Bedrow.dismissals",
  what: "the list of ignored findings",
  again: "Do it again",
  version: 1,
  read: (content) => readList(content, isDismissal),
};

/** What was dismissed in a workbook; or why it can't be read. */
export interface KnownDismissals {
  readonly dismissals: readonly Dismissal[];
  readonly why?: string;
}

/** Asks for what was dismissed; readable after the request. */
export function queueReadDismissals(context: Excel.RequestContext): () => KnownDismissals {
  const read = queueReadKept(context, DISMISSALS);
  return () => {
    const kept = read.kept();
    if (kept.state === "kept") return { dismissals: kept.value.items };
    if (kept.state === "none") return { dismissals: [] };
    const words = kept.state === "later" ? laterVersionMessage : damagedMessage;
    return { dismissals: [], why: `${words(DISMISSALS.what)} All findings are shown.` };
  };
}

/**
 * Changes what is dismissed, as it is by now, so that what another pane has dismissed meanwhile stays. Two requests.
 *
 * @param change gives what there will be.
 * @param startOver whether a list that can't be read is replaced.
 * @throws KeptFailure where it can't be read and has to stay.
 */
export async function changeDismissals(
  change: (dismissals: readonly Dismissal[]) => readonly Dismissal[],
  startOver: boolean,
): Promise<readonly Dismissal[]> {
  return inWorkbook((context) =>
    changeSetting(context, DISMISSALS.key, (text) => {
      const list = changeable(readKeptText(text, DISMISSALS), DISMISSALS, NO_ITEMS, startOver);
      const items = change(list.items);
      return { text: textToKeep(listToKeep(list, items), DISMISSALS), result: items };
    }),
  );
}

function isDismissal(value: unknown): value is Dismissal {
  if (!isObject(value)) return false;
  const { key, reason, title, where, on } = value;
  return [key, reason, title, where, on].every((text) => typeof text === "string");
}
