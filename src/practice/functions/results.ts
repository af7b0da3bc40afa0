import type { BaseFunction, BaseValueObject } from "@univerjs/preset-sheets-node-core";
import type { GridLibrary } from "../grid/library";
import { CustomFunctionError, errorCodes } from "./error";

type Values = GridLibrary["sheets"];

/**
 * Turns what a worksheet function returned into the grid's own values, as the host shows them: null as 0, a list of
 * rows as a spill, anything that is no number, text or truth as an error.
 *
 * @param cell The call, which knows the cell it is in.
 */
export function writeResult(values: Values, cell: BaseFunction, result: unknown): BaseValueObject {
  if (!Array.isArray(result)) return one(values, result);
  const rowCount = result.length;
  const first: unknown = result[0];
  const columnCount = Array.isArray(first) ? first.length : 0;
  const isTable = result.every((row: unknown) => Array.isArray(row) && row.length === columnCount);
  if (!isTable || columnCount === 0) return values.ErrorValueObject.create(values.ErrorType.VALUE);
  if (rowCount === 1 && columnCount === 1) return one(values, (first as unknown[])[0]);
  return new values.ArrayValueObject({
    calculateValueList: result.map((row: unknown[]) => row.map((item) => one(values, item))),
    rowCount,
    columnCount,
    unitId: cell.unitId ?? "",
    sheetId: cell.subUnitId ?? "",
    row: cell.row,
    column: cell.column,
  });
}

function one(values: Values, result: unknown): BaseValueObject {
  const { ErrorType, ErrorValueObject } = values;
  if (result === null || result === undefined) return values.NumberValueObject.create(0);
  if (typeof result === "number") {
    return Number.isFinite(result) ? values.NumberValueObject.create(result) : ErrorValueObject.create(ErrorType.NUM);
  }
  if (typeof result === "string") return values.StringValueObject.create(result);
  if (typeof result === "boolean") return values.BooleanValueObject.create(result);
  if (result instanceof CustomFunctionError) return errorValue(values, result);
  return ErrorValueObject.create(ErrorType.VALUE);
}

/** The error as it shows in the cell; a code that the host does not know shows as #VALUE!. */
export function errorValue(values: Values, error: CustomFunctionError): BaseValueObject {
  const { ErrorType, ErrorValueObject } = values;
  const known = Object.values(errorCodes).find((code) => code === error.code) ?? errorCodes.invalidValue;
  const type = Object.values(ErrorType).find((name) => name === known) ?? ErrorType.VALUE;
  return ErrorValueObject.create(type, error.message);
}
