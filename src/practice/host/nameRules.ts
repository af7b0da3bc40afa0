/** What the host takes for a name: it starts with a letter, _ or \, and is shaped like no reference. */
const namePattern = /^[\p{L}_\\][\p{L}\p{N}_.\\]*$/u;
const cellPattern = /^([a-z]{1,3}\d+|r\d*c?\d*|c\d*)$/i;
const longestName = 255;

/** Whether the host takes this as a name for cells or for a table. */
export function isNameAllowed(name: string): boolean {
  return name.length <= longestName && namePattern.test(name) && !cellPattern.test(name);
}
