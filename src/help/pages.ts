import { readFileSync } from "node:fs";
import { join } from "node:path";
import files from "../functions/files.json";
import { screens } from "../pane/screens";
import { functionKnowledge } from "../review/knowledge";
import { deadLinks, linksOn } from "./deadLinks";
import { docstringsOf, type FunctionDoc } from "./docstrings";
import { faultsPage, readFaults } from "./faultsPage";
import { addressOf, functionPage } from "./functionPage";
import { guidePages } from "./guide";
import { indexPage } from "./indexPage";
import { numbersPage } from "./numbersPage";
import { framed, type Page } from "./page";
import { PURPOSES } from "./purposes";
import { readMeasured, speedPage } from "./speedPage";

/** A page as the pane lists it. */
export interface Listed {
  readonly address: string;
  readonly title: string;
  readonly about: string;
}

/** What the help holds, for the pane's list: the guide first, then the functions by what they are for. */
export type Contents = readonly { readonly title: string; readonly pages: readonly Listed[] }[];

/** The docstrings of all worksheet functions, from their files under `root`. */
export function everyDocstring(root: string): FunctionDoc[] {
  return files.flatMap((file) => docstringsOf(file, readFileSync(join(root, "src/functions", file), "utf8")));
}

/**
 * Every file of the help but its pictures and its style, by its name within the help's folder.
 *
 * @param root the project's folder.
 * @throws Error naming the links, from page to page or from the pane's screens, that lead nowhere.
 */
export function helpFiles(root: string): Map<string, string> {
  const docs = everyDocstring(root);
  const guide = [
    ...guidePages(join(root, "src/help/guide")),
    numbersPage(),
    faultsPage(readFaults(root)),
    speedPage(readMeasured(root)),
  ];
  const pages = [indexPage(docs, guide), ...guide, ...docs.map(pageOf)];
  const texts = new Map(pages.map((page) => [page.address, framed(page, guide)]));
  refuseDeadLinks(texts);
  texts.set("contents.json", JSON.stringify(contentsOf(docs, guide)));
  return texts;
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

function pageOf(doc: FunctionDoc): Page {
  const known = functionKnowledge.find(({ name }) => name === doc.id);
  if (!known) throw new Error(`${doc.id} stands in no file of src/review/knowledge, which its page is made from.`);
  return functionPage(doc, known);
}

function contentsOf(docs: readonly FunctionDoc[], guide: readonly Page[]): Contents {
  const listed = ({ address, title, about }: Listed): Listed => ({ address, title, about });
  return [
    { title: "Guide", pages: guide.map(listed) },
    ...PURPOSES.map(({ title, functions }) => ({
      title,
      pages: functions.flatMap((id) =>
        docs.filter((doc) => doc.id === id).map(({ about }) => ({ address: addressOf(id), title: `BED.${id}`, about })),
      ),
    })),
  ];
}
