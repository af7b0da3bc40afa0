import { adjustedTotal } from "./adjustedTotal";
import { blanks, emptyFactor } from "./blanks";
import { dateAsLength } from "./dateAsLength";
import { density } from "./density";
import { depthSense, depthUnit } from "./depth";
import { emptyRow } from "./emptyRow";
import { errors } from "./errors";
import { missing } from "./missing";
import { sliding, typedOver, unlike } from "./neighbors";
import { numberAsText } from "./numberAsText";
import { marginAsMarkup, priceUnderCost } from "./price";
import { buriedRate, exampleRate } from "./rates";
import { overlapSense, payload, proportion } from "./ratios";
import { roundedDown } from "./roundedDown";
import type { Rule } from "./rule";
import { sameBed } from "./sameBed";
import { shortSum } from "./shortSum";
import { doubleCount, hiddenInTotal } from "./totals";
import { argumentUnit, unitFactor } from "./units";
import { wholePercent } from "./wholePercent";

/** All rules, in three kinds: typing error, units and sense, and what may be missing. */
export const rules: readonly Rule[] = [
  typedOver,
  unlike,
  shortSum,
  doubleCount,
  adjustedTotal,
  emptyRow,
  numberAsText,
  dateAsLength,
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
