import * as functions from "../../src/functions/index";
import { functionsFile } from "../../src/functions/metadata";
import type { AssociatedFunction } from "../../src/practice/functions/metadata";
import type { PracticeOffice } from "../../src/practice/grid/practiceOffice";
import { createHost, type HeadlessHost } from "../headlessHost";

/** A host without a screen with all functions in it. */
export async function benchHost(office?: PracticeOffice): Promise<HeadlessHost> {
  const calls = { ...functions } as unknown as Readonly<Record<string, AssociatedFunction>>;
  const metadata = functionsFile("https://tools.example");
  return createHost({ functions: { calls, metadata }, ...(office && { office }) });
}
