import { columnLetters } from "../../spreadsheet/areas";
import { isTyped } from "./columnFacts";
import { fillColumn } from "./fillColumn";
import type { CellChange, Filling, ListWish } from "./filling";
import type { FittedColumn } from "./fitColumns";
import { type ListFit, settleColumns } from "./fitList";
import { judgeRows } from "./listRows";
import { listSetting, neededColumns } from "./listSetting";
import { freeColumns, isMerged } from "./place";
import { results } from "./results";
import { isResult, type ResultRole, type Role } from "./roles";
import { assumptions } from "./says";
import type { ListSetting, ReadColumn } from "./setting";
import { wantedResults } from "./wanted";

/** Works out what would be written into a list. Nothing is asked of the host. */
export function fillList(fit: ListFit, wish: ListWish): Filling {
  const { cells, heading, rows } = fit;
  const fitted = settleColumns(fit.columns, wish.corrections);
  const byRole = new Map(fitted.flatMap((one) => (one.role ? [[one.role, one] as const] : [])));
  const filled = new Set(
    [...byRole].flatMap(([role, { facts }]) => (isResult(role) && facts.filled > 0 ? [role] : [])),
  );
  const givenBefore = listSetting(fit, byRole, wish.assumed, filled);
  // What is to be written anew cannot be what it is worked out from.
  const given = new Set([...filled].filter((role) => !wish.results.includes(role) || isTyped(byRole.get(role)!.facts)));
  const wanted = wantedResults(wish.results, givenBefore, given);

  const fresh = wanted.results.filter(({ role }) => !byRole.has(role));
  const place = freeColumns(fit, fresh.length);
  if (place === undefined) {
    return {
      columns: [],
      beds: [],
      skipped: [],
      changes: [],
      assumes: [],
      troubles: ["The sheet has no room for new columns."],
    };
  }
  const columns = new Map<Role, ReadColumn>(givenBefore.columns);
  fresh.forEach(({ role }, index) => {
    columns.set(role, { column: place + index, hasText: false, hasPercents: false });
  });
  const shown = new Set([...filled, ...wanted.results.map(({ role }) => role)]);
  const made: ListSetting = { ...givenBefore, columns, shown };

  const judged = judgeRows(
    cells,
    heading,
    rows,
    neededColumns(
      wanted.results.map(({ role }) => role),
      made,
      given,
      byRole,
    ),
  ).map((row) => {
    const merged =
      row.kind === "bed" &&
      wanted.results.some(({ role }) => isMerged(cells.sheet, row.row, columns.get(role)!.column));
    return merged ? ({ ...row, kind: "note", why: "merged cells stand in the way" } as const) : row;
  });
  const beds = judged.filter(({ kind }) => kind === "bed");
  const changes: CellChange[] = [];
  const done = wanted.results.map(({ role, isAdded }) => {
    return fillColumn(
      { fit, wish, made, beds, changes, headings: headingsOf(fitted, fresh, place) },
      role,
      isAdded,
      byRole.get(role),
    );
  });
  return {
    columns: done,
    beds,
    skipped: judged.filter(({ kind }) => kind !== "bed"),
    // Without a bed there is nothing to head.
    changes: beds.length > 0 ? changes : [],
    troubles: wanted.troubles,
    assumes: assumptions(
      made,
      fitted,
      wanted.results.map(({ role }) => role),
      beds,
    ),
  };
}

function headingsOf(
  fitted: readonly FittedColumn[],
  fresh: readonly { readonly role: ResultRole }[],
  place: number,
): Map<string, string> {
  return new Map([
    ...fitted.map(({ column, heading }) => [columnLetters(column), heading] as const),
    ...fresh.map(({ role }, index) => [columnLetters(place + index), results[role].heading] as const),
  ]);
}
