import { type Declaration, PURPOSES } from "../functions/declare";
import { addressOf } from "./functionPage";
import { escaped, link, section } from "./html";
import { HOME, type Page } from "./page";

/** The help's first page: the guide, and the functions by what they are for. */
export function indexPage(functions: readonly Declaration[], guide: readonly Page[]): Page {
  const entry = (address: string, title: string, about: string) =>
    `<dt>${link(address, title)}</dt><dd>${escaped(about)}</dd>`;
  const purposes = PURPOSES.map((purpose) => {
    const serving = functions.filter((one) => one.purpose === purpose);
    const entries = serving.map(({ name, about }) => entry(addressOf(name), `BED.${name}`, about));
    return section(purpose, `<dl>${entries.join("\n")}</dl>`);
  });
  const guides = `<dl>${guide.map(({ address, title, about }) => entry(address, title, about)).join("\n")}</dl>`;
  return {
    address: HOME,
    title: "Guide and functions",
    about: "Stone beds in your workbook: what each function is for, and how to do the work.",
    content: [section("Guide", guides), ...purposes].join("\n"),
  };
}
