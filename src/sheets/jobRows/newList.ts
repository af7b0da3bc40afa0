import type { RateKey } from "../../quantities/bed/rates";
import { EDGING_KINDS } from "../../quantities/edgingKinds";
import { SOLD_BY } from "../../quantities/soldBy";
import type { Anchor } from "../../spreadsheet/areas";
import { compose, type DraftCell } from "../compose";
import { NO_RATE } from "../estimate/rateFormulas";
import { choicesThatFit, type FormatName, type LookName, type Plan } from "../plan";
import { named, typed } from "../typed";
import type { ProductNames } from "./listSheet";
import { lacksList } from "./products";
import { resultFormula, results } from "./results";
import { type InputRole, inputLabels, isResult, NAME_ROLES, type ResultRole, type Role } from "./roles";
import { type Assumed, type ListSetting, type ReadColumn, rate } from "./setting";
import { wantedResults } from "./wanted";

/** The first bed of a new list, as typed. */
export interface FirstBed {
  readonly job: string;
  readonly bed: string;
  readonly length: string;
  readonly width: string;
}

/** What a new list is to be. */
export interface NewListOptions {
  readonly first: FirstBed;
  readonly assumed: Assumed;
  /** In the order of their columns. */
  readonly results: readonly ResultRole[];
  readonly rates: ReadonlySet<RateKey>;
  readonly weighsStone: boolean;
  readonly stonesHaveUnits?: boolean;
  readonly stonesHaveSteps?: boolean;
  /** Offered to choose from in the column of stone. */
  readonly stones: readonly string[];
  /** Columns for what differs by bed, beside those that each list has. */
  readonly more?: readonly MoreRole[];
  /** The names in the office's lists, for columns of products. */
  readonly products?: ProductNames;
}

/** Columns that a new list can have for what differs by bed, in their order. */
export const moreRoles = [
  "soldBy",
  "edgingKind",
  "edgingProduct",
  "fabricProduct",
] as const satisfies readonly InputRole[];
export type MoreRole = (typeof moreRoles)[number];

/** Those that an office can fill: products need its lists. */
export const moreRolesOf = (products: ProductNames = {}): readonly MoreRole[] =>
  moreRoles.filter((role) => !lacksList(role, products));

interface InputColumn {
  readonly role: InputRole;
  readonly heading: string;
  readonly width: number;
  readonly format?: FormatName;
}

/** All, in their order; a list has those of `moreRoles` where they are wanted. */
const inputColumns: readonly InputColumn[] = [
  { role: "job", heading: "Job", width: 18 },
  { role: "bed", heading: "Bed", width: 18 },
  { role: "length", heading: "Length, ft", width: 13 },
  { role: "width", heading: "Width, ft", width: 13 },
  { role: "radius", heading: "Corner radius, ft", width: 20 },
  { role: "corners", heading: "Rounded corners", width: 19 },
  { role: "depth", heading: "Depth, in", width: 13 },
  { role: "stone", heading: "Stone", width: 18 },
  ...moreRoles.map((role): InputColumn => ({ role, heading: inputLabels[role], width: 18 })),
  { role: "waste", heading: "Waste", width: 10, format: "share" },
];

/** What the table is called where the host has tables; a number is added where the name is taken. */
const TABLE_NAME = "Bed_list";
const NARROWEST = 8;
/** Bold letters are wider than a column counts them, and a table puts a button beside them. */
const HEADING_ROOM = 5;

/** Which results a new list gets: those asked for, with those that they rest on, and why others are left out. */
export function newListResults(options: NewListOptions) {
  return wantedResults(options.results, settingOf(options, [], { row: 0, column: 0 }), new Set());
}

/**
 * A heading row and the first bed below it: typed cells, and formulas that copy down. As a table where the host has
 * tables. Its headings are read back by the fitting of columns.
 */
