import { declarations } from "./declarations";
import type { Declaration } from "./declare";

/**
 * What the host reads about the functions: the content of functions.json.
 *
 * @param origin where the build is served, such as https://tools.example: each function's page is below it.
 */
export function functionsFile(origin: string) {
  return {
    allowCustomDataForDataTypeAny: true,
    functions: declarations.map((declared) => ({
      ...describe(declared),
      helpUrl: `${origin}/help/${declared.name}.html`,
    })),
  };
}

function describe({ name, about, kind, arguments: takes, run }: Declaration) {
  return {
    description: about,
    id: name,
    name,
    // Anything may come in: a length is a number or text, and which of them is for the function to say.
    parameters: takes.map((argument, place) => ({
      description: argument.about,
      ...(argument.many && { dimensionality: "matrix" as const }),
      name: argument.name,
      ...(run.takes[place]?.optional && { optional: true }),
      type: "any",
    })),
    result: kind === "list" ? { dimensionality: "matrix" } : { type: "number" },
  };
}
