import { HELP_FOLDER } from "../screens";

/** A page of the help, as the build lists it in help/contents.json. */
export interface HelpPage {
  readonly address: string;
  readonly title: string;
  readonly about: string;
}

export interface HelpGroup {
  readonly title: string;
  readonly pages: readonly HelpPage[];
}

/** Fetches the list of the help's pages. They are asked for by addresses of their own place, so nothing leaves it. */
export async function fetchContents(): Promise<readonly HelpGroup[]> {
  const response = await fetch(`${HELP_FOLDER}contents.json`);
  if (!response.ok) throw new Error(`The list of the help's pages came back with status ${response.status}.`);
  return response.json();
}

/**
 * The pages that hold every word of what is looked for, in their title, what they are about, or their group's title.
 * Capitals do not matter, and nothing looked for is everything.
 *
 * @example found(groups, "stone weigh") // BED.STONE_DENSITY, "Weight of a kind of stone"
 */
export function found(groups: readonly HelpGroup[], looked: string): HelpGroup[] {
  const words = looked.toLowerCase().split(/\s+/).filter(Boolean);
  return groups.flatMap(({ title, pages }) => {
    const fitting = pages.filter((page) => {
      const text = `${title} ${page.title} ${page.about}`.toLowerCase().replaceAll("_", " ");
      return words.every((word) => text.includes(word.replaceAll("_", " ")));
    });
    return fitting.length > 0 ? [{ title, pages: fitting }] : [];
  });
}
