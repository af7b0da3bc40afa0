/** The host gives colors as #RRGGBB in capitals; the grid also keeps `rgb(1, 2, 3)`. */
export function hostColor(color: string): string {
  const parts = /^rgba?\(\s*(\d+),\s*(\d+),\s*(\d+)/.exec(color);
  if (!parts) return color.toUpperCase();
  const hex = parts.slice(1, 4).map((part) => Number(part).toString(16).padStart(2, "0"));
  return `#${hex.join("")}`.toUpperCase();
}
