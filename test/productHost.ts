import { resolve } from "node:path";
import { generateCustomFunctionsMetadata } from "custom-functions-metadata";
import files from "../src/functions/files.json";
import * as functions from "../src/functions/index";
import type { AssociatedFunction, FunctionsFile } from "../src/practice/functions/metadata";
import type { PracticeOffice } from "../src/practice/grid/practiceOffice";
import { createHost, type HeadlessHost, type HostOptions } from "./headlessHost";

/** Parsed once per test file: a new workbook doesn't change the functions. */
const metadata = generateCustomFunctionsMetadata(
  files.map((file) => resolve(import.meta.dirname, "../src/functions", file)),
  true,
).then(({ metadataJson }) => JSON.parse(metadataJson) as FunctionsFile);

/**
 * A host without a screen in which every worksheet function of the product is registered, as the build does it.
 *
 * @param kept a workbook that was saved, in place of the office.
 */
export async function createProductHost(office?: PracticeOffice, kept?: HostOptions["kept"]): Promise<HeadlessHost> {
  const calls = { ...functions } as unknown as Readonly<Record<string, AssociatedFunction>>;
  return createHost({
    functions: { calls, metadata: await metadata },
    ...(office && { office }),
    ...(kept && { kept }),
  });
}
