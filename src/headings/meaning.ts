import type { Heading } from "./heading";
import { type ColumnRole, columnRoles, KNOWN_THING, lineRoles, type Role, type RoleWords, usualUnit } from "./roles";
import { type UnitName, units } from "./units";

/** Units that alone say what a column holds, where the heading says nothing else of it. */
const byUnit: Readonly<Partial<Record<UnitName, readonly ColumnRole[]>>> = {
  "sq ft": ["area"],
  "sq yd": ["area"],
  "sq m": ["area"],
  "cu yd": ["yards"],
  "cu ft": ["yards"],
  "cu m": ["yards"],
  tons: ["tons"],
  tonnes: ["tons"],
  lb: ["tons"],
  kg: ["tons"],
  "tons/cu yd": ["density"],
  "lb/cu yd": ["density"],
  "lb/cu ft": ["density"],
  rolls: ["rolls"],
  pins: ["pins"],
  stakes: ["stakes"],
  boxes: ["boxes"],
  pieces: ["pieces"],
  loads: ["spoilLoads", "deliveries"],
  hr: ["hours"],
  "%": ["waste"],
};

/** Headings that say too little: what each of them may mean is asked. */
const vague: readonly (readonly [RegExp, readonly ColumnRole[]])[] = [
  [
    /^(size|sizes|dims?|dimensions?|measures?|measurements?|bed size|l ?x ?w|length ?x ?width|side|sides|side [a-d12])$/,
    ["length", "width", "area"],
  ],
  [/^(loads|trips|truck loads|truckloads)$/, ["spoilLoads", "deliveries"]],
  [/^(cost|costs|total cost|our cost)$/, ["materialCost", "price"]],
  [/^(fabric|landscape fabric|weed fabric)$/, ["rolls", "area"]],
  [/^(yards|yds)$/, ["yards", "dig"]],
  [/^(quantity|qty|amount|total|weight)$/, ["tons", "order", "yards"]],
  [/^(height|high)$/, ["depth"]],
  [/^h$/, ["depth", "hours"]],
  [/^t$/, ["tons", "depth"]],
  [/^(feet|ft|inches|in|m|cm|mm|'|")$/, ["length", "width", "depth"]],
];

/** What a heading may mean. */
export interface Meaning {
  /** Of one strength: several where the heading can be read several ways; none where it says nothing of a bed. */
  readonly roles: readonly ColumnRole[];
  /** "plain" where the whole heading says it, "within" where one of its words does, "vague" where it says too little. */
  readonly strength: "plain" | "within" | "vague";
}

const COLUMN_ROLES = Object.keys(columnRoles) as ColumnRole[];
/** What is a price or a rate per something is none of that thing. */
const RATES: readonly ColumnRole[] = ["density", "stonePrice", "price"];
const LINE_ROLES = Object.keys(lineRoles) as (keyof typeof lineRoles)[];

/** Any word of theirs: most labels of a large sheet have none, and then need no closer look. */
const anyOf = (patterns: readonly (RegExp | undefined)[]) =>
  new RegExp(patterns.flatMap((pattern) => pattern?.source ?? []).join("|"));
const COLUMN_WORDS = anyOf(COLUMN_ROLES.map((role) => (columnRoles[role] as RoleWords).within));
const LINE_WORDS = anyOf(LINE_ROLES.map((role) => lineRoles[role].within));

const NOTHING: Meaning = { roles: [], strength: "vague" };

/**
 * What the column of a list of beds may hold, by its heading.
 *
 * @example meaningOf(readHeading("Rock (t)")) // { roles: ["tons"], strength: "plain" }
 */
export function meaningOf(heading: Heading): Meaning {
  const { words, whole, unit, isPer } = heading;
  const named = (unit && byUnit[unit]) ?? [];
  const unsure = vague.find(([pattern]) => pattern.test(words || whole));
  if (unsure && !(words !== "" && named.length === 1)) {
    return { roles: unsure[1].filter((role) => isUnitOf(role, words === "" ? undefined : unit)), strength: "vague" };
  }
  if (words === "") return { roles: named, strength: named.length > 1 ? "vague" : "plain" };

  const roles = isPer ? RATES : COLUMN_ROLES;
  const said = whole
    .replace(/[^\p{L}\p{N}'"%#$/&+ -]+/gu, " ")
    .replace(/\s+/g, " ")
    .trim();
  const withUnit = unit && `${words} ${unit}`;
  const plain = roles.filter((role) => {
    const { plain }: RoleWords = columnRoles[role];
    if (!plain) return false;
    return plain.test(said) || (withUnit && plain.test(withUnit)) || (plain.test(words) && isUnitOf(role, unit));
  });
  if (plain.length > 0) return { roles: narrowed(plain, unit), strength: "plain" };
  const within = (COLUMN_WORDS.test(words) ? roles : []).filter((role) => {
    const { within, not }: RoleWords = columnRoles[role];
    return within?.test(words) && isUnitOf(role, unit) && !not?.test(words);
  });
  if (within.length > 0) return { roles: narrowed(within, unit), strength: "within" };
  // "Rock (cu yd)", "Total tons": the unit says what it is, and the words do not contradict.
  if (named.length === 0 || !(KNOWN_THING.test(words) || unsure)) return NOTHING;
  return { roles: named, strength: named.length > 1 ? "vague" : "plain" };
}

/** Whether a role's column could be in a unit. */
export function isUnitOf(role: ColumnRole, unit: UnitName | undefined): boolean {
  if (!unit || unit === "things") return true;
  const usual = usualUnit(role);
  const { measures } = units[unit];
  if (usual === undefined || measures !== units[usual].measures) return false;
  return measures !== "count" || unit === "each" || unit === "pieces" || unit === usual;
}

/** Where several fit, the one whose usual unit the heading names. */
function narrowed(roles: readonly ColumnRole[], unit: UnitName | undefined): readonly ColumnRole[] {
  const same = unit ? roles.filter((role) => usualUnit(role) === unit) : [];
  return same.length > 0 ? same : roles;
}

/** What the check compares, of all that the columns of a list may hold. */
const COMPARED: ReadonlySet<Role> = new Set<Role>([
  ...(["area", "border", "density", "depth", "length", "pins", "price", "scrape", "stakes"] as const),
  ...(["tons", "waste", "width", "yards"] as const),
]);
/** A price in any of its forms, where nothing narrower is said. */
const PRICE = /\b(price|charge|sell)\b/;

/**
 * What a heading or a label says a cell holds, for a sheet of any shape.
 *
 * @returns the narrowest role where it can be read several ways; undefined where it says nothing of the trade.
 * @example roleOf(readHeading("Trench below the stone, in")) // "trench depth"
 */
export function roleOf(heading: Heading): Role | undefined {
  const { words, whole, unit } = heading;
  // "Spoil loads" is told by its unit.
  const said = words === "" || (unit && units[unit].measures === "count") ? whole : words;
  const lines = (LINE_WORDS.test(said) ? LINE_ROLES : []).filter((role) => lineRoles[role].within.test(said));
  const { roles, strength } = meaningOf(heading);
  // "%" alone may be of anything, "D" may be the fourth bed, and "Extra" any more of anything.
  const isLoose =
    words === ""
      ? unit === "%"
      : (!unit && words.length === 1) || /^(?:extra|add|allowance|loss|shrinkage|contingency)$/.test(words);
  const isTold = strength !== "vague" && !isLoose;
  const told = isTold ? roles.map((role) => (role === "order" && unit ? "tons" : role)) : [];
  const isWide = (role: Role) => role === "quantity" || role === "cost";
  return (
    lines.find((role) => !isWide(role)) ??
    told.find((role) => COMPARED.has(role)) ??
    lines[0] ??
    (PRICE.test(words) ? "price" : undefined)
  );
}
