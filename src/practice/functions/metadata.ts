/** One argument, as the host's metadata file describes it. */
export interface ParameterMetadata {
  readonly name: string;
  readonly description?: string;
  readonly type?: string;
  readonly dimensionality?: "scalar" | "matrix";
  readonly optional?: boolean;
  readonly repeating?: boolean;
}

/** One worksheet function, as the host's metadata file describes it. */
export interface FunctionMetadata {
  readonly id: string;
  readonly name: string;
  readonly description?: string;
  readonly parameters: readonly ParameterMetadata[];
}

/** The host's metadata file, `functions.json`. */
export interface FunctionsFile {
  readonly functions: readonly FunctionMetadata[];
}

/** The function that an add-in hands over; what it takes is told by the metadata alone. */
export type AssociatedFunction = (...values: unknown[]) => unknown;
