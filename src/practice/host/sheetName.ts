import { refuse } from "./error";
import type { HostSession } from "./session";

const longestName = 31;

/**
 * Lets a sheet's name through by the host's rules: 1 to 31 characters, none of \ / ? * [ ] :, no apostrophe at either
 * end, and no other sheet of that name, in capitals or not.
 *
 * @param own The sheet that is to be named, which may keep its own name.
 * @throws HostError with the host's code where it cannot be taken.
 */
export function checkSheetName(session: HostSession, name: string, own?: string): void {
  const isBad = name.length === 0 || name.length > longestName || /[\\/?*[\]:]/.test(name) || /^'|'$/.test(name);
  if (isBad) throw refuse("InvalidArgument");
  const others = session.grid.sheets.list().filter(({ id }) => id !== own);
  if (others.some((sheet) => sheet.name.toLowerCase() === name.toLowerCase())) throw refuse("ItemAlreadyExists");
}

/** The next free name of the kind Sheet1, Sheet2, as the host gives to a sheet without one. */
export function freeSheetName(session: HostSession): string {
  const taken = new Set(session.grid.sheets.list().map(({ name }) => name.toLowerCase()));
  let number = taken.size + 1;
  while (taken.has(`sheet${number}`)) number += 1;
  return `Sheet${number}`;
}
