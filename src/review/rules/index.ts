import { argumentUnit } from "./argumentUnit";
import { blanks } from "./blanks";
import { buriedRate } from "./buriedRate";
import { density } from "./density";
import { depthSense } from "./depthSense";
import { depthUnit } from "./depthUnit";
import { doubleCount } from "./doubleCount";
import { emptyFactor } from "./emptyFactor";
import { errors } from "./errors";
import { exampleRate } from "./exampleRate";
import { hiddenInTotal } from "./hiddenInTotal";
import { marginAsMarkup } from "./marginAsMarkup";
import { missing } from "./missing";
import { numberAsText } from "./numberAsText";
import { overlapSense } from "./overlapSense";
import { payload } from "./payload";
import { priceUnderCost } from "./priceUnderCost";
import { proportion } from "./proportion";
import { roundedDown } from "./roundedDown";
import type { Rule } from "./rule";
import { sameBed } from "./sameBed";
import { shortSum } from "./shortSum";
import { sliding } from "./sliding";
import { typedOver } from "./typedOver";
import { unitFactor } from "./unitFactor";
import { unlike } from "./unlike";
import { wholePercent } from "./wholePercent";

/** All rules, in three kinds: slips of the keys, units and sense, and what may be missing. */
export const rules: readonly Rule[] = [
  typedOver,
  unlike,
  shortSum,
  doubleCount,
  numberAsText,
  errors,
  blanks,
  emptyFactor,
  sliding,
  hiddenInTotal,
  roundedDown,
  wholePercent,
  buriedRate,
  sameBed,
  depthUnit,
  argumentUnit,
  unitFactor,
  density,
  depthSense,
  overlapSense,
  proportion,
  payload,
  priceUnderCost,
  marginAsMarkup,
  missing,
  exampleRate,
];
