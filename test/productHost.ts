import * as functions from "../src/functions/index";
import { functionsFile } from "../src/functions/metadata";
import type { AssociatedFunction } from "../src/practice/functions/metadata";
import type { PracticeOffice } from "../src/practice/grid/practiceOffice";
import { createHost, type HeadlessHost, type HostOptions } from "./headlessHost";

/**
 * A host without a screen in which every worksheet function of the product is registered, as the build does it.
 *
 * @param kept a workbook that was saved, in place of the office.
 * @param isCalculated whether that one has the results of its formulas.
 */
export async function createProductHost(
  office?: PracticeOffice,
  kept?: HostOptions["kept"],
  isCalculated = false,
): Promise<HeadlessHost> {
  const calls = { ...functions } as unknown as Readonly<Record<string, AssociatedFunction>>;
  return createHost({
    functions: { calls, metadata: functionsFile("https://tools.example") },
    ...(office && { office }),
    ...(kept && { kept, isCalculated }),
  });
}
