import { tokenize } from "@borgar/fx";
import { NoNative } from "../../functions/native/given";
import { isOfAnAddIn } from "../../xlsx/contents";
import { ownFunction } from "./formula";

/**
 * What a formula must not have in a workbook of its own, beyond references to what stays behind.
 *
 * @throws NoNative in words for the person.
 */
export function refuseElsewhere(formula: string): void {
  for (const { type, value } of tokenize(formula, { mergeRefs: true })) {
    if (type === "func" && value.toUpperCase() === "INDIRECT")
      throw new NoNative("INDIRECT builds its address from text, which may point elsewhere in the copy");
    if (type === "func" && ownFunction(value) === undefined && isOfAnAddIn(value))
      throw new NoNative(`${value} belongs to another add-in`);
    if (type === "operator" && value === "#")
      throw new NoNative("it reads a spilled list, which not every program can");
    if (type === "range_ternary") throw new NoNative(`it reads ${value}, which has no end`);
  }
}
