import { depthVerdicts } from "../quantities/bed/depthVerdict";
import type { Estimate } from "../quantities/bed/estimate";
import { type BedForm, hasPlan } from "../quantities/bed/form";
import { Drawing } from "./Drawing";
import { amountWithUnit, moneyText, shareText } from "./numbers";
import type { Preview } from "./preview";
import { ReadOut } from "./ReadOut";

/** The quantities and the price as they will be, before anything is written. */
export function Result({ preview }: { preview: Preview }) {
  return (
    <section aria-labelledby="result-heading">
      <h2 id="result-heading">Estimate preview</h2>
      <ReadOut text={preview.estimate ? inOneBreath(preview.estimate) : ""} />
      {preview.estimate ? (
        <>
          <EstimateTable form={preview.form} estimate={preview.estimate} />
          {preview.plan && <Drawing name={preview.form.name} bed={preview.bed} plan={preview.plan} />}
        </>
      ) : (
        <p class="notice">Type the measurements to see the quantities and the price. Nothing is written yet.</p>
      )}
    </section>
  );
}

/** What of a change is read out: the price, and what is ordered for it. */
function inOneBreath({ price, amounts: { stoneArea, stoneTons, borderRun, innerRun } }: Estimate): string {
  const amounts = [
    `stone ${amountWithUnit(stoneTons, "tons")}`,
    `area ${amountWithUnit(stoneArea, "sq ft")}`,
    `border ${amountWithUnit(borderRun + innerRun, "ft")}`,
  ];
  return `Price ${moneyText(price)}; ${amounts.join(", ")}.`;
}

function EstimateTable({ form, estimate }: { form: BedForm; estimate: Estimate }) {
  const { amounts, lines, price, fullCost, markupOnCost, marginOnPrice, depthCheck } = estimate;
  return (
    <>
      <p class="price">
        <span>Price</span> <strong>{moneyText(price)}</strong>
      </p>
      {estimate.taxSum > 0 && (
        <p class="below">
          Before tax. Sales tax {moneyText(estimate.taxSum)}; with tax {moneyText(estimate.priceWithTax)}.
        </p>
      )}
      {estimate.minimumApplies && <p class="below">The minimum charge applies.</p>}
      <p class="below">
        Cost with overhead {moneyText(fullCost)}. Markup on cost {shareText(markupOnCost)}; margin on price{" "}
        {shareText(marginOnPrice)}.
      </p>
      {depthCheck !== depthVerdicts.fits && (
        <p class="notice trouble" role="note">
          {depthCheck}
        </p>
      )}
      <dl class="amounts">
        <Amount label="Area to cover" value={amounts.stoneArea} unit="sq ft" />
        <Amount label="Stone depth" value={amounts.stoneDepth} unit="in" />
        <Amount label="Stone needed" value={amounts.stoneTons} unit="tons" />
        <Amount label="Edging" value={amounts.borderRun + amounts.innerRun} unit="lin ft" />
        <Amount label="Stakes" value={amounts.stakes} unit="stakes" />
        <Amount label="Pins" value={amounts.pins} unit="pins" />
        <Amount label="Labor" value={estimate.laborHours} unit="labor hours" />
        <Amount label="Crew time" value={estimate.crewDays} unit="days" />
      </dl>
      <p class="below">{countedBy(form)}</p>
      <table>
        <thead>
          <tr>
            <th scope="col">Line</th>
            <th scope="col" class="number">
              Quantity
            </th>
            <th scope="col" class="number">
              Price
            </th>
          </tr>
        </thead>
        <tbody>
          {lines.map(({ key, label, amount, unit, priceSum }) => (
            <tr key={key}>
              <th scope="row">{label}</th>
              <td class="number">{amountWithUnit(amount, unit)}</td>
              <td class="number">{moneyText(priceSum)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}

function Amount({ label, value, unit }: { label: string; value: number; unit: string }) {
  return (
    <>
      <dt>{label}</dt>
      <dd>{amountWithUnit(value, unit)}</dd>
    </>
  );
}

function countedBy({ way }: BedForm): string {
  return hasPlan(way)
    ? "Fabric and pins are counted on the bed's layout."
    : "Fabric and pins are counted on the bed's length times its widest width, so some fabric is cut off.";
}
