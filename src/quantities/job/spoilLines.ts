import { must } from "../must";
import { addedUp } from "./addedUp";
import { type Ask, orderOf, ownOf, partsOf } from "./asks";
import type { BedNeeds, OwnQuantity, SpoilNeed } from "./bedNeeds";
import { type LineWithWarnings, lineOf, type OrderedPart } from "./lineOf";
import { type Haul, loadsFor, truckTerms, truckWarnings } from "./truck";

type SpoilOfBed = SpoilNeed & { readonly bed: string };

/** Soil to haul off and to tip: the loose yards of all beds are added, then loaded. */
export function spoilLines(beds: readonly BedNeeds[]): LineWithWarnings[] {
  const all = beds.flatMap(({ name, spoil }) => (spoil ? [{ ...spoil, bed: name }] : []));
  const hauled = partsOf(all.map((spoil) => askOf(spoil, spoil.haul))).map(inLoads);
  const tipped = partsOf(all.flatMap((spoil) => (spoil.dump ? [askOf(spoil, spoil.dump)] : []))).map(inLoads);
  const weightTons = addedUp(all.map(({ yards, tonsPerYard }) => yards * tonsPerYard));
  const isWeighed = all.every(({ tonsPerYard }) => tonsPerYard > 0);
  const warnings = hauled.flatMap(haulsOf).flatMap((haul) => truckWarnings("Haul off", haul));
  const head = { supplier: "hauling", neededUnit: "cu yd", orderUnit: "loads", specification: "soil, loose" } as const;
  const haulLine = lineOf({ ...head, key: "haul", item: "Haul off" }, hauled, isWeighed ? { weightTons } : {});
  const dumpLine = lineOf({ ...head, key: "dump", item: "Dump fee" }, tipped);
  const isWanted = ({ order, needed, bedByBed }: typeof haulLine) => order > 0 || needed > 0 || bedByBed > 0;
  return [
    ...(isWanted(haulLine) ? [{ line: haulLine, warnings: [...new Set(warnings)] }] : []),
    ...(isWanted(dumpLine) ? [{ line: dumpLine, warnings: [] }] : []),
  ];
}

function askOf(spoil: SpoilOfBed, own: OwnQuantity): Ask<SpoilOfBed> {
  return {
    bed: spoil.bed,
    source: spoil,
    needed: spoil.yards,
    own,
    terms: { ...truckTerms(spoil.truck), "weight per cu yd": spoil.tonsPerYard },
  };
}

function inLoads(part: ReturnType<typeof partsOf<SpoilOfBed>>[number]): OrderedPart<SpoilOfBed> {
  return {
    ...part,
    order: orderOf(part, (spoils) => {
      const { tonsPerYard, truck } = must(spoils[0]);
      return loadsFor(addedUp(spoils.map(({ yards }) => yards)), tonsPerYard, truck);
    }),
  };
}

function haulsOf({ joined, beside, order }: OrderedPart<SpoilOfBed>): Haul[] {
  const own = beside.map(({ source, own: { quantity } }) => ({ ...source, loads: quantity }));
  const first = joined[0]?.source;
  if (!first) return own;
  const yards = addedUp(joined.map(({ source }) => source.yards));
  return [{ yards, tonsPerYard: first.tonsPerYard, truck: first.truck, loads: order - ownOf(beside) }, ...own];
}
