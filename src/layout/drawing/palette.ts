/**
 * The colors of the drawings. Every pair that has to be told apart also differs in lightness or in form (dots, hatch,
 * bands, outlines), so that a black-and-white print and eyes that see few colors read the same.
 */
export interface Palette {
  readonly paper: string;
  readonly ink: string;
  /** Dimensions and other second things. */
  readonly soft: string;
  /** Strips in turn. */
  readonly fabric: string;
  readonly otherFabric: string;
  readonly border: string;
  readonly stone: string;
  readonly soil: string;
  readonly lawn: string;
}

/** "auto" follows the reader's screen; a print is always "light". */
export type Theme = "light" | "dark" | "auto";

const LIGHT: Palette = {
  paper: "#ffffff",
  ink: "#15232d",
  soft: "#4a5f6d",
  fabric: "#f1efe6",
  otherFabric: "#dedbcd",
  border: "#6b3410",
  stone: "#c9d3d8",
  soil: "#b79a78",
  lawn: "#6f8f4e",
};

const DARK: Palette = {
  paper: "#182026",
  ink: "#f0f4f6",
  soft: "#b4c3cd",
  fabric: "#3a4038",
  otherFabric: "#50564b",
  border: "#f0a260",
  stone: "#5d6d77",
  soil: "#6d563b",
  lawn: "#93b46d",
};

/** Colors as attributes take them; with "auto" they are variables that the style below sets. */
export function paletteOf(theme: Theme): Palette {
  if (theme !== "auto") return theme === "dark" ? DARK : LIGHT;
  const variables = Object.keys(LIGHT).map((name) => [name, `var(--bed-${name})`]);
  return Object.fromEntries(variables) as unknown as Palette;
}

/** The style that gives the variables their colors in the drawing of this id; nothing for a fixed theme. */
export function themeStyle(theme: Theme, id: string): string {
  if (theme !== "auto") return "";
  const set = (palette: Palette) =>
    `#${id}{${Object.entries(palette)
      .map(([name, color]) => `--bed-${name}:${color}`)
      .join(";")}}`;
  return `<style>${set(LIGHT)}@media (prefers-color-scheme:dark){${set(DARK)}}</style>`;
}
