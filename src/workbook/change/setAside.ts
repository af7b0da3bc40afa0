import { inWorkbook, WorkbookFailure } from "../failure";
import { applyChange, leftoverMessage } from "./change";
import { newSheetName } from "./insert";

/** A sheet by its id, and how it is called and shown before and after. */
interface Naming {
  readonly id: string;
  readonly before: SheetState;
  readonly after: SheetState;
}

interface SheetState {
  readonly name: string;
  readonly visibility: Excel.Worksheet["visibility"];
}

const STRUCTURE_PROTECTED =
  "This workbook's structure is protected, so sheets can't be renamed. Nothing was changed. Unprotect the workbook, then try again.";
const GONE =
  "A sheet was renamed, hidden, or deleted at the same time, so nothing was changed. Check the sheets, then try again.";

/**
 * Hides sheets under another name, `Old Order Alder Court`, so that new ones can have theirs: nothing on them is lost. Two
 * requests.
 *
 * @param names of sheets that show.
 * @returns shows them again under their own names; throws WorkbookFailure where they were renamed or shown meanwhile.
 * @throws WorkbookFailure
 */
export async function setSheetsAside(names: readonly string[]): Promise<() => Promise<void>> {
  const namings = await inWorkbook(async (context) => {
    const { worksheets, protection } = context.workbook;
    worksheets.load("items/id,items/name,items/visibility");
    protection.load("protected");
    await context.sync();
    if (protection.protected) throw new WorkbookFailure(STRUCTURE_PROTECTED);
    const taken = worksheets.items.map(({ name }) => name);
    const planned = names.map((wanted): Naming => {
      const sheet = worksheets.items.find(({ name }) => name.toLowerCase() === wanted.toLowerCase());
      if (sheet?.visibility !== "Visible") throw new WorkbookFailure(GONE);
      const name = newSheetName(`Old ${sheet.name}`, taken);
      taken.push(name);
      return {
        id: sheet.id,
        before: { name: sheet.name, visibility: "Visible" },
        after: { name, visibility: "Hidden" },
      };
    });
    await renameSheets(context, planned);
    return planned;
  });
  const back = namings.map(({ id, before, after }): Naming => ({ id, before: after, after: before }));
  return () => inWorkbook((context) => renameSheets(context, back));
}

async function renameSheets(context: Excel.RequestContext, namings: readonly Naming[]): Promise<void> {
  const { worksheets } = context.workbook;
  const queueStates = () => {
    const there = namings.map(({ id }) => worksheets.getItemOrNullObject(id).load("name,visibility"));
    return () =>
      there.map((sheet): SheetState | undefined =>
        sheet.isNullObject ? undefined : { name: sheet.name, visibility: sheet.visibility },
      );
  };
  const areAll = (states: readonly (SheetState | undefined)[], when: "before" | "after") =>
    namings.every((one, index) => isSameState(states[index], one[when]));
  /** As they were in the request that renamed them; undefined where its answer was lost. */
  let found: readonly (SheetState | undefined)[] | undefined;
  await applyChange<true>({
    apply: async () => {
      const states = queueStates();
      for (const { id, after } of namings) {
        const sheet = worksheets.getItem(id);
        sheet.name = after.name;
        sheet.visibility = after.visibility;
      }
      await context.sync();
      found = states();
      if (!areAll(found, "before")) throw new WorkbookFailure(GONE);
      return true;
    },
    undo: async () => {
      const states = queueStates();
      await context.sync();
      const now = states();
      if (!found && areAll(now, "after")) return true;
      for (const [index, { id, before, after }] of namings.entries()) {
        if (!now[index]) continue;
        const { name, visibility } = found?.[index] ?? before;
        const sheet = worksheets.getItem(id);
        if (now[index]?.name === after.name) sheet.name = name;
        if (now[index]?.visibility === after.visibility) sheet.visibility = visibility;
      }
      await context.sync();
      return undefined;
    },
    leftover: leftoverMessage(
      namings.map(({ after }) => after.name).join(" and "),
      "rename and show the sheets by hand",
    ),
  });
}

const isSameState = (one: SheetState | undefined, other: SheetState) =>
  one?.name === other.name && one.visibility === other.visibility;
