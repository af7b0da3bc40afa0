import { useEffect, useRef } from "preact/hooks";
import { type Estimate, edgingFt } from "../quantities/bed/estimate";
import { stoneToOrder } from "./Answer";
import { Button } from "./Button";
import { amountWithUnit, dollarText } from "./numbers";
import { onEscape } from "./onEscape";

interface InsertPreviewProps {
  readonly name: string;
  readonly estimate: Estimate;
  /** Where it goes, such as `on a new sheet`. */
  readonly where: string;
  readonly onInsert: () => void;
  readonly onCancel: () => void;
}

/** What Enter in the last field is about to insert. */
export function InsertPreview({ name, estimate, where, onInsert, onCancel }: InsertPreviewProps) {
  const insert = useRef<HTMLButtonElement>(null);
  useEffect(() => insert.current?.focus(), []);
  const { amounts, price, laborHours } = estimate;
  const lines = [
    `${stoneToOrder(estimate)} of stone to order for ${amountWithUnit(amounts.stoneArea, "sq ft")}`,
    `${amountWithUnit(edgingFt(amounts), "lin ft")} of edging, ${amountWithUnit(amounts.pieces, "pieces")}`,
    `${amountWithUnit(amounts.rolls, "rolls")} of fabric, ${amountWithUnit(amounts.pins, "pins")}`,
    amountWithUnit(laborHours, "labor hours"),
  ];
  return (
    <div role="dialog" aria-labelledby="insert-preview" class="notice" onKeyDown={onEscape(onCancel, false)}>
      <p id="insert-preview">
        {name || "This bed"}: <strong>{dollarText(price)}</strong>, inserted {where}
      </p>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <p class="row">
        <Button at={insert} main onPress={onInsert}>
          Insert
        </Button>
        <Button onPress={onCancel}>Cancel</Button>
      </p>
    </div>
  );
}
