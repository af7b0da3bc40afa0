import type { HeadingText } from "./headingText";
import { measuresFit, ownUnit, type Role } from "./roles";
import { KNOWN_THING, roleWords } from "./roleWords";
import type { UnitName } from "./units";

/** Units that alone say what a column holds, where the heading says nothing else of it. */
const byUnit: Readonly<Partial<Record<UnitName, readonly Role[]>>> = {
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
  rolls: ["rolls"],
  pins: ["pins"],
  stakes: ["stakes"],
  boxes: ["boxes"],
  pieces: ["pieces"],
  loads: ["spoilLoads", "deliveries"],
  h: ["hours"],
  "%": ["waste"],
};

/** Headings that say too little: what each of them may mean is asked. */
const vague: readonly (readonly [RegExp, readonly Role[]])[] = [
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

/** What a heading may hold. */
export interface Claims {
  /** Of one strength: several where the heading can be read several ways; none where it says nothing of a bed. */
  readonly roles: readonly Role[];
  /** "plain" where the whole heading says it, "within" where one of its words does, "vague" where it says too little. */
  readonly strength: "plain" | "within" | "vague";
}

const NOTHING: Claims = { roles: [], strength: "vague" };

/**
 * What a heading may hold.
 *
 * @example claimsOf(readHeading("Rock (t)")) // { roles: ["tons"], strength: "plain" }
 */
export function claimsOf(heading: HeadingText): Claims {
  const { words, whole, unit } = heading;
  const named = (unit && byUnit[unit]) ?? [];
  const unsure = vague.find(([pattern]) => pattern.test(words || whole));
  if (unsure && !(words !== "" && named.length === 1)) {
    return { roles: unsure[1].filter((role) => measuresFit(role, words === "" ? undefined : unit)), strength: "vague" };
  }
  if (words === "") return { roles: named, strength: named.length > 1 ? "vague" : "plain" };

  const roles = (Object.keys(roleWords) as Role[]).filter((role) => mayBePer(role, heading));
  const plain = roles.filter((role) => saysPlainly(role, heading));
  if (plain.length > 0) return { roles: narrowed(plain, unit), strength: "plain" };
  const within = roles.filter((role) => {
    const { within, not } = roleWords[role];
    return measuresFit(role, unit) && within?.test(words) && !not?.test(words);
  });
  if (within.length > 0) return { roles: narrowed(within, unit), strength: "within" };
  // "Rock (cu yd)", "Total tons": the unit says what it is, and the words do not contradict.
  if (named.length === 0 || !(KNOWN_THING.test(words) || unsure)) return NOTHING;
  return { roles: named, strength: named.length > 1 ? "vague" : "plain" };
}

/** What is a price or a rate per something is none of that thing. */
function mayBePer(role: Role, { isPer }: HeadingText): boolean {
  return !isPer || role === "stonePrice" || role === "density" || role === "price";
}

function saysPlainly(role: Role, { words, whole, unit }: HeadingText): boolean {
  const { plain } = roleWords[role];
  const all = whole
    .replace(/[^\p{L}\p{N}'"%#$/&+ -]+/gu, " ")
    .replace(/\s+/g, " ")
    .trim();
  if (plain.test(all) || (unit && plain.test(`${words} ${unit}`))) return true;
  return measuresFit(role, unit) && plain.test(words);
}

/** Where several fit, the one whose usual unit the heading names. */
function narrowed(roles: readonly Role[], unit: UnitName | undefined): readonly Role[] {
  const same = unit ? roles.filter((role) => ownUnit(role) === unit) : [];
  return same.length > 0 ? same : roles;
}
