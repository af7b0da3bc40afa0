import { relationshipsOf } from "../read/package";
import type { ZipFile } from "../zip";
import { writeZip } from "../zip";
import { XmlEdit } from "./edit";
import { HEAD, PACKAGE, RELATIONSHIPS, tag } from "./xml";

const TYPES = "[Content_Types].xml";
const encoder = new TextEncoder();

/** What the parts of a file are before any is added. */
const noTypes =
  HEAD +
  tag(
    "Types",
    { xmlns: `${PACKAGE}/content-types` },
    tag("Default", { Extension: "rels", ContentType: "application/vnd.openxmlformats-package.relationships+xml" }) +
      tag("Default", { Extension: "xml", ContentType: "application/xml" }),
  );
const noPointers = HEAD + tag("Relationships", { xmlns: `${PACKAGE}/relationships` }, "");

/**
 * The parts of a file that is made: all new, or those of another file, of which each keeps its bytes until it is
 * changed.
 */
export class PackageParts {
  private readonly changed = new Map<string, Uint8Array>();
  private readonly removed = new Set<string>();

  /** @param file whose parts are taken over. */
  constructor(private readonly file?: ZipFile) {
    if (!file) this.changed.set(TYPES, encoder.encode(noTypes));
  }

  /** Whether any part is other than in the file. */
  get isChanged(): boolean {
    return this.changed.size > 0 || this.removed.size > 0;
  }

  get names(): readonly string[] {
    const taken = (this.file?.names ?? []).filter((name) => !this.removed.has(key(name)));
    const known = new Set(taken.map(key));
    return [...taken, ...[...this.changed.keys()].filter((name) => !known.has(key(name)))];
  }

  has(name: string): boolean {
    if (this.removed.has(key(name))) return false;
    return this.changed.has(this.spelled(name)) || this.file?.has(name) === true;
  }

  part(name: string): Uint8Array | undefined {
    if (this.removed.has(key(name))) return undefined;
    return this.changed.get(this.spelled(name)) ?? this.file?.part(name);
  }

  /** Puts a part in, or other bytes in the place of its own. @param type what it is, for a new one. */
  add(name: string, content: string | Uint8Array, type?: string): void {
    this.removed.delete(key(name));
    this.changed.set(this.spelled(name), typeof content === "string" ? encoder.encode(content) : content);
    if (type)
      this.editTypes((edit) => edit.append(edit.root, tag("Override", { PartName: `/${name}`, ContentType: type })));
  }

  /** Changes a part that is XML; nothing where there is none. */
  edit(name: string, change: (edit: XmlEdit) => void): void {
    const bytes = this.part(name);
    if (!bytes) return;
    const edit = new XmlEdit(bytes);
    change(edit);
    if (edit.isChanged) this.add(name, edit.bytes());
  }

  addKind(extension: string, type: string): void {
    this.editTypes((edit) => {
      const isKnown = edit.root.children.some(({ attributes }) => attributes.Extension?.toLowerCase() === extension);
      const [first] = edit.root.children;
      const xml = tag("Default", { Extension: extension, ContentType: type });
      if (!isKnown && first) edit.insertBefore(first, xml);
      else if (!isKnown) edit.append(edit.root, xml);
    });
  }

  /** Says of a part that it is something else than before. */
  retype(name: string, type: string): void {
    this.editTypes((edit) => {
      for (const one of edit.root.children)
        if (key(one.attributes.PartName ?? "") === key(name)) edit.set(one, { ContentType: type });
    });
  }

  /**
   * Lets a part, or the package itself for "", point to another one.
   *
   * @param id the pointer's; a free one like it where the part has it already.
   * @returns the id that it got.
   */
  point(part: string, id: string, kind: string, target: string): string {
    const type = kind === "core-properties" ? `${PACKAGE}/relationships/metadata/${kind}` : `${RELATIONSHIPS}/${kind}`;
    const name = pointersOf(part);
    if (!this.has(name)) this.add(name, noPointers);
    let free = id;
    this.edit(name, (edit) => {
      const taken = new Set(edit.root.children.map(({ attributes }) => attributes.Id));
      for (let number = 2; taken.has(free); number += 1) free = `${id}-${number}`;
      edit.append(edit.root, tag("Relationship", { Id: free, Type: type, Target: target }));
    });
    return free;
  }

  /** Takes pointers of a part away. */
  unpoint(part: string, isGone: (id: string) => boolean): void {
    this.edit(pointersOf(part), (edit) => {
      for (const one of edit.root.children) if (isGone(one.attributes.Id ?? "")) edit.replace(one, "");
    });
  }

  /** What a part points to, by id. */
  pointers(part: string): ReturnType<typeof relationshipsOf> {
    return relationshipsOf(this, part);
  }

  /** The first name with a number in it that no part has: `xl/worksheets/sheet4.xml`. */
  freeName(before: string, after: string): string {
    const taken = new Set(this.names.map(key));
    let number = 1;
    while (taken.has(key(`${before}${number}${after}`))) number += 1;
    return `${before}${number}${after}`;
  }

  remove(name: string): void {
    this.changed.delete(this.spelled(name));
    this.removed.add(key(name));
    this.editTypes((edit) => {
      for (const one of edit.root.children) if (key(one.attributes.PartName ?? "") === key(name)) edit.replace(one, "");
    });
  }

  /** The names of the parts that can be reached from one of them, or from the package itself for "". */
  reachable(from: string, seen = new Set<string>()): ReadonlySet<string> {
    for (const { target, isOutside } of this.pointers(from).values()) {
      if (isOutside || seen.has(key(target)) || !this.has(target)) continue;
      seen.add(key(target));
      this.reachable(target, seen);
    }
    return seen;
  }

  /** Removes what these parts needed, and nothing else does. */
  removeUnreached(names: Iterable<string>): void {
    const reached = this.reachable("");
    for (const name of names) {
      if (reached.has(key(name)) || !this.has(name)) continue;
      this.remove(name);
      this.remove(pointersOf(name));
    }
  }

  zip(): Uint8Array<ArrayBuffer> {
    return writeZip(
      new Map(
        this.names.flatMap((name) => {
          const bytes = this.part(name);
          return bytes ? [[name, bytes] as const] : [];
        }),
      ),
    );
  }

  private editTypes(change: (edit: XmlEdit) => void): void {
    this.edit(TYPES, change);
  }

  /** A part's name as the file spells it. */
  private spelled(name: string): string {
    const alike = (one: string) => key(one) === key(name);
    if (this.changed.has(name)) return name;
    return [...this.changed.keys()].find(alike) ?? this.file?.names.find(alike) ?? name;
  }
}

/** The name of the part that holds what a part points to. */
function pointersOf(part: string): string {
  return part.replace(/([^/]*)$/, "_rels/$1.rels");
}

/** Names of parts are the same whatever their capitals: ECMA-376 part 2, from memory. */
function key(name: string): string {
  return name.replace(/^\//, "").toLowerCase();
}
