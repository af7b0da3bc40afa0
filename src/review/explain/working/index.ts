import { digging } from "./digging";
import type { Working } from "./figures";
import { measuring } from "./measuring";
import { money } from "./money";
import { stone } from "./stone";
import { supplies } from "./supplies";

/**
 * How each function that gives one number comes to it, by its name without the namespace. A contract test holds
 * every answer against the function's own.
 */
export const workings: Readonly<Record<string, Working>> = {
  ...measuring,
  ...digging,
  ...supplies,
  ...stone,
  ...money,
};