export function newList(options: NewListOptions, at: Anchor): Plan {
  const roles = newListResults(options).results.map(({ role }) => role);
  const setting = settingOf(options, roles, at);
  const columns: readonly Role[] = [...inputsOf(options), ...roles];
  const headings = columns.map((role): DraftCell => ({ content: headingOf(role), look: headingLook(role) }));
  const first = columns.map((role): DraftCell => {
    if (!isResult(role)) return inputCell(options, setting, role);
    const { format } = results[role];
    return { content: resultFormula(setting, role, at.row + 1), format, look: "result" };
  });
  const widths = columns.map((role) =>
    Math.max(NARROWEST, inputOf(role)?.width ?? headingOf(role).length + HEADING_ROOM),
  );
  const plan = compose("list of beds", [{ look: "section", cells: headings }, { cells: first }], widths, at);
  return {
    ...plan,
    table: { name: TABLE_NAME, area: { row: 0, column: 0, rows: 2, columns: columns.length } },
  };
}

function settingOf(options: NewListOptions, roles: readonly ResultRole[], at: Anchor): ListSetting {
  const { assumed, rates, weighsStone, stonesHaveUnits = false, stonesHaveSteps = false, products } = options;
  const columns = new Map<Role, ReadColumn>();
  [...inputsOf(options), ...roles].forEach((role, index) => {
    columns.set(role, { column: at.column + index, hasText: true, hasPercents: false });
  });
  for (const role of ["depth", "scrape"] as const) {
    const column = columns.get(role);
    if (column) columns.set(role, { ...column, unit: "in" });
  }
  return {
    ...{ columns, shown: new Set(roles), assumed, rates, weighsStone, stonesHaveUnits, stonesHaveSteps },
    ...(products && { products }),
  };
}

/** The columns that are typed. */
const inputsOf = ({ more = [], products }: NewListOptions): InputRole[] => {
  const offered = moreRolesOf(products).filter((role) => more.includes(role));
  return inputColumns.map(({ role }) => role).filter((role) => !isMore(role) || offered.includes(role));
};

const isMore = (role: InputRole): role is MoreRole => (moreRoles as readonly InputRole[]).includes(role);

/** What the cell of a column offers to choose from. */
function choicesOf({ stones, products = {} }: NewListOptions, role: InputRole): readonly string[] | undefined {
  const names: Readonly<Partial<Record<InputRole, readonly string[] | undefined>>> = {
    stone: stones,
    soldBy: SOLD_BY.map(({ name }) => name),
    edgingKind: EDGING_KINDS.map(({ name }) => name),
    edgingProduct: products.edging,
    fabricProduct: products.fabric,
  };
  return names[role];
}

function inputCell(options: NewListOptions, setting: ListSetting, role: InputRole): DraftCell {
  const { first, assumed } = options;
  const choices = choicesOf(options, role);
  const content: Readonly<Partial<Record<InputRole, string | number>>> = {
    job: named(first.job),
    bed: named(first.bed),
    length: typed(first.length),
    width: typed(first.width),
    radius: 0,
    corners: 0,
    depth: assumed.depthIn,
    stone: named(assumed.stone),
    waste: assumed.waste ?? usualWaste(setting),
  };
  const format = inputOf(role)?.format;
  return {
    content: content[role] ?? "",
    look: isName(role) ? "inputWords" : "input",
    ...(format && { format }),
    ...(choices && choices.length > 0 && { choices: choicesThatFit(choices) }),
    ...(role === "waste" && { warnWhen: `={self}="${NO_RATE}"` }),
  };
}

/** The office's rate as a formula, or the usual share. */
function usualWaste(setting: ListSetting): string | number {
  const waste = rate(setting, "waste", true);
  return setting.rates.has("waste") ? `=${waste}` : Number(waste);
}

const inputOf = (role: Role) => inputColumns.find((one) => one.role === role);
const headingOf = (role: Role) => (isResult(role) ? results[role].heading : (inputOf(role)?.heading ?? ""));
const isName = (role: Role) => (NAME_ROLES as readonly Role[]).includes(role);
const headingLook = (role: Role): LookName => (isName(role) ? "textHeading" : "numberHeading");
