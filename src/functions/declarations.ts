import { type Declaration, PURPOSES } from "./declare";
import * as declared from "./listed/declared";

/** All there is to know of every worksheet function, by purpose in the order of a job, and by name. */
export const declarations: readonly Declaration[] = Object.values(declared as Record<string, Declaration>).sort(
  (one, other) => PURPOSES.indexOf(one.purpose) - PURPOSES.indexOf(other.purpose) || (one.name < other.name ? -1 : 1),
);
