import type { Contents } from "../../sheets/templates/contents";
import type { Choice } from "../../sheets/templates/openTemplate";
import { Select } from "../Select";
import type { Opening } from "./useOpening";
import { counted, shownValue } from "./words";

interface ReadsOutsideProps {
  readonly opening: Opening;
  readonly outside: Contents["outside"];
  readonly isThere: (reads: string) => boolean;
  readonly selected: string;
}

type One = Contents["outside"][number];

/** What a template reads outside of it, and what is to be read where that was left open or is not there. */
export function ReadsOutside({ opening, outside, isThere, selected }: ReadsOutsideProps) {
  if (outside.length === 0) return null;
  const isOpen = ({ reads, opened }: One) => opened === "ask" || !isThere(reads);
  const settled = outside.filter((one) => !isOpen(one));
  return (
    <>
      <h3>It reads cells outside itself</h3>
      {settled.length > 0 && (
        <ul class="lines">
          {settled.map(({ reads, formulas }) => (
            <li key={reads}>
              {reads} of this workbook, in {counted(formulas, "formula")}
            </li>
          ))}
        </ul>
      )}
      {outside.filter(isOpen).map((one) => (
        <Question key={one.reads} opening={opening} one={one} isThere={isThere(one.reads)} selected={selected} />
      ))}
    </>
  );
}

interface QuestionProps {
  readonly opening: Opening;
  readonly one: One;
  readonly isThere: boolean;
  readonly selected: string;
}

function Question({ opening, one, isThere, selected }: QuestionProps) {
  const { reads, value, formulas } = one;
  const choice = opening.choices.get(reads);
  const options = [
    { value: "", label: "Choose…" },
    ...(isThere ? [{ value: "keep", label: `${reads} of this workbook` }] : []),
    ...(value !== undefined ? [{ value: "value", label: `The value it showed: ${shownValue(value)}` }] : []),
    { value: "cells", label: choice?.kind === "cells" ? choice.reads : `The selected cells (${selected || "none"})` },
  ];
  const choose = (kind: string) => {
    if (kind === "keep") opening.choose(reads, { kind });
    if (kind === "value" && value !== undefined) opening.choose(reads, { kind, value });
    if (kind === "cells") void opening.chooseSelected(reads);
  };
  return (
    <Select
      label={`What to read for ${reads}, in ${counted(formulas, "formula")}`}
      value={choice?.kind ?? ""}
      options={options}
      onChoose={choose}
      note={noteFor(choice, isThere)}
    />
  );
}

function noteFor(choice: Choice | undefined, isThere: boolean): string {
  if (choice) return "";
  return isThere
    ? "To read other cells, select them on the sheet first."
    : "This workbook has nothing by that name. To read other cells, select them on the sheet first.";
}
