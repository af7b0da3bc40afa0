import type { Associations } from "./associations";
import { CustomFunctionError, errorCodes } from "./error";
import type { AssociatedFunction } from "./metadata";

/** What `CustomFunctions` offers to an add-in's script. */
export interface CustomFunctionsGlobal {
  associate(idOrMappings: string | Record<string, AssociatedFunction>, call?: AssociatedFunction): void;
  readonly Error: typeof CustomFunctionError;
  readonly ErrorCode: typeof errorCodes;
}

/** Makes the host's `CustomFunctions` global. */
export function createCustomFunctions(associations: Associations): CustomFunctionsGlobal {
  return {
    associate(idOrMappings, call) {
      const mappings = typeof idOrMappings === "string" ? { [idOrMappings]: call } : idOrMappings;
      for (const [id, one] of Object.entries(mappings)) {
        if (typeof one !== "function") throw new TypeError(`CustomFunctions.associate: ${id} is given no function.`);
        associations.add(id, one);
      }
    },
    Error: CustomFunctionError,
    ErrorCode: errorCodes,
  };
}
