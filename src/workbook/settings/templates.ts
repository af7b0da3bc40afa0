import { type Changed, type KeptTemplate, keptText, readKept } from "../../sheets/templates/keptTemplates";
import { changeSetting } from "../change/changeSetting";
import { inWorkbook, WorkbookFailure } from "../failure";
import { KeptFailure, queueReadText } from "./setting";

const KEY = "Bedrow.templates";

/**
 * The templates that this workbook keeps. One request.
 *
 * @throws WorkbookFailure where they can't be read; they stay as they are.
 */
export async function readKeptTemplates(): Promise<readonly KeptTemplate[]> {
  return inWorkbook(async (context) => {
    const read = queueReadText(context, KEY);
    await context.sync();
    return templatesIn(read());
  });
}

/**
 * Changes what the workbook keeps, as it is by now: two requests; where one fails, what was kept before is restored.
 *
 * @param change gives what there will be, or why not.
 * @param startOver whether what is damaged is replaced.
 * @throws WorkbookFailure where it can't be read, may not be so, or the host fails.
 */
export async function changeKeptTemplates(
  change: (templates: readonly KeptTemplate[]) => Changed,
  startOver = false,
): Promise<readonly KeptTemplate[]> {
  return inWorkbook((context) =>
    changeSetting(context, KEY, (text) => {
      const changed = change(changeableIn(text, startOver));
      if (!changed.ok) throw new WorkbookFailure(changed.why);
      return { text: keptText(changed.templates), result: changed.templates };
    }),
  );
}

function templatesIn(text: string): readonly KeptTemplate[] {
  const kept = readKept(text);
  if (!kept.ok) throw new WorkbookFailure(kept.why);
  return kept.templates;
}

function changeableIn(text: string, startOver: boolean): readonly KeptTemplate[] {
  const kept = readKept(text);
  if (kept.ok) return kept.templates;
  if (!kept.isDamaged) throw new KeptFailure(kept.why, false);
  if (startOver) return [];
  throw new KeptFailure(`${kept.why} Do it again to discard it and start a new list.`, true);
}
