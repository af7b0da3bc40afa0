import type { IFunctionInfo } from "@univerjs/preset-sheets-node-core";
import type { GridLibrary } from "../grid/library";
import type { FunctionMetadata } from "./metadata";

/** The help that shows while a formula with this function is typed. */
export function describe({ core, sheets }: GridLibrary, namespace: string, metadata: FunctionMetadata): IFunctionInfo {
  const text = metadata.description ?? "";
  return {
    functionName: `${namespace}.${metadata.name}`.toUpperCase(),
    functionType: sheets.FunctionType.User,
    description: text,
    abstract: text,
    functionParameter: metadata.parameters.map((parameter) => ({
      name: parameter.name,
      detail: parameter.description ?? "",
      // The grid puts these together into a sample call.
      example: parameter.name,
      require: parameter.optional ? core.BooleanNumber.FALSE : core.BooleanNumber.TRUE,
      repeat: parameter.repeating ? core.BooleanNumber.TRUE : core.BooleanNumber.FALSE,
    })),
  };
}
