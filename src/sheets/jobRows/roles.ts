import { listUnits, type Measure, type UnitName } from "./units";

/** What a column holds that formulas read. */
export const inputRoles = {
  job: { label: "Job", measures: undefined },
  bed: { label: "Bed", measures: undefined },
  length: { label: "Length", measures: "length" },
  lengthInches: { label: "Length, inches beside the feet", measures: "length" },
  width: { label: "Width", measures: "length" },
  widthInches: { label: "Width, inches beside the feet", measures: "length" },
  radius: { label: "Corner radius", measures: "length" },
  corners: { label: "Rounded corners", measures: undefined },
  depth: { label: "Stone depth", measures: "length" },
  scrape: { label: "Scrape depth", measures: "length" },
  stone: { label: "Kind of stone", measures: undefined },
  waste: { label: "Waste", measures: "share" },
} as const satisfies Readonly<Record<string, { label: string; measures: Measure | undefined }>>;

export type InputRole = keyof typeof inputRoles;

/** What a column can hold that formulas give, with the unit that they give it in; area and border may also be typed. */
export const resultRoles = {
  area: { label: "Area", unit: "sq ft" },
  border: { label: "Border run", unit: "ft" },
  pieces: { label: "Border pieces", unit: "pieces" },
  stakes: { label: "Extra stakes", unit: "stakes" },
  yards: { label: "Stone, cu yd", unit: "cu yd" },
  density: { label: "Stone, tons a cu yd", unit: undefined },
  tons: { label: "Stone, tons", unit: "tons" },
  order: { label: "Stone to order, tons", unit: "tons" },
  rolls: { label: "Fabric rolls", unit: "rolls" },
  pins: { label: "Pins", unit: "pins" },
  boxes: { label: "Boxes of pins", unit: "boxes" },
  dig: { label: "Dig, cu yd in the ground", unit: "cu yd" },
  spoilLoads: { label: "Spoil loads", unit: "loads" },
  deliveries: { label: "Stone deliveries", unit: "loads" },
  hours: { label: "Crew hours", unit: "h" },
  stonePrice: { label: "Stone price a ton", unit: undefined },
  materialCost: { label: "Material cost", unit: undefined },
  laborCost: { label: "Labor cost", unit: undefined },
  haulingCost: { label: "Hauling cost", unit: undefined },
  price: { label: "Price before tax", unit: undefined },
} as const satisfies Readonly<Record<string, { label: string; unit: UnitName | undefined }>>;

export type ResultRole = keyof typeof resultRoles;
export type Role = InputRole | ResultRole;

export const isResult = (role: Role): role is ResultRole => role in resultRoles;

export function roleLabel(role: Role): string {
  return isResult(role) ? resultRoles[role].label : inputRoles[role].label;
}

/** What a role's column is measured in; undefined for names, counts without a unit, and money. */
export function measureOf(role: Role): Measure | undefined {
  if (!isResult(role)) return inputRoles[role].measures;
  const { unit } = resultRoles[role];
  return unit && listUnits[unit].measures;
}

/** The unit that is taken where a heading names none. */
export function ownUnit(role: Role): UnitName | undefined {
  if (isResult(role)) return resultRoles[role].unit;
  if (role === "depth" || role === "scrape" || role === "lengthInches" || role === "widthInches") return "in";
  return inputRoles[role].measures === "length" ? "ft" : undefined;
}

/** Whether a role's column could be in a unit. */
export function measuresFit(role: Role, unit: UnitName | undefined): boolean {
  if (!unit) return true;
  const measure = measureOf(role);
  const { measures } = listUnits[unit];
  if (measure === "count" || role === "corners") {
    return measures === "count" && (unit === "each" || unit === ownUnit(role));
  }
  return measure === measures;
}
