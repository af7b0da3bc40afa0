import type { Nullable } from "@univerjs/core";
import type { ArrayValueObject, BaseValueObject, ErrorValueObject } from "@univerjs/preset-sheets-node-core";
import type { FunctionMetadata, ParameterMetadata } from "./metadata";

/** A call that the host answers by itself, without asking the function. */
export type Refused = { readonly error: ErrorValueObject } | { readonly unreadable: ParameterMetadata };

/**
 * What a worksheet function is given for the arguments of a formula, as the host gives it: an omitted argument and a
 * blank cell are null, a range for a matrix parameter is rows of cells, and a one-cell reference for a scalar
 * parameter is that cell's value.
 *
 * @returns The values, one for each parameter; or, where an argument is itself an error or is of the wrong kind, the
 *   reason why the function is not asked.
 */
export function readArguments(metadata: FunctionMetadata, given: readonly BaseValueObject[]): unknown[] | Refused {
  const values: unknown[] = [];
  for (const [place, parameter] of metadata.parameters.entries()) {
    const value = parameter.repeating ? readAll(parameter, given.slice(place)) : readOne(parameter, given[place]);
    if (isRefused(value)) return value;
    values.push(value);
  }
  return values;
}

function readOne(parameter: ParameterMetadata, given: BaseValueObject | undefined): unknown {
  return given === undefined ? null : (readArgument(parameter, given) ?? null);
}

function readAll(parameter: ParameterMetadata, given: readonly BaseValueObject[]): unknown[] | Refused {
  const values: unknown[] = [];
  for (const one of given) {
    const value = readArgument(parameter, one);
    if (isRefused(value)) return value;
    values.push(value);
  }
  return values;
}

export function isRefused(value: unknown): value is Refused {
  return typeof value === "object" && value !== null && ("error" in value || "unreadable" in value);
}

function readArgument(parameter: ParameterMetadata, given: BaseValueObject): unknown {
  const single = parameter.dimensionality === "matrix" ? undefined : singleCell(given);
  if (single) return readCell(parameter, single);
  const rows = given.isArray() ? cellsOf(given as ArrayValueObject) : [[given]];
  const cells = rows.flat();
  const error = cells.find((cell) => cell?.isError());
  if (error) return { error: error as ErrorValueObject };
  if (parameter.dimensionality === "matrix") {
    return rows.map((row) => Array.from(row, (cell) => plain(cell)));
  }
  return cells.length === 1 ? readCell(parameter, cells[0]) : { unreadable: parameter };
}

/** The value itself, or the cell of a reference to one: what nearly all arguments are, without making a list of it. */
function singleCell(given: BaseValueObject): Nullable<BaseValueObject> {
  if (!given.isArray()) return given;
  const array = given as ArrayValueObject;
  return array.getRowCount() === 1 && array.getColumnCount() === 1 ? array.getArrayValue()[0]?.[0] : undefined;
}

function readCell(parameter: ParameterMetadata, cell: Nullable<BaseValueObject>): unknown {
  if (cell?.isError()) return { error: cell as ErrorValueObject };
  const value = converted(parameter.type, plain(cell));
  return value === undefined ? { unreadable: parameter } : value;
}

/**
 * The rows of an array with every cell in its place. The engine writes a blank cell out, and leaves a hole only where
 * a comparison does not hold.
 */
function cellsOf(array: ArrayValueObject): Nullable<BaseValueObject>[][] {
  const given = array.getArrayValue();
  return Array.from({ length: array.getRowCount() }, (_, row) =>
    Array.from({ length: array.getColumnCount() }, (_, column) => given[row]?.[column]),
  );
}

function plain(cell: Nullable<BaseValueObject>): unknown {
  if (!cell) return false;
  return cell.isNull() ? null : cell.getValue();
}

/** The host turns a value into the kind that the parameter asks for, or gives up: undefined. */
function converted(type: string | undefined, value: unknown): unknown {
  if (value === null) return null;
  if (type === "number") {
    const number = typeof value === "string" && value.trim() === "" ? Number.NaN : Number(value);
    return Number.isNaN(number) ? undefined : number;
  }
  if (type === "string") return typeof value === "boolean" ? String(value).toUpperCase() : String(value);
  if (type === "boolean") return typeof value === "string" ? undefined : Boolean(value);
  return value;
}
