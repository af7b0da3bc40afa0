import type { BaseFunction, BaseValueObject } from "@univerjs/preset-sheets-node-core";
import type { OpenGrid } from "../grid/library";
import { isRefused, readArguments } from "./arguments";
import { describe } from "./describe";
import { CustomFunctionError } from "./error";
import { Invocation } from "./invocation";
import type { ErrorMessages } from "./messages";
import type { AssociatedFunction, FunctionMetadata } from "./metadata";
import { errorValue, writeResult } from "./results";

/** A function that can be called from a cell. */
export interface WorksheetFunction {
  readonly metadata: FunctionMetadata;
  readonly call: AssociatedFunction;
}

/**
 * Makes worksheet functions known to the grid, with the help that shows while a formula is typed.
 *
 * @param namespace What is before the dot in the cell, such as MY in MY.FUNCTION.
 * @param messages Where the reasons for errors are kept.
 */
export function registerFunctions(
  grid: OpenGrid,
  namespace: string,
  functions: readonly WorksheetFunction[],
  messages: ErrorMessages,
): void {
  const { sheets } = grid.library;
  const known = grid.injector.get(sheets.IFunctionService);
  for (const { metadata, call } of functions) {
    const name = `${namespace}.${metadata.name}`.toUpperCase();
    known.registerExecutors(executor(grid, name, metadata, call, messages));
    known.deleteFormulaAstCacheKey(name);
  }
  const help = functions.map(({ metadata }) => describe(grid.library, namespace, metadata));
  grid.injector.get(sheets.IDescriptionService).registerDescriptions(help);
}

function executor(
  { library: { sheets } }: OpenGrid,
  name: string,
  metadata: FunctionMetadata,
  call: AssociatedFunction,
  messages: ErrorMessages,
): BaseFunction {
  const { parameters } = metadata;
  class Executor extends sheets.BaseFunction {
    override minParams = 0;
    override maxParams = parameters.at(-1)?.repeating ? 255 : parameters.length;

    // A throw that leaves here would stop the engine for good, so nothing may.
    override calculate(...given: BaseValueObject[]): BaseValueObject {
      try {
        return this.answer(given);
      } catch (thrown) {
        return this.failed(thrown);
      }
    }

    private answer(given: BaseValueObject[]): BaseValueObject {
      const values = readArguments(metadata, given);
      if (!isRefused(values)) {
        const result = writeResult(sheets, this, call(...values, new Invocation(metadata.id)));
        messages.forget(this.subUnitId ?? "", this.row, this.column);
        return result;
      }
      if ("error" in values) return values.error;
      return sheets.ErrorValueObject.create(sheets.ErrorType.VALUE);
    }

    private failed(thrown: unknown): BaseValueObject {
      const error = thrown instanceof CustomFunctionError ? thrown : new CustomFunctionError("#VALUE!");
      const message = error.shownMessage;
      if (message === undefined) messages.forget(this.subUnitId ?? "", this.row, this.column);
      else messages.set(this.subUnitId ?? "", this.row, this.column, message);
      return errorValue(sheets, error);
    }
  }
  return new Executor(name);
}
