import type { FunctionDoc } from "./docstrings";
import { addressOf } from "./functionPage";
import { escaped, link, section } from "./html";
import { HOME, type Page } from "./page";
import { PURPOSES } from "./purposes";

/** The help's first page: the guide, and the functions by what they are for. */
export function indexPage(docs: readonly FunctionDoc[], guide: readonly Page[]): Page {
  const entry = (address: string, title: string, about: string) =>
    `<dt>${link(address, title)}</dt><dd>${escaped(about)}</dd>`;
  const byId = new Map(docs.map((doc) => [doc.id, doc]));
  const purposes = PURPOSES.map(({ title, functions }) =>
    section(
      title,
      `<dl>${functions.map((id) => entry(addressOf(id), `BED.${id}`, byId.get(id)?.about ?? "")).join("\n")}</dl>`,
    ),
  );
  const guides = `<dl>${guide.map(({ address, title, about }) => entry(address, title, about)).join("\n")}</dl>`;
  return {
    address: HOME,
    title: "Guide and functions",
    about: "Stone beds in the workbook: what each function is for, and how the work is done.",
    content: [section("Guide", guides), ...purposes].join("\n"),
  };
}
