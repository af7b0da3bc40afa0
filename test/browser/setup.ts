import { existsSync } from "node:fs";
import { resolve } from "node:path";
import type { TestProject } from "vitest/node";
import { serve } from "../../src/serve.mjs";
import { findBrowser } from "./findBrowser";

declare module "vitest" {
  interface ProvidedContext {
    browserPath: string;
    origin: string;
  }
}

/** Finds a browser and serves what was built, for all browser tests. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  // Two builds side by side: `npm run build -- --to …`, then DIST=… for the tests.
  const dist = resolve(process.env.DIST ?? resolve(import.meta.dirname, "../../dist"));
  if (!existsSync(resolve(dist, "practice.html"))) throw new Error("Nothing is built yet. Run `npm run build` first.");
  project.provide("browserPath", findBrowser());
  const server = await serve(dist);
  project.provide("origin", server.origin);
  return server.close;
}
