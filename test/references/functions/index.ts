import { checks as areas } from "./areas";
import { checks as digging } from "./digging";
import { checks as layouts } from "./layouts";
import { checks as prices } from "./prices";
import { checks as stone } from "./stone";
import { checks as supplies } from "./supplies";
import { checks as units } from "./units";

/** Every check of a worksheet function, by the file it is in. */
export const functionChecks = { units, areas, digging, stone, supplies, layouts, prices };
