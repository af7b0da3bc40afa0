import type { Plan } from "../sheets/plan";
import type { Obstacle } from "./place";

/** Whether plans bring names that the workbook may have already. */
export function bringsNames(plans: readonly Plan[]): boolean {
  return plans.some(({ names = [], table }) => names.length > 0 || table !== undefined);
}

/** The names of the workbook and of its tables, which share one list; readable after a sync. */
export function queueTakenNames(context: Excel.RequestContext, plans: readonly Plan[]) {
  // Nothing is asked for where the plans bring no names.
  if (!bringsNames(plans)) return { obstacles: (): Obstacle[] => [], freeTableNames: (): undefined[] => [] };
  const { names, tables } = context.workbook;
  names.load("items/name,items/formula");
  tables.load("items/name");
  const standing = () => [
    ...names.items.map(({ name, formula }) => ({ name, where: `${name} (${String(formula).replace(/^=/, "")})` })),
    ...tables.items.map(({ name }) => ({ name, where: `${name} (a table)` })),
  ];
  return {
    /** The names of the plans that stand for something already. */
    obstacles: (): Obstacle[] => {
      const there = new Map(standing().map(({ name, where }) => [name.toLowerCase(), where]));
      return plans.flatMap(({ names: wanted = [] }) =>
        wanted.flatMap(({ name }) => {
          const where = there.get(name.toLowerCase());
          return where ? [{ what: "name" as const, where }] : [];
        }),
      );
    },
    /** For each plan with a table a name that nothing has: `Job_rows`, `Job_rows2`, … */
    freeTableNames: (): (string | undefined)[] => {
      const taken = new Set(standing().map(({ name }) => name.toLowerCase()));
      for (const { names: wanted = [] } of plans) for (const { name } of wanted) taken.add(name.toLowerCase());
      return plans.map(({ table }) => {
        if (!table) return undefined;
        let name = table.name;
        for (let number = 2; taken.has(name.toLowerCase()); number += 1) name = `${table.name}${number}`;
        taken.add(name.toLowerCase());
        return name;
      });
    },
  };
}
