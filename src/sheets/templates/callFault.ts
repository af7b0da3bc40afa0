import { nativeForms } from "../../functions/native/forms";
import { ownFunction } from "../plain/formula";
import { isOrdinaryFunction } from "./ordinaryFunctions";
import { refusedFunction } from "./refusedFunctions";

/** What files and hosts put before the names of newer functions. */
const PREFIX = /^(?:_xlfn\.|_xlws\.)+/i;

/** A function's name in capitals, without what files put before it. */
export const plainName = (name: string): string => name.replace(PREFIX, "").toUpperCase();

/**
 * Why a template may not call a function, in words that follow the cell's address; undefined where it may.
 *
 * @param name as it is in the formula.
 * @example callFault("WEBSERVICE") // "calls WEBSERVICE, which reaches out to the web"
 */
export function callFault(name: string): string | undefined {
  const own = ownFunction(name);
  if (own !== undefined) {
    return Object.hasOwn(nativeForms, own)
      ? undefined
      : `calls ${short(name)}, which this version of the add-in doesn't have`;
  }
  const plain = plainName(name);
  if (isOrdinaryFunction(plain)) return undefined;
  const reason = refusedFunction(plain);
  if (reason) return `calls ${short(plain)}, ${reason}`;
  return `calls ${short(plain)}, which isn't an ordinary function or one of this add-in's`;
}

const short = (name: string): string => (name.length > 40 ? `${name.slice(0, 40)}…` : name);
