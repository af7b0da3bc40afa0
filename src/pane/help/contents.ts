import { HELP_FOLDER } from "../screens";
import type { HelpPart } from "./search";

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

/** Fetches the list of the help's pages, from the add-in's own place, so nothing leaves it. */
export const fetchContents = () => fetched<readonly HelpGroup[]>("contents.json");

/** Fetches the full text of the help, part by part. */
export const fetchParts = () => fetched<readonly HelpPart[]>("search.json");

async function fetched<Content>(file: string): Promise<Content> {
  const response = await fetch(HELP_FOLDER + file);
  if (!response.ok) throw new Error(`help/${file} came back with status ${response.status}.`);
  return response.json();
}
