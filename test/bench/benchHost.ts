import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { generateCustomFunctionsMetadata } from "custom-functions-metadata";
import * as functions from "../../src/functions/index";
import type { AssociatedFunction, FunctionsFile } from "../../src/practice/functions/metadata";
import type { PracticeOffice } from "../../src/practice/grid/practiceOffice";
import { createHost, type HeadlessHost } from "../headlessHost";

/** A host without a screen with all functions in it; a benchmark is bundled, so paths go from the project's folder. */
export async function benchHost(office?: PracticeOffice): Promise<HeadlessHost> {
  const files = JSON.parse(readFileSync("src/functions/files.json", "utf8")) as string[];
  const { metadataJson } = await generateCustomFunctionsMetadata(
    files.map((file) => resolve("src/functions", file)),
    true,
  );
  const calls = { ...functions } as unknown as Readonly<Record<string, AssociatedFunction>>;
  const metadata = JSON.parse(metadataJson) as FunctionsFile;
  return createHost({ functions: { calls, metadata }, ...(office && { office }) });
}
