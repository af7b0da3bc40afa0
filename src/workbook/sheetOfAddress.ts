/**
 * The sheet of an address that the host gives.
 *
 * @example sheetOfAddress("'Our rates'!B5") // "Our rates"
 */
export function sheetOfAddress(address: string): string {
  const sheet = address.slice(0, Math.max(0, address.lastIndexOf("!")));
  return /^'.*'$/s.test(sheet) ? sheet.slice(1, -1).replaceAll("''", "'") : sheet;
}
