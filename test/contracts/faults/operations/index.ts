import type { Operation } from "../operation";
import { changes } from "./changes";
import { drawn } from "./drawn";
import { inserts } from "./inserts";
import { kept } from "./kept";
import { officeSettings } from "./officeSettings";
import { undone } from "./undone";

/** Everything that writes to the workbook, as the rows of the table. */
export const operations: readonly Operation[] = [
  ...inserts,
  ...drawn,
  ...changes,
  ...undone,
  ...kept,
  ...officeSettings,
];
