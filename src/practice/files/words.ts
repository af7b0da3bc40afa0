/** "1 chart", "3 charts", "1,200 cells". */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count.toLocaleString("en-US")} ${count === 1 ? one : many}`;
}

const mostNamed = 4;

/** "Jobs!B2, Jobs!B3 and 5 more". */
export function named(places: readonly string[]): string {
  const shown = places.slice(0, mostNamed);
  const rest = places.length - shown.length;
  if (rest > 0) return `${shown.join(", ")} and ${rest.toLocaleString("en-US")} more`;
  return shown.length > 1 ? `${shown.slice(0, -1).join(", ")} and ${shown.at(-1)}` : (shown[0] ?? "");
}
