import { describe } from "vitest";
import * as worksheet from "../../src/functions/index";
import { outside } from "../outside";
import { functionChecks } from "./functions";

/* The worksheet functions against the outside. The checks themselves are in the folder functions. */
describe.each(Object.entries(functionChecks))("%s", (_, checks) => {
  for (const { what, source, compare } of checks) outside(source, what, () => compare(worksheet));
});
