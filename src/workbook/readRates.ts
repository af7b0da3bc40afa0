import { isRateName, type NamedCells, ratesFrom } from "../sheets/rates/ratesFrom";
import { sheetOfAddress } from "./sheetOfAddress";
import { inWorkbook } from "./trouble";

/** The office's rates, and where they stand. */
export interface FoundRates {
  readonly rates: NonNullable<ReturnType<typeof ratesFrom>>;
  /** Names of the sheets that hold them; one, unless somebody moved some. */
  readonly sheets: readonly string[];
  /** Which of our names the workbook has, so that no second one is made. */
  readonly names: readonly string[];
}

/**
 * Reads the office's rates by the names of their cells, wherever these stand and whatever their sheet is called. Two
 * syncs; one where the workbook has none.
 *
 * @returns undefined where the workbook has none of them.
 */
export async function readRates(): Promise<FoundRates | undefined> {
  return inWorkbook(async (context) => {
    const { names } = context.workbook;
    names.load("items/name");
    await context.sync();
    const ours = names.items.filter(({ name }) => isRateName(name));
    if (ours.length === 0) return undefined;

    const cells = ours.map((item) => {
      const range = item.getRangeOrNullObject();
      range.load("values,address");
      return { name: item.name, range };
    });
    await context.sync();
    const found = cells.filter(({ range }) => !range.isNullObject);
    const named = new Map(
      cells.map(({ name, range }): [string, NamedCells] => [name, range.isNullObject ? undefined : range.values]),
    );
    const rates = ratesFrom(named);
    if (!rates) return undefined;
    return {
      rates,
      sheets: [...new Set(found.map(({ range }) => sheetOfAddress(range.address)))],
      names: ours.map(({ name }) => name),
    };
  });
}
