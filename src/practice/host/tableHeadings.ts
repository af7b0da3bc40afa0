import type { Area, CellsPort } from "../grid/port";

/**
 * Makes the first row of an area the headings of a table, as the host does: each is text, a blank one is called
 * Column1 and so on, and one that is there already gets a number.
 */
export function makeHeadings(cells: CellsPort, area: Area): void {
  const row = { ...area, rowCount: 1 };
  const texts = cells.text(row)[0] ?? [];
  const taken = new Set<string>();
  const headings = texts.map((text, column) => {
    const plain = text === "" ? `Column${column + 1}` : text;
    let heading = plain;
    for (let number = 2; taken.has(heading.toLowerCase()); number += 1) heading = `${plain}${number}`;
    taken.add(heading.toLowerCase());
    return heading;
  });
  const before = cells.read(row)[0] ?? [];
  const isRight = (heading: string, column: number) => {
    const cell = before[column];
    return cell?.kind === "text" && cell.formula === undefined && cell.value === heading;
  };
  cells.write(row, [headings.map((heading, column) => (isRight(heading, column) ? undefined : `'${heading}`))]);
}
