import { elements } from "../package/xml";

/** Changes the text of one part of a file; "" for a part that is not there yet. */
export type Change = (name: string, edit: (text: string) => string) => void;

export const relationshipTypes = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
export const contentTypes = "application/vnd.openxmlformats-officedocument";

function relsOf(part: string): string {
  return part.replace(/([^/]*)$/, "_rels/$1.rels");
}

/** What a part points to. */
export function pointers(text: ReadonlyMap<string, string>, part: string) {
  return [...elements(text.get(relsOf(part)) ?? "", "Relationship")].map(({ attributes }) => {
    const { Type = "", Target = "" } = attributes;
    return { kind: Type.slice(Type.lastIndexOf("/") + 1), target: Target };
  });
}

/** Lets a part point to another one. */
export function pointTo(change: Change, part: string, id: string, type: string, target: string): void {
  change(relsOf(part), (xml) => {
    const before =
      xml || '<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"></Relationships>';
    return before.replace(
      "</Relationships>",
      `<Relationship Id="${id}" Type="${type}" Target="${target}"/></Relationships>`,
    );
  });
}

/** Says in the file what kind of part one is. */
export function declare(change: Change, part: string, type: string): void {
  change("[Content_Types].xml", (xml) =>
    xml.replace("</Types>", `<Override PartName="/${part}" ContentType="${type}"/></Types>`),
  );
}
