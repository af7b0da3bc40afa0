import { conversion } from "../../headings/units";
import { cellAddress } from "../../spreadsheet/areas";
import type { Row } from "./result";
import { results } from "./results";
import { ownUnit, type ResultRole } from "./roles";
import type { ListSetting } from "./setting";

/** The formula of a result in a row, with its "=", in the unit of the column that it goes to. */
export function resultFormula(setting: ListSetting, role: ResultRole, row: number): string {
  const expression = results[role].formula(rowOf(setting, row));
  const [own, unit] = [ownUnit(role), setting.columns.get(role)?.unit];
  const factor = own && unit ? conversion(own, unit) : "";
  return factor === "" ? `=${expression}` : `=${isOneCall(expression) ? expression : `(${expression})`}${factor}`;
}

function rowOf(setting: ListSetting, row: number): Row {
  const at: Row = {
    setting,
    row,
    of: (role) => {
      const column = setting.columns.get(role);
      if (!setting.shown.has(role) || !column) {
        const inside = results[role].formula(at);
        return isOneCall(inside) ? inside : `(${inside})`;
      }
      const [own, { unit }] = [ownUnit(role), column];
      return cellAddress({ row, column: column.column }) + (own && unit ? conversion(unit, own) : "");
    },
  };
  return at;
}

/** Whether an expression is a single call, which needs no brackets around it. */
function isOneCall(expression: string): boolean {
  return /^[A-Z][A-Z_.]*\((?:[^()]|\((?:[^()]|\([^()]*\))*\))*\)$/.test(expression);
}
