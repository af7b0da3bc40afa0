import { amountText, amountWithUnit, dollarText } from "../numbers";
import type { Job } from "./makePapers";

/** What the beds take together, and what that saves against ordering bed by bed. */
export function Together({ job: { order, crew } }: { readonly job: Job }) {
  const saved = order.money.savedCents;
  return (
    <section aria-labelledby="together-heading">
      <h2 id="together-heading">Ordered together</h2>
      <table>
        <thead>
          <tr>
            <th scope="col">Item</th>
            <th scope="col" class="number">
              Together
            </th>
            <th scope="col" class="number">
              Bed by bed
            </th>
          </tr>
        </thead>
        <tbody>
          {order.lines.map(({ key, item, specification, order: together, orderUnit, bedByBed }) => (
            <tr key={key}>
              <th scope="row">
                {item} <span class="below">{specification}</span>
              </th>
              <td class="number">{amountWithUnit(together, orderUnit)}</td>
              <td class="number">{amountText(bedByBed)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>
        {saved > 0
          ? `Ordering together saves ${dollarText(saved / 100)} at cost.`
          : "Ordering together costs the same as bed by bed."}{" "}
        The crew takes {amountText(crew.personHours)} labor hours, {amountText(crew.crewDays)} days.
      </p>
      {order.warnings.length > 0 && (
        <ul class="notice trouble">
          {order.warnings.map(({ text }) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      )}
    </section>
  );
}
