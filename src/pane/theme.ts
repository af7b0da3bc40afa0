/** Follows the host's own theme where it tells it; elsewhere the page itself follows the system's. */
export function followTheme(): void {
  const background = Office.context?.officeTheme?.bodyBackgroundColor;
  const dark = document.querySelector<HTMLLinkElement>("link#dark");
  if (background && dark) dark.media = isDark(background) ? "all" : "not all";
}

/** Whether a color such as `#262626` is dark: its relative luminance is under that of middle gray. */
export function isDark(hex: string): boolean {
  const [red = 255, green = 255, blue = 255] =
    hex.match(/[0-9a-f]{2}/gi)?.map((pair) => Number.parseInt(pair, 16)) ?? [];
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue < 128;
}
