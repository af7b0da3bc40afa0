import { type FittedColumn, holdsPercents } from "./fitColumns";
import type { ListFit } from "./fitList";
import type { NeededColumns } from "./listRows";
import { results } from "./results";
import { type ResultRole, type Role, roleLabel } from "./roles";
import { type Assumed, type ListSetting, type ReadColumn, rateKeysOf } from "./setting";

/** The setting of a list as it stands: which columns formulas can read. */
export function listSetting(
  fit: ListFit,
  byRole: ReadonlyMap<Role, FittedColumn>,
  assumed: Assumed,
  shown: ReadonlySet<ResultRole>,
): ListSetting {
  const columns = new Map<Role, ReadColumn>();
  for (const [role, { column, unit, facts }] of byRole) {
    columns.set(role, {
      column,
      ...(unit && { unit }),
      hasText: facts.tape + facts.otherTexts.length > 0,
      hasPercents: role === "waste" && holdsPercents({ ...(unit && { unit }), facts }),
    });
  }
  const { sheet } = fit.cells;
  return { columns, shown, assumed, rates: rateKeysOf(sheet.names), weighsStone: sheet.weighsStone };
}

/** What a bed must have filled, for what is wanted. */
export function neededColumns(
  roles: readonly ResultRole[],
  { columns, assumed }: ListSetting,
  given: ReadonlySet<ResultRole>,
  byRole: ReadonlyMap<Role, FittedColumn>,
): NeededColumns {
  const wants = new Set(roles.map((role) => results[role].needs));
  const must = new Set<Role>();
  const sides = () => must.add("length").add("width");
  if (wants.has("sides")) sides();
  if (wants.has("area")) given.has("area") ? must.add("area") : sides();
  if (wants.has("border")) {
    if (given.has("border")) must.add("border");
    else if (assumed.shortBorders > 0) sides();
    else must.add("length");
  }
  if (must.size === 0) must.add(byRole.has("length") ? "length" : byRole.has("area") ? "area" : "stone");
  const set = [...must].flatMap((role) => {
    const column = columns.get(role);
    if (!column) return [];
    const reads = role === "area" || role === "border" ? "number" : role === "stone" ? "name" : "length";
    return [{ column: column.column, label: roleLabel(role), reads } as const];
  });
  return [set];
}
