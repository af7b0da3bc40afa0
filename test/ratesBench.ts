import { countsInPlan } from "../src/layout/planOfEstimate";
import { type Estimate, estimateBed } from "../src/quantities/bed/estimate";
import { type BedForm, blankForm } from "../src/quantities/bed/form";
import { type FormProblem, readForm } from "../src/quantities/bed/read";
import { keyAddresses } from "../src/sheets/compose";
import { estimateBlock, estimateRows } from "../src/sheets/estimate/block";
import { insertPlan } from "../src/workbook/change/insert";
import { readRates } from "../src/workbook/read/rates";
import type { HeadlessHost } from "./headlessHost";
import { rateAddress } from "./insertRates";

/** An invented bed, as it was taped. */
export const taped = { length: `18' 6"`, width: "5", cornerRadius: "2", roundedCorners: "2", stoneSize: "3/4" };

/** Types into cells of the sheet of rates, by their names. */
export function typeRates(host: HeadlessHost, sheet: string, cells: Readonly<Record<string, string | number>>) {
  const byAddress = Object.entries(cells).map(([name, content]) => [`${sheet}!${rateAddress(name)}`, content]);
  return host.type(Object.fromEntries(byAddress));
}

/** A bed as the pane has it in a workbook with rates. */
export async function formWithRates(typed: BedForm["typed"] = {}): Promise<BedForm> {
  const { rates } = (await readRates())!;
  return { ...blankForm(), name: "Front walk", typed: { ...taped, ...typed }, rates };
}

/**
 * The estimate of the pane, before anything is written.
 *
 * @throws {Error} where there are problems.
 */
export function paneEstimate(form: BedForm): Estimate {
  const { bed, problems } = readForm(form);
  if (!bed) throw new Error(JSON.stringify(problems));
  return estimateBed(bed, countsInPlan(bed));
}

/** What the pane says is wrong. */
export function paneProblems(form: BedForm): readonly FormProblem[] {
  return readForm(form).problems;
}

/** A block on a sheet of its own, its cells by key. */
export async function insertBlock(host: HeadlessHost, form: BedForm) {
  const inserted = await insertPlan((at) => estimateBlock(form, at), { kind: "new sheet", name: "Bed" });
  if (!inserted.done) throw new Error("a new sheet is free");
  const keys = keyAddresses(estimateRows(form), { row: 0, column: 0 });
  const address = (key: string) => {
    if (!keys.has(key)) throw new Error(`No cell has the key ${key}.`);
    return `'${inserted.sheetName}'!${keys.get(key)}`;
  };
  return {
    value: (key: string) => host.value(address(key)),
    formula: (key: string) => host.formula(address(key)),
    type: (key: string, content: string | number) => host.type({ [address(key)]: content }),
  };
}

export type Block = Awaited<ReturnType<typeof insertBlock>>;
