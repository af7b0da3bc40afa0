import type { Plan } from "../sheets/plan";
import { areasOfAddresses } from "./areaOfAddress";
import { PLAIN_FORMAT, queueBefore, queueLooksBack } from "./before";
import { queuePlain, queuePlainFont } from "./cellDress";
import { areBlank, contentsAsWritten } from "./contents";

/*
 * Between the look at a place and the write to it, another pane or another person can have written there. The host has
 * no way of holding a place, so the write reads once more what stands there right before it writes, in the same
 * request: what it has covered can be told, and put back.
 */

/** What somebody else had written where a plan was written. */
export interface Stood {
  /** Queues what stood there in the place of what was written over it. Its colour rules are loaded. */
  readonly queueBack: (target: Excel.Range) => void;
}

/** Asks what stands at a place that is written to next; readable after a sync. */
export function queueStood(
  context: Excel.RequestContext,
  target: Excel.Range,
  { choices }: Pick<Plan, "choices">,
): () => Stood | undefined {
  // An object of its own, since what is written to a range counts as read from it.
  const there = target.getResizedRange(0, 0);
  there.load("rowIndex,columnIndex,formulas,values,valueTypes");
  there.conditionalFormats.load("items/id");
  const tables = there.getTables(false);
  tables.load("items/name");
  const merged = there.getMergedAreasOrNullObject();
  merged.load("address");
  const before = queueBefore(context, there);
  const plainFont = queuePlainFont(context);
  const lists = choices.map(({ area }) => {
    const cells = there.getCell(area.row, area.column).getResizedRange(area.rows - 1, area.columns - 1);
    cells.dataValidation.load("type,rule,errorAlert");
    return { area, validation: cells.dataValidation };
  });
  return () => {
    const isBlank = areBlank(there.formulas);
    if (isBlank && merged.isNullObject && tables.items.length === 0) return undefined;
    const rules = there.conditionalFormats.items.map(({ id }) => id);
    return {
      queueBack: (range) => {
        range.unmerge();
        range.clear("Contents");
        for (const rule of range.conditionalFormats.items) if (!rules.includes(rule.id)) rule.delete();
        queuePlain(range, plainFont());
        range.numberFormat = there.formulas.map((cells) => cells.map(() => PLAIN_FORMAT));
        queueLooksBack(range, before.read());
        range.formulas = contentsAsWritten(there);
        for (const { area, validation } of lists) {
          const cells = range.getCell(area.row, area.column).getResizedRange(area.rows - 1, area.columns - 1);
          cells.dataValidation.clear();
          if (validation.type === "None" || !validation.rule) continue;
          cells.dataValidation.rule = validation.rule;
          cells.dataValidation.errorAlert = validation.errorAlert;
        }
        for (const { row, column, rows, columns } of merged.isNullObject ? [] : areasOfAddresses(merged.address)) {
          range
            .getCell(row - there.rowIndex, column - there.columnIndex)
            .getResizedRange(rows - 1, columns - 1)
            .merge();
        }
      },
    };
  };
}
