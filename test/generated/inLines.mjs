/**
 * A table as JSON that is compact and still shows in a diff what changed: each entry of its lists on a line of its own.
 *
 * @param {Readonly<Record<string, unknown>>} table
 */
export function inLines(table) {
  const parts = Object.entries(table).map(([key, part]) => {
    const entries = Array.isArray(part)
      ? part.map((entry) => JSON.stringify(entry))
      : Object.entries(Object(part)).map(([name, entry]) => `${JSON.stringify(name)}: ${JSON.stringify(entry)}`);
    const [open, close] = Array.isArray(part) ? "[]" : "{}";
    return `${JSON.stringify(key)}: ${open}\n${entries.join(",\n")}\n${close}`;
  });
  return `{\n${parts.join(",\n")}\n}\n`;
}
