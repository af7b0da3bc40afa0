import { type Changed, type KeptTemplate, keptText, readKept } from "../sheets/templates/keptTemplates";
import { inWords, inWorkbook, WorkbookTrouble } from "./trouble";

const KEY = "Bedrow.templates";

/**
 * The templates that this workbook keeps. One sync.
 *
 * @throws WorkbookTrouble where they cannot be read; they stay as they are.
 */
export async function readKeptTemplates(): Promise<readonly KeptTemplate[]> {
  return inWorkbook(async (context) => {
    const read = queueRead(context);
    await context.sync();
    return templatesIn(read());
  });
}

/**
 * Changes what the workbook keeps, as it is by now: two syncs, and what was kept before comes back where one fails.
 *
 * @param change gives what there will be, or why not.
 * @throws WorkbookTrouble where it cannot be read, may not be so, or the host fails.
 */
export async function changeKeptTemplates(
  change: (templates: readonly KeptTemplate[]) => Changed,
): Promise<readonly KeptTemplate[]> {
  return inWorkbook(async (context) => {
    const read = queueRead(context);
    await context.sync();
    const before = read();
    const changed = change(templatesIn(before));
    if (!changed.ok) throw new WorkbookTrouble(changed.why);
    try {
      context.workbook.settings.add(KEY, keptText(changed.templates));
      await context.sync();
    } catch (error) {
      await putBack(context, before, error);
      throw error;
    }
    return changed.templates;
  });
}

/** Readable after a sync; "" where nothing is kept. */
function queueRead(context: Excel.RequestContext): () => string {
  const setting = context.workbook.settings.getItemOrNullObject(KEY);
  setting.load("value");
  return () => (setting.isNullObject ? "" : String(setting.value));
}

function templatesIn(text: string): readonly KeptTemplate[] {
  const kept = readKept(text);
  if (!kept.ok) throw new WorkbookTrouble(kept.why);
  return kept.templates;
}

async function putBack(context: Excel.RequestContext, before: string, cause: unknown): Promise<void> {
  try {
    if (before === "") {
      const setting = context.workbook.settings.getItemOrNullObject(KEY);
      setting.load("key");
      await context.sync();
      if (!setting.isNullObject) setting.delete();
    } else context.workbook.settings.add(KEY, before);
    await context.sync();
  } catch {
    throw new WorkbookTrouble(
      `${inWords(cause).message} Look at the list of templates: the change may have been made.`,
    );
  }
}
