import type { Explanation } from "../../review/explain/explanation";
import type { PriceStrip } from "../../review/explain/strip";
import { cellAddress } from "../../spreadsheet/areas";
import { goTo } from "../../workbook/sheets";
import { Button } from "../Button";
import { dollarText } from "../numbers";
import { useExplain } from "./useExplain";

/** What is behind the selected cell: its arguments, the rule, the working, and why it is an error. */
export function ExplainScreen() {
  const { explained, trouble, look } = useExplain();
  return (
    <>
      <header>
        <h1>Explain a cell</h1>
      </header>
      <p class="row">
        <Button main onPress={look}>
          Explain the selected cell
        </Button>
      </p>
      <p role="status" class="below">
        {explained ? `${explained.where}${explained.formula ? `: ${explained.formula}` : " is blank."}` : ""}
      </p>
      <p role="alert" class="notice trouble">
        {trouble}
      </p>
      {explained?.explanation && <Part part={explained.explanation} level={2} />}
      {explained && !explained.explanation && explained.formula !== "" && (
        <p class="notice">
          {explained.formula.startsWith("=")
            ? "Can't read this formula."
            : "This was typed in. There's no formula behind it."}
        </p>
      )}
      {explained?.strip && <Strip strip={explained.strip} />}
    </>
  );
}

/** How a price comes about, a step a row; each leads to its cell. */
function Strip({ strip }: { strip: PriceStrip }) {
  return (
    <section aria-labelledby="strip-heading">
      <h2 id="strip-heading">From quantity to price</h2>
      <p class="below">How the price is figured, in the order of the sheet.</p>
      <table class="explained">
        <tbody>
          {strip.steps.map(({ what, how, place }) => (
            <tr key={`${place.row},${place.column}`}>
              <th scope="row">
                <Button onPress={() => void goTo({ ...place, rows: 1, columns: 1 })}>
                  {what || cellAddress(place)}
                </Button>
              </th>
              <td class="number">{how}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="price">
        <span>Price</span> <strong>{dollarText(strip.price)}</strong>
      </p>
    </section>
  );
}

function Part({ part, level }: { part: Explanation; level: 2 | 3 }) {
  const { title, rule, arguments: given, working, result, error, inside } = part;
  const Heading = level === 2 ? "h2" : "h3";
  return (
    <article>
      <Heading>{title}</Heading>
      <p class="price">
        <span>Gives</span> <strong>{result}</strong>
      </p>
      {error && (
        <div class="notice trouble" role="note">
          <p>{error.reason}</p>
          <p>
            <strong>{error.fix}</strong>
          </p>
        </div>
      )}
      {rule && <p>{rule}</p>}
      {given.length > 0 && (
        <table class="explained">
          <thead>
            <tr>
              <th scope="col">Argument</th>
              <th scope="col">Is</th>
            </tr>
          </thead>
          <tbody>
            {given.map(({ name, text, reads, value, source, problem }) => (
              <tr key={name}>
                <th scope="row">
                  {name}
                  {text && <span class="below"> {text}</span>}
                </th>
                <td>
                  {value}
                  {reads && <span class="below"> {reads}</span>}
                  {source && <span class="below"> {source}</span>}
                  {problem && <strong> {problem}</strong>}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {working.length > 0 && (
        <ol class="steps">
          {working.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ol>
      )}
      {inside.map((one) => (
        <details key={one.text}>
          <summary>Inside: {one.text}</summary>
          <Part part={one} level={3} />
        </details>
      ))}
    </article>
  );
}
