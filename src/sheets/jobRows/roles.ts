import { type ColumnRole, usualUnit } from "../../headings/roles";
import { type Measure, type UnitName, units } from "../../headings/units";

export type Role = ColumnRole;

/** What a column holds that formulas read, as it is called on screen. */
export const inputLabels = {
  job: "Job",
  bed: "Bed",
  length: "Length",
  lengthInches: "Length, inches beside the feet",
  width: "Width",
  widthInches: "Width, inches beside the feet",
  radius: "Corner radius",
  corners: "Rounded corners",
  depth: "Stone depth",
  scrape: "Scrape depth",
  stone: "Kind of stone",
  soldBy: "Stone sold by",
  edgingKind: "Edging kind",
  edgingProduct: "Edging product",
  fabricProduct: "Fabric product",
  waste: "Waste",
} as const satisfies Partial<Record<Role, string>>;

export type InputRole = keyof typeof inputLabels;

/** Columns that hold names and no measure. */
export const NAME_ROLES: readonly InputRole[] = [
  ...(["job", "bed", "stone", "edgingKind", "edgingProduct", "fabricProduct", "soldBy"] as const),
];

/** What a column can hold that formulas give; area and border may also be typed. */
export const resultLabels = {
  area: "Area",
  border: "Edging",
  pieceLength: "Edging piece length",
  pieces: "Edging pieces",
  stakesIncluded: "Stakes included per piece",
  stakes: "Extra stakes",
  sand: "Sand to order, cu yd",
  yards: "Stone, cu yd",
  density: "Stone, tons/cu yd",
  tons: "Stone, tons",
  orderSold: "Stone to order, as sold",
  order: "Stone to order, tons",
  rollWidth: "Fabric roll width",
  rollLength: "Fabric roll length",
  rolls: "Fabric rolls",
  pins: "Pins",
  boxes: "Boxes of pins",
  trench: "Trench below the scrape",
  dig: "Dig, cu yd in the ground",
  spoilLoads: "Spoil loads",
  deliveries: "Stone deliveries",
  hours: "Crew hours",
  stonePrice: "Stone price per ton",
  soldPrice: "Stone price, as sold",
  piecePrice: "Edging piece price",
  stakePrice: "Extra stake price",
  rollPrice: "Fabric roll price",
  materialCost: "Material cost",
  laborCost: "Labor cost",
  haulingCost: "Hauling cost",
  price: "Price before tax",
} as const satisfies Record<Exclude<Role, InputRole>, string>;

export type ResultRole = keyof typeof resultLabels;

export const isResult = (role: Role): role is ResultRole => role in resultLabels;

export function roleLabel(role: Role): string {
  return isResult(role) ? resultLabels[role] : inputLabels[role];
}

/** What a role's column is measured in; undefined for names, counts that are typed, rates, and money. */
export function measureOf(role: Role): Measure | undefined {
  const usual = usualUnit(role);
  const measure = usual && units[usual].measures;
  return measure === "money" || measure === "density" || role === "corners" ? undefined : measure;
}

/** The unit that is taken where a heading names none, and that a result is worked out in. */
export function ownUnit(role: Role): UnitName | undefined {
  const measure = measureOf(role);
  return measure === undefined || measure === "share" ? undefined : usualUnit(role);
}

/** The unit that a heading names, where formulas can convert it; undefined for money, rates and what is only counted. */
export function convertible(unit: UnitName | undefined): UnitName | undefined {
  const measure = unit && units[unit].measures;
  return measure === "money" || measure === "density" || unit === "share" || unit === "things" ? undefined : unit;
}
