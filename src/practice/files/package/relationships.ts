import type { ZipFile } from "../zip/readZip";
import { elements, readXml } from "./xml";

/** What a part of a package points to. */
export interface Relationship {
  /** The last word of what it is: "worksheet", "image". */
  readonly kind: string;
  /** The part's name; the address where it is outside of the file. */
  readonly target: string;
  readonly isOutside: boolean;
}

export type Relationships = ReadonlyMap<string, Relationship>;

/**
 * What a part points to, by id.
 *
 * @param part its name; "" for the package itself.
 */
export async function relationshipsOf(zip: ZipFile, part: string): Promise<Relationships> {
  const folder = part.slice(0, part.lastIndexOf("/") + 1);
  const bytes = await zip.part(`${folder}_rels/${part.slice(folder.length)}.rels`);
  const found = new Map<string, Relationship>();
  if (!bytes) return found;
  for (const { attributes } of elements(readXml(bytes), "Relationship")) {
    const { Id = "", Type = "", Target = "", TargetMode } = attributes;
    const isOutside = TargetMode === "External";
    found.set(Id, {
      kind: Type.slice(Type.lastIndexOf("/") + 1),
      target: isOutside ? Target : resolved(folder, Target),
      isOutside,
    });
  }
  return found;
}

function resolved(folder: string, target: string): string {
  const steps = target.startsWith("/") ? [] : folder.split("/").filter(Boolean);
  for (const step of target.split("/")) {
    if (step === "..") steps.pop();
    else if (step !== "" && step !== ".") steps.push(step);
  }
  return steps.join("/");
}
