import { workbookFile } from "../../sheets/file/workbookFile";
import type { Destination } from "../../sheets/plain/region";
import type { PlainCopy } from "../../sheets/plain/result";
import { type CopyMode, toPlain } from "../../sheets/plain/toPlain";
import type { PageSetup, Plan } from "../../sheets/plan";
import type { Anchor } from "../../spreadsheet/areas";
import { base64Of } from "../../spreadsheet/base64";
import { type Inserted, insertPlan } from "../../workbook/change/insert";
import { openAsWorkbook } from "../../workbook/sheets";
import type { Source } from "./source";

const CORNER: Anchor = { row: 0, column: 0 };

/** Where a copy on a sheet of the same workbook goes. */
export type OnSheet =
  | { readonly kind: "new sheet" }
  | { readonly kind: "cell"; readonly sheetId: string; readonly sheetName: string; readonly at: Anchor };

/** What becomes of a source, to be looked at before anything is written. */
export function copyForSheet(source: Source, mode: CopyMode, to: OnSheet): PlainCopy {
  return toPlain(source.region, source.around, destinationOf(source, to), mode);
}

/** What becomes of a source in a workbook of its own. */
export function copyForWorkbook({ what, region, around }: Source, mode: CopyMode): PlainCopy {
  return toPlain(region, around, { ...onNewSheet(what), isElsewhere: true }, mode);
}

/** Writes the copy on a sheet, over nothing; a write that fails is undone. */
export async function writeCopy(source: Source, mode: CopyMode, to: OnSheet): Promise<Inserted> {
  if (to.kind === "new sheet") {
    const { plan } = copyForSheet(source, mode, to);
    return insertPlan(() => plan, { kind: "new sheet", name: copyName(source, mode) });
  }
  const { kind, sheetId, at } = to;
  return insertPlan((place) => copyForSheet(source, mode, { ...to, at: place }).plan, { kind, sheetId, at });
}

/** The copy as a file. */
export async function copyFile(source: Source, mode: CopyMode): Promise<Uint8Array> {
  const { plan, results, arrays } = copyForWorkbook(source, mode);
  const sheet = { sheetName: source.name, plan: { ...plan, page: pageFor(plan) }, results, arrays };
  return workbookFile([sheet], { valuesOnly: mode === "values only", title: copyName(source, mode) });
}

const MARGIN_IN = 0.5;
/** Wider than this, in characters, letters get too small on upright paper. */
const UPRIGHT_WIDTH = 110;
const USUAL_WIDTH = 8.43;

/** Whoever gets the file can print it as it is: one page across, however many down. */
function pageFor({ columns, widths }: Plan): PageSetup {
  const width = Array.from({ length: columns }, (_, column) => widths[column] ?? USUAL_WIDTH).reduce(
    (a, b) => a + b,
    0,
  );
  const marginsIn = { top: MARGIN_IN, bottom: MARGIN_IN, left: MARGIN_IN, right: MARGIN_IN };
  return { paper: "letter", landscape: width > UPRIGHT_WIDTH, pagesWide: 1, marginsIn };
}

/** Opens the copy as a separate workbook. */
export async function openCopy(source: Source, mode: CopyMode): Promise<void> {
  await openAsWorkbook(base64Of(await copyFile(source, mode)));
}

export function copyName({ name }: Source, mode: CopyMode): string {
  return `${name} ${mode === "formulas" ? "plain" : "values"}`;
}

function destinationOf({ what, region }: Source, to: OnSheet): Destination {
  if (to.kind === "new sheet") return onNewSheet(what);
  return { at: to.at, sameSheet: to.sheetName === region.sheetName };
}

/** A whole sheet keeps its cells' addresses, and every reference to itself. */
function onNewSheet(what: Source["what"]): Destination {
  return { at: CORNER, sameSheet: false, wholeSheet: what === "sheet" };
}
