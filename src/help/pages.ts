import { join } from "node:path";
import { declarations } from "../functions/declarations";
import { PURPOSES } from "../functions/declare";
import { screens } from "../pane/screens";
import { deadLinks, linksOn } from "./deadLinks";
import { faultsPage, readFaults } from "./faultsPage";
import { addressOf, functionPage } from "./functionPage";
import { guidePages } from "./guide";
import { indexPage } from "./indexPage";
import { numbersPage } from "./numbersPage";
import { framed, type Page } from "./page";
import { searchIndex, withPlaces } from "./searchIndex";
import { readMeasured, speedPage } from "./speedPage";

// The build makes the help and functions.json in one go, of one bundle of the declarations.
export { functionsFile } from "../functions/metadata";

/** A page as the pane lists it. */
export interface Listed {
  readonly address: string;
  readonly title: string;
  readonly about: string;
}

/** What the help holds, for the pane's list: the guide first, then the functions by what they are for. */
export type Contents = readonly { readonly title: string; readonly pages: readonly Listed[] }[];

/**
 * Every file of the help but its pictures and its style, by its name within the help's folder.
 *
 * @param root the project's folder.
 * @throws Error naming the links, from page to page or from the pane's screens, that lead nowhere.
 */
export function helpFiles(root: string): Map<string, string> {
  const guide = [
    ...guidePages(join(root, "src/help/guide")),
    numbersPage(),
    faultsPage(readFaults(root)),
    speedPage(readMeasured(root)),
  ];
  const pages = [...guide, ...declarations.map(functionPage)].map(withPlaces);
  const texts = new Map([indexPage(declarations, guide), ...pages].map((page) => [page.address, framed(page, guide)]));
  refuseDeadLinks(texts);
  texts.set("contents.json", JSON.stringify(contentsOf(guide)));
  texts.set("search.json", JSON.stringify(searchIndex(pages.map(withPurpose))));
  return texts;
}

const purposes = new Map(declarations.map(({ name, purpose }) => [addressOf(name), purpose]));

/** What a function is for finds it, too. */
function withPurpose(page: Page): Page {
  const purpose = purposes.get(page.address);
  return purpose ? { ...page, about: `${page.about} ${purpose}.` } : page;
}

function refuseDeadLinks(texts: ReadonlyMap<string, string>): void {
  const fromScreens = Object.values(screens).flatMap(({ guide }) => guide ?? []);
  const sources: [from: string, links: readonly string[]][] = [
    ["a screen of the pane", fromScreens],
    ...[...texts].map(([page, html]): [string, string[]] => [page, linksOn(page, html)]),
  ];
  const dead = sources.flatMap(([from, links]) => deadLinks(links, texts).map((link) => `${link} (from ${from})`));
  if (dead.length > 0) throw new Error(`Links in the help that lead nowhere: ${dead.join(", ")}`);
}

function contentsOf(guide: readonly Page[]): Contents {
  const listed = ({ address, title, about }: Listed): Listed => ({ address, title, about });
  return [
    { title: "Guide", pages: guide.map(listed) },
    ...PURPOSES.map((purpose) => ({
      title: purpose,
      pages: declarations
        .filter((one) => one.purpose === purpose)
        .map(({ name, about }) => ({ address: addressOf(name), title: `BED.${name}`, about })),
    })),
  ];
}
