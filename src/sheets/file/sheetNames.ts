import { must } from "../../quantities/must";
import { cut, withoutUnprintable } from "../printable";

const LONGEST = 31;

/** The names that sheets have in a file, and how references to them are spelled there. */
export class SheetNames {
  /** In the order of the sheets; each legal, and none twice. */
  readonly inFile: readonly string[];
  /** From how references spell a sheet's name to how they have to in the file. */
  readonly references: ReadonlyMap<string, string>;

  constructor(wanted: readonly string[]) {
    const taken = new Set<string>();
    this.inFile = wanted.map((name) => {
      const plain = legal(name);
      for (let number = 1; ; number += 1) {
        const ending = number === 1 ? "" : ` ${number}`;
        const free = cut(plain, LONGEST - ending.length) + ending;
        if (taken.has(free.toLowerCase())) continue;
        taken.add(free.toLowerCase());
        return free;
      }
    });
    const references = new Map<string, string>();
    wanted.forEach((name, index) => {
      const free = must(this.inFile[index]);
      if (free === name) return;
      references.set(`'${name.replaceAll("'", "''")}'`, `'${free}'`);
      references.set(name, `'${free}'`);
    });
    this.references = references;
  }
}

/** Replaces what files forbid, and apostrophes, which break print areas. */
function legal(name: string): string {
  return (
    withoutUnprintable(name)
      .replace(/[[\]:*?/\\]/g, " ")
      .replaceAll("'", "’")
      .replace(/\s+/g, " ")
      .trim() || "Sheet"
  );
}
