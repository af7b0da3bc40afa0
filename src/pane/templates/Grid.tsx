import { areaOf } from "../../sheets/templates/area";
import type { Template, TemplateCell } from "../../sheets/templates/template";
import { columnLetters } from "../../spreadsheet/areas";
import { shownValue } from "./words";

const MOST_ROWS = 14;
const MOST_COLUMNS = 6;
const LONGEST = 28;

/** The first cells of a template, as text. */
export function Grid({ template }: { readonly template: Template }) {
  const cells = new Map(template.cells.map((cell) => [cell.at, cell]));
  const columns = Array.from({ length: Math.min(template.columns, MOST_COLUMNS) }, (_, column) =>
    columnLetters(column),
  );
  const rows = Array.from({ length: Math.min(template.rows, MOST_ROWS) }, (_, row) => row + 1);
  const isPart = template.rows > MOST_ROWS || template.columns > MOST_COLUMNS;
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard */}
      <section class="sample" tabIndex={0} aria-label="The first cells of the template">
        <table>
          <thead>
            <tr>
              <td />
              {columns.map((letters) => (
                <th key={letters} scope="col">
                  {letters}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <tr key={row}>
                <th scope="row">{row}</th>
                {columns.map((letters) => (
                  <td key={letters}>{shown(cells.get(`${letters}${row}`))}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {isPart && (
        <p class="below">
          Shown up to {columns.at(-1)}
          {rows.length} of {lastCell(template)}.
        </p>
      )}
    </>
  );
}

function shown(cell: TemplateCell | undefined): string {
  if (!cell || !areaOf(cell.at)) return "";
  const text = cell.formula ?? cell.text ?? shownValue(cell.number ?? cell.truth ?? "");
  return text.length > LONGEST ? `${text.slice(0, LONGEST)}…` : text;
}

const lastCell = ({ rows, columns }: Template) => `${columnLetters(columns - 1)}${rows}`;
