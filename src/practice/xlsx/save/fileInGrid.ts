import type { BookParts } from "../../../xlsx/read/bookParts";
import { elements, firstElement, isTrue, numberIn, readXml } from "../../../xlsx/read/xml";
import { addSpillFacts } from "../../../xlsx/write/book";
import type { PackageParts } from "../../../xlsx/write/package";
import type { OpenedFile } from "../open/openBook";

/** As many as a file may have; from memory. */
const mostStyles = 65_490;

/** The file that was opened, as it was then: what the workbook is compared with when it's saved. */
export class FileInGrid {
  private readonly blankStyles = new Map<
    number,
    { rows: Map<number, number>; columns: (readonly [number, number, number])[] }
  >();
  private spills: { readonly number: number | undefined } | undefined;

  /** @param differs formulas that showed something else here than in the file when it was opened: `sheet-1!3,4`. */
  constructor(
    readonly opened: OpenedFile,
    readonly differs: ReadonlySet<string>,
    private readonly parts: PackageParts,
  ) {}

  get book(): BookParts {
    return this.opened.parts;
  }

  /** How many numbers of styles the sheets use. */
  stylesTaken(): number {
    let highest = 0;
    for (const { cells, rows, xml } of this.book.sheets) {
      for (const { style } of cells) highest = Math.max(highest, style);
      for (const { attributes } of rows) highest = Math.max(highest, Number(attributes.s ?? 0));
      for (const { attributes } of elements(firstElement(xml, "cols"), "col"))
        highest = Math.max(highest, Number(attributes.style ?? 0));
    }
    return Math.min(highest, mostStyles) + 1;
  }

  /** The number of the style that a cell has which isn't in the file: that of its row, or of its column. */
  blankStyle(place: number, row: number, column: number): number {
    let known = this.blankStyles.get(place);
    if (!known) {
      const { rows = [], xml } = this.book.sheets[place] ?? {};
      const styled = rows.filter(({ attributes }) => isTrue(attributes.customFormat) && attributes.s !== undefined);
      known = {
        rows: new Map(styled.map((one) => [one.row, Number(one.attributes.s)])),
        columns: [...elements(firstElement(xml, "cols"), "col")].map(
          ({ attributes: { min = "1", max = min, style = "0" } }) => [Number(min) - 1, Number(max) - 1, Number(style)],
        ),
      };
      this.blankStyles.set(place, known);
    }
    return known.rows.get(row) ?? known.columns.find(([min, max]) => column >= min && column <= max)?.[2] ?? 0;
  }

  /**
   * The number by which an array formula says that it takes as many cells as it needs; undefined where the file has
   * facts about cells of other kinds only, among which there is no room for it.
   */
  spillNumber(): number | undefined {
    this.spills ??= { number: this.findSpillNumber() };
    return this.spills.number;
  }

  private findSpillNumber(): number | undefined {
    const known = [...this.book.relationships.values()].find(({ kind }) => kind === "sheetMetadata");
    const bytes = known && this.parts.part(known.target);
    if (!bytes) {
      addSpillFacts(this.parts, this.book.part);
      return 1;
    }
    const facts = readXml(bytes);
    const types = [...elements(firstElement(facts, "metadataTypes"), "metadataType")];
    const type = types.findIndex(({ attributes }) => attributes.name === "XLDAPR") + 1;
    const cells = firstElement(facts, "cellMetadata")?.children ?? [];
    const place = cells.findIndex((one) =>
      [...elements(one, "rc")].some(({ attributes }) => numberIn(attributes.t, 0, 0, 1e6) === type),
    );
    return type > 0 && place >= 0 ? place + 1 : undefined;
  }
}
