import { readAddress, sheetColumns, sheetRows, writeAddress } from "../grid/a1";
import { isWithinSheet } from "../grid/geometry";
import type { Area } from "../grid/port";
import { refuse } from "./error";
import type { HostSession } from "./session";

/**
 * Lets an area through if it lies on the sheet.
 *
 * @throws HostError with the host's code for an argument that is none.
 */
export function onSheet(area: Area): Area {
  if (
    !isWithinSheet(area) ||
    !Object.values(area).every((value) => typeof value === "string" || Number.isInteger(value))
  )
    throw refuse("InvalidArgument");
  return area;
}

export function wholeSheet(sheetId: string): Area {
  return { sheetId, row: 0, column: 0, rowCount: sheetRows, columnCount: sheetColumns };
}

/**
 * Reads an address on a sheet; a defined name will do as well.
 *
 * @throws HostError where it is neither, or names another sheet.
 */
export function areaAt(session: HostSession, sheetId: string, address: string): Area {
  const read = readAddress(address);
  if (read) {
    const own = session.grid.sheets.list().find((sheet) => sheet.id === sheetId)?.name;
    if (read.sheetName !== undefined && read.sheetName.toLowerCase() !== own?.toLowerCase()) {
      throw refuse("InvalidArgument");
    }
    return onSheet({ sheetId, ...read.rectangle });
  }
  const name = session.grid.names.list().find((item) => item.name.toLowerCase() === address.toLowerCase());
  const area = name && areaOfReference(session, name.formula);
  if (!area) throw refuse("InvalidArgument");
  return area;
}

/** The area that a formula such as `=Jobs!$A$1:$B$2` refers to, or nothing where it refers to none. */
export function areaOfReference(session: HostSession, formula: string): Area | undefined {
  const read = readAddress(formula.replace(/^=/, ""));
  const sheet = session.grid.sheets.list().find(({ name }) => name.toLowerCase() === read?.sheetName?.toLowerCase());
  return read && sheet && { sheetId: sheet.id, ...read.rectangle };
}

/** The address of an area with its sheet's name before it. */
export function addressOf(session: HostSession, area: Area): string {
  const sheet = session.grid.sheets.list().find(({ id }) => id === area.sheetId);
  if (!sheet) throw refuse("ItemNotFound");
  return writeAddress(sheet.name, area);
}
