import { join } from "node:path";
import { generateCustomFunctionsMetadata } from "custom-functions-metadata";
import { withTypeScript } from "../withTypeScript.mjs";

/**
 * Makes what describes the functions, from their TypeScript.
 *
 * @param {{ root: string, functionFiles: readonly string[] }} given the project's folder, and the functions' files from
 *   there on.
 * @returns {Promise<{ texts: Map<string, string>, metadata: string, errors: string[], inputs: string[] }>} the help's
 *   pages by their names, the functions' metadata, what is wrong with it, and the files that were read.
 */
export async function describe({ root, functionFiles }) {
  const functions = functionFiles.map((file) => join(root, file));
  const { metadataJson, errors } = await generateCustomFunctionsMetadata(functions);
  return withTypeScript(root, join(root, "src/help/pages.ts"), async ({ helpFiles }, inputs) => ({
    texts: helpFiles(root),
    metadata: metadataJson || '{ "functions": [] }',
    errors,
    inputs: [...functions, ...inputs],
  }));
}
