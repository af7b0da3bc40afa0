import { join } from "node:path";
import { withTypeScript } from "../withTypeScript.mjs";

/**
 * Makes what describes the functions, from their declarations.
 *
 * @param {{ root: string, origin: string }} given the project's folder, and where the build will be served.
 * @returns {Promise<{ texts: Map<string, string>, metadata: string, inputs: string[] }>} the help's pages by their
 *   names, the functions' metadata, and the files that were read.
 */
export async function describe({ root, origin }) {
  return withTypeScript(root, join(root, "src/help/pages.ts"), async ({ helpFiles, functionsFile }, inputs) => ({
    texts: helpFiles(root),
    metadata: JSON.stringify(functionsFile(origin), null, 2),
    inputs,
  }));
}
