/**
 * How a host stores the functions of add-ins in a file: with this prefix, and underscores in the place of dots. From
 * memory of files that were seen; the published format does not name it.
 */
const PREFIX = "_xldudf_";

/** The names of the add-in's functions, in cells and in files. */
export class FunctionNames {
  private readonly inCells: ReadonlyMap<string, string>;

  /** @param names as cells have them: `MY.FUNCTION`. */
  constructor(names: readonly string[]) {
    this.inCells = new Map(names.map((name) => [stored(name), name.toUpperCase()]));
  }

  /**
   * A function's name as a file holds it; names of anybody else's functions come back as they are.
   *
   * @example new FunctionNames(["MY.SUM_UP"]).inFile("my.sum_up") // "_xldudf_MY_SUM_UP"
   */
  inFile(name: string): string {
    const form = stored(name);
    return this.inCells.get(form) === name.toUpperCase() ? PREFIX + form : name;
  }

  /**
   * A function's name as cells have it: without the prefixes that files put before newer functions and those of
   * add-ins.
   *
   * @example new FunctionNames(["MY.SUM_UP"]).inCell("_xldudf_MY_SUM_UP") // "MY.SUM_UP"
   */
  inCell(name: string): string {
    const plain = name.replace(/^_xlfn\./i, "").replace(/^_xlws\./i, "");
    if (!isOfSomeAddIn(plain)) return plain;
    return this.inCells.get(plain.slice(PREFIX.length).toUpperCase()) ?? plain;
  }
}

/** Whether a name in a file is that of an add-in's function. */
export function isOfSomeAddIn(name: string): boolean {
  return name.toLowerCase().startsWith(PREFIX);
}

function stored(name: string): string {
  return name.toUpperCase().replaceAll(".", "_");
}
