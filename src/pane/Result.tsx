import { type Estimate, edgingFt } from "../quantities/bed/estimate";
import { type BedForm, hasPlan } from "../quantities/bed/form";
import { SHORT_PIECE_WORDS } from "../quantities/edging";
import { Group } from "./Group";
import { amountWithUnit, dollarText, shareText } from "./numbers";
import type { Preview } from "./preview";

/** The quantities and the price, line by line, as they will be. */
export function Result({ preview }: { preview: Preview }) {
  const { form, estimate } = preview;
  if (!estimate) return null;
  const { amounts, crewDays } = estimate;
  const inside = [
    amountWithUnit(amounts.stoneArea, "sq ft"),
    `${amountWithUnit(edgingFt(amounts), "lin ft")} of edging`,
    amountWithUnit(crewDays, "days"),
  ];
  return (
    <Group heading="Quantities and prices" changed={inside.join(", ")} opens={false}>
      <EstimateTable form={form} estimate={estimate} />
    </Group>
  );
}

function EstimateTable({ form, estimate }: { form: BedForm; estimate: Estimate }) {
  const { amounts, lines, price, fullCost, markupOnCost, marginOnPrice } = estimate;
  return (
    <>
      <p class="price">
        <span>Price</span> <strong>{dollarText(price)}</strong>
      </p>
      {estimate.taxSum > 0 && (
        <p class="below">
          Before tax. Sales tax {dollarText(estimate.taxSum)}; with tax {dollarText(estimate.priceWithTax)}.
        </p>
      )}
      {estimate.minimumApplies && <p class="below">The minimum charge applies.</p>}
      <p class="below">
        Cost with overhead {dollarText(fullCost)}. Markup on cost {shareText(markupOnCost)}; margin on price{" "}
        {shareText(marginOnPrice)}.
      </p>
      <dl class="amounts">
        <Amount label="Area to cover" value={amounts.stoneArea} unit="sq ft" />
        <Amount label="Stone depth" value={amounts.stoneDepth} unit="in" />
        <Amount label="Stone needed" value={amounts.stoneTons} unit="tons" />
        <Amount label="Order weight" value={amounts.orderTons} unit="tons" />
        <Amount label="Order volume" value={amounts.orderYards} unit="cu yd" />
        {amounts.bagPounds > 0 && <Amount label="Bag weight" value={amounts.bagPounds} unit="lb" />}
        <Amount label="Edging" value={edgingFt(amounts)} unit="lin ft" />
        <Amount label="Stakes" value={amounts.stakes} unit="stakes" />
        <Amount label="Pins" value={amounts.pins} unit="pins" />
        <Amount label="Labor" value={estimate.laborHours} unit="labor hours" />
        <Amount label="Crew time" value={estimate.crewDays} unit="days" />
      </dl>
      {estimate.shortPieces.map((piece) => (
        <p key={piece} class="notice">
          P{piece} {SHORT_PIECE_WORDS}
        </p>
      ))}
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
              <td class="number">{dollarText(priceSum)}</td>
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
    : "Fabric and pins are counted on the bed's length times its widest width, so some fabric gets cut off.";
}
