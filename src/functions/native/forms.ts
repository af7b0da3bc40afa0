import * as areas from "./areas";
import * as barrowing from "./barrowing";
import * as dates from "./dates";
import * as digging from "./digging";
import * as edges from "./edges";
import * as edging from "./edging";
import * as fabric from "./fabric";
import * as fabricRolls from "./fabricRolls";
import type { NativeForm, NoNativeForm } from "./form";
import * as prices from "./prices";
import * as stone from "./stone";
import * as tape from "./tape";

const LIST = "it gives a list of rows, as many as the bed asks for";
const PLAN = "the bed is laid out in plan and counted there, which no arithmetic does";
const CUTTING = "the best way to cut is searched for, which no arithmetic does";

/**
 * Every function as ordinary spreadsheet arithmetic, by its id, for people without the add-in; or why it has none.
 * Each gives the same answer as the function for the same cells, and an error where the function gives one.
 */
export const nativeForms: Readonly<Record<string, NativeForm | NoNativeForm>> = {
  FEET: tape.FEET,
  INCHES: tape.INCHES,
  AREA_RECTANGLE: areas.AREA_RECTANGLE,
  AREA_TRIANGLE: areas.AREA_TRIANGLE,
  AREA_ROUND: areas.AREA_ROUND,
  AREA_WIDTHS: areas.AREA_WIDTHS,
  AREA_POINTS: areas.AREA_POINTS,
  EDGE_LENGTH: edges.EDGE_LENGTH,
  EDGE_WIDTHS: edges.EDGE_WIDTHS,
  EDGE_POINTS: edges.EDGE_POINTS,
  DIG_YARDS: digging.DIG_YARDS,
  SPOIL_YARDS: digging.SPOIL_YARDS,
  LOADS: digging.LOADS,
  EDGING_PIECES: edging.EDGING_PIECES,
  STAKES: edging.STAKES,
  FABRIC_STRIPS: fabric.FABRIC_STRIPS,
  FABRIC_AREA: fabric.FABRIC_AREA,
  FABRIC_ROLLS: fabricRolls.FABRIC_ROLLS,
  FABRIC_CUTS: { none: LIST },
  PINS: fabric.PINS,
  PIN_MAP: { none: LIST },
  STONE_DEPTH: stone.STONE_DEPTH,
  STONE_DENSITY: stone.STONE_DENSITY,
  STONE_YARDS: stone.STONE_YARDS,
  STONE_TONS: stone.STONE_TONS,
  STONE_COVERS: stone.STONE_COVERS,
  STONE_BAGS: stone.STONE_BAGS,
  ORDER_UP: stone.ORDER_UP,
  BARROW_TRIPS: barrowing.BARROW_TRIPS,
  HAUL_HOURS: barrowing.HAUL_HOURS,
  CUT_COUNT: { none: CUTTING },
  CUT_LIST: { none: CUTTING },
  LAYOUT: { none: PLAN },
  LAYOUT_WIDTHS: { none: PLAN },
  LAYOUT_RECTANGLE: { none: PLAN },
  LAYOUT_ROUND: { none: PLAN },
  LAYOUT_CUTS: { none: PLAN },
  LAYOUT_PINS: { none: PLAN },
  PRICE_MARKUP: prices.PRICE_MARKUP,
  PRICE_MARGIN: prices.PRICE_MARGIN,
  MARKUP_FOR_MARGIN: prices.MARKUP_FOR_MARGIN,
  DIG_DATE: dates.DIG_DATE,
};
