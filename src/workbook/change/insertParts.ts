import { tooLong } from "../../sheets/tooLong";
import { areaAddress } from "../../spreadsheet/areas";
import { codeOf, WorkbookFailure } from "../failure";
import { leftoverMessage, writing } from "./change";
import { type OverwrittenContent, queueTypedSince } from "./overwritten";
import { headingMoved } from "./place";
import { queueReadReceipt, queueReceipt, queueReceiptText } from "./receipt";
import { type Own, queueRemoval } from "./remove";
import { type Part, type QueuedPart, queuePart } from "./writePlan";

/** What the name of a new sheet begins with until all of it stands. */
const MEANWHILE = "Bedrow";

/** How far a write has got, for taking it off again. */
interface SoFar {
  /** Tells this write from every other. */
  readonly id: string;
  /** Once the cells are written: the note of the insert before. */
  noteBefore?: string;
  /** Once the cells are written, of each part: what else was there right before, and where it is. */
  cells?: readonly {
    readonly sheetId: string;
    readonly stood: OverwrittenContent | undefined;
    readonly shapesBefore: readonly string[];
    readonly formulas: readonly (readonly unknown[])[];
  }[];
  /** Whether tables and pictures, too, can have been written: before that, those in its place are somebody else's. */
  isFinishing?: boolean;
}

/**
 * Writes plans to their places, which were free when they were looked at: two syncs. In the end the first of them is
 * brought to the front. If either sync fails, or somebody else was quicker, all of it is taken off again.
 *
 * @param title what is written, for the person.
 * @returns the id under which it can be taken back.
 * @throws WorkbookFailure also for what no cell would hold.
 */
export async function writeParts(
  context: Excel.RequestContext,
  title: string,
  wanted: readonly Omit<Part, "tempName">[],
): Promise<string> {
  const trouble = wanted.map(({ plan }) => tooLong(plan)).find((words) => words !== undefined);
  if (trouble) throw new WorkbookFailure(`Nothing was written. ${trouble}`);
  const id = crypto.randomUUID();
  const parts = wanted.map((part, index) => ({
    ...part,
    tempName: `${MEANWHILE} ${index + 1} ${id.slice(0, 8)}`,
  }));
  const soFar: SoFar = { id };
  const write = async () => {
    quiet(context);
    const queued = parts.map((part) => queuePart(context, part));
    const noteBefore = queueReadReceipt(context);
    await context.sync();
    soFar.noteBefore = noteBefore.text();
    soFar.cells = queued.map((part) => ({
      sheetId: part.worksheet.id,
      stood: part.stood(),
      shapesBefore: part.shapesBefore(),
      formulas: part.target.formulas,
    }));
    refuseOvertaken(parts, soFar.cells);
    const moved = queued.findIndex((part) => !part.isUnder());
    if (moved >= 0) throw headingMoved(parts[moved]!.sheetName);
    soFar.isFinishing = true;
    quiet(context);
    queueReceipt(context, { id, title, parts: queued.map((part) => part.finish()) });
    // Last of all, so that the selection stays where it is for as long as something can fail.
    bringToFront(queued[0]);
    await context.sync();
    missed = parts.filter((_, index) => queued[index]!.isMissed());
    return id;
  };
  let missed: readonly Part[] = [];
  const left = leftoverMessage(parts.map(whereIs).join(" and "), "delete what is left there");
  const written = await writing(write, (cause) => takeOff(context, parts, soFar, cause), left);
  if (missed.length > 0) throw missedWords(title, missed);
  return written;
}

function missedWords(title: string, missed: readonly Part[]): WorkbookFailure {
  const places = missed.map(({ sheetName, area }) => `${sheetName}!${areaAddress(area)}`).join(" and ");
  return new WorkbookFailure(
    `The ${title} could be inserted only in part: somebody put rows or columns in at the same moment, so that a table or pictures lie at ${places}, where the cells stood before. Delete the table or pictures there, and the cells that moved, then insert it anew.`,
  );
}

/** Where something of a part may be left, for the person; a new sheet has its own name only once all of it stands. */
function whereIs({ sheetId, sheetName, area }: Part, index: number): string {
  if (sheetId !== undefined) return `${sheetName}!${areaAddress(area)}`;
  return `the sheet “${sheetName}” or one whose name begins with “${MEANWHILE} ${index + 1}”`;
}

/** Formulas are worked out once, when all of them are there. */
function quiet({ application }: Excel.RequestContext): void {
  application.suspendApiCalculationUntilNextSync();
  application.suspendScreenUpdatingUntilNextSync();
}

/** @throws WorkbookFailure where somebody else has written to the place of a part since it was looked at. */
function refuseOvertaken(parts: readonly Part[], cells: NonNullable<SoFar["cells"]>): void {
  const overtaken = parts.find((_, index) => cells[index]?.stood);
  if (!overtaken) return;
  const { sheetName, area } = overtaken;
  throw new WorkbookFailure(
    `Somebody else, or another window, wrote to ${areaAddress(area)} on ${sheetName} at the same moment. What they wrote stands, and nothing was added. Look at it, then try again, or choose another place.`,
  );
}

function bringToFront(first: QueuedPart | undefined): void {
  first?.worksheet.activate();
  first?.target.getCell(0, 0).select();
}

/**
 * Takes off whatever a failed write has left, unless all of it stands, and only the answer was lost.
 *
 * @returns the id of what stands.
 */
async function takeOff(
  context: Excel.RequestContext,
  parts: readonly Part[],
  { id, cells, noteBefore, isFinishing = false }: SoFar,
  cause: unknown,
): Promise<string | undefined> {
  const { worksheets } = context.workbook;
  const found = parts.map(({ plan, area, before, sheetId, tempName }, index) => {
    const names = (plan.names ?? []).map(({ name }) => name);
    const written = cells?.[index];
    const isPicture: Own["isPicture"] = (shape) =>
      isFinishing && plan.pictures !== undefined && written?.shapesBefore.includes(shape.id) === false;
    const part = queueRemoval(
      context,
      worksheets.getItemOrNullObject(written?.sheetId ?? sheetId ?? tempName ?? ""),
      { area, before, names, stood: written?.stood },
      { isPicture, hasTables: isFinishing },
    );
    return { ...part, before, stood: written?.stood, typed: queueTypedSince(part.target, plan, written?.formulas) };
  });
  const receipt = queueReadReceipt(context);
  await context.sync();
  const last = receipt.kept();
  const isNoted = last.state === "kept" && last.value.id === id;
  // The note goes last; somebody can still have deleted the sheet right before it.
  if (isNoted && found.every((part) => part.isThere())) return id;
  if (isNoted) queueReceiptText(context, noteBefore ?? "");
  for (const { before, stood, typed, ...part } of found) {
    if (!before || !part.isThere()) part.takeOff(before === undefined);
    else if (!cells && part.isProtected()) part.takeOffNames();
    else if (cells || (typed.isBegun() && !isAboutName(cause))) {
      part.takeOff(false);
      if (!stood) typed.queueTheirs(part.target);
    } else if (typed.isBlank() || !isAboutName(cause)) {
      typed.queueFormatsBack(part.target, before);
      part.takeOffNames();
    }
  }
  await context.sync();
  return undefined;
}

/** Names come first: where one was taken, what stands in the cells, and the names there, are somebody else's. */
function isAboutName(cause: unknown): boolean {
  const { debugInfo } = cause as { readonly debugInfo?: { readonly errorLocation?: string } };
  return codeOf(cause) === "ItemAlreadyExists" || /^NamedItem/.test(debugInfo?.errorLocation ?? "");
}
