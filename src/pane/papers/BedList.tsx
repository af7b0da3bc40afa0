import { dollarText } from "../numbers";
import type { FoundBed } from "./readJob";

interface BedListProps {
  readonly beds: readonly FoundBed[];
  readonly isTicked: (bed: FoundBed) => boolean;
  readonly onTick: (bed: FoundBed, on: boolean) => void;
}

/** The beds of the workbook, to tick those that belong to the job. */
export function BedList({ beds, isTicked, onTick }: BedListProps) {
  return (
    <fieldset>
      <legend>Beds of this job</legend>
      {beds.map((bed) => (
        <label key={bed.id} class="tick">
          <input
            type="checkbox"
            checked={bed.worked !== undefined && isTicked(bed)}
            disabled={!bed.worked}
            onChange={(event) => onTick(bed, event.currentTarget.checked)}
          />
          <span class="grow">
            {bed.block.name || "Unnamed bed"} <span class="below">{bed.where}</span>
            {[bed.problem, ...(bed.notes ?? [])].map((said) => said && <span class="below"> {said}</span>)}
          </span>
          <span class="number">{bed.block.price === undefined ? "no price" : dollarText(bed.block.price)}</span>
        </label>
      ))}
    </fieldset>
  );
}
