import { resolve } from "node:path";
import { generateCustomFunctionsMetadata } from "custom-functions-metadata";
import files from "../src/functions/files.json";
import * as functions from "../src/functions/index";
import type { AssociatedFunction, FunctionsFile } from "../src/practice/functions/metadata";
import type { PracticeOffice } from "../src/practice/grid/practiceOffice";
import { createHost, type HeadlessHost, type HostOptions } from "./headlessHost";

/**
 * A host without a screen in which every worksheet function of the product is registered, as the build does it.
 *
 * @param kept a workbook that was saved, in place of the office.
 */
export async function createProductHost(office?: PracticeOffice, kept?: HostOptions["kept"]): Promise<HeadlessHost> {
  const paths = files.map((file) => resolve(import.meta.dirname, "../src/functions", file));
  const { metadataJson } = await generateCustomFunctionsMetadata(paths, true);
  const metadata = JSON.parse(metadataJson) as FunctionsFile;
  const calls = { ...functions } as unknown as Readonly<Record<string, AssociatedFunction>>;
  return createHost({ functions: { calls, metadata }, ...(office && { office }), ...(kept && { kept }) });
}
