import type { Rates } from "../../quantities/bed/rates";
import { STONES } from "../../quantities/stone";
import type { Filling } from "../../sheets/jobRows/fill";
import type { ListFit } from "../../sheets/jobRows/fit";
import { headingAt } from "../../sheets/jobRows/listRows";
import type { ResultRole } from "../../sheets/jobRows/roles";
import { columnLetters } from "../../spreadsheet/areas";
import { Button } from "../Button";
import { onEscape } from "../onEscape";
import { Select } from "../Select";
import { StatusMessage } from "../StatusMessage";
import { useFocusBack } from "../useFocusBack";
import { type AssumedField, AssumedFields } from "./AssumedFields";
import { ColumnChoices } from "./ColumnChoices";
import { FillPreview } from "./FillPreview";
import { ResultPicker } from "./ResultPicker";
import { StoneNames } from "./StoneNames";
import { type Fitting, useFit } from "./useFit";

/** Writes formulas into a list that is there, by its own headings. */
export function FitList() {
  const fitting = useFit();
  const { fit, columns, filling, status, isWorking } = fitting;
  const readButton = useFocusBack(fit !== undefined);
  const asked = columns && filling ? lacking(columns, filling) : [];
  const isOpen = asked.some((field) => fitting.problems[field] !== undefined);
  return (
    <section aria-label="My own list" onKeyDown={fit && onEscape(fitting.cancel, isWorking)}>
      <p class="below">
        Select a cell in your list, then read it. Headings can be in any order, in your own words and units.
      </p>
      <p class="row">
        <Button at={readButton} main={!fit} off={isWorking} onPress={() => void fitting.read()}>
          {fit ? "Read it again" : "Read the list at the selection"}
        </Button>
        <Button off={isWorking || !fitting.canUndo} title={fitting.canUndo} onPress={() => void fitting.undo()}>
          Undo
        </Button>
      </p>
      {fit && columns && filling && (
        <>
          <HeadingChoice fit={fit} onChoose={fitting.chooseHeading} />
          <ColumnChoices columns={columns} corrected={fit.columns} onCorrect={fitting.correct} />
          <ResultPicker
            chosen={fitting.results}
            existing={
              new Map(
                columns.flatMap(({ role, column, heading }) =>
                  role ? [[role, `${columnLetters(column)} ${heading}`]] : [],
                ),
              )
            }
            added={filling.columns.filter(({ isAdded }) => isAdded).map(({ role }) => role)}
            onChange={fitting.setResults}
          />
          <AssumedFields fields={asked} texts={fitting.texts} problems={fitting.problems} onChange={fitting.setTexts} />
          <StoneNames
            names={fitting.stones}
            stones={stoneChoices(fitting.rates)}
            hasRates={fitting.rates !== undefined}
            off={isWorking}
            onRemember={(answers) => void fitting.remember(answers)}
          />
          {/* Before every bed has its depth, a result would be a guess. */}
          {!isOpen && (
            <FillPreview
              tried={fitting.tried}
              filling={filling}
              replace={fitting.replace}
              onReplace={fitting.setReplaces}
            />
          )}
        </>
      )}
      <div class={fit ? "insert-bar" : ""}>
        {fit && <WriteBar fitting={fitting} isOpen={isOpen} />}
        <StatusMessage status={status} />
      </div>
    </section>
  );
}

/** The office's stones, then ours that it doesn't list. */
function stoneChoices(rates: Rates | undefined): string[] {
  return [...new Set([...(rates?.stones ?? []), ...STONES].map(({ name }) => name))];
}

/** @param isOpen whether something that every bed needs is still to be typed. */
function WriteBar({ fitting, isOpen }: { readonly fitting: Fitting; readonly isOpen: boolean }) {
  const { filling, isWorking } = fitting;
  const count = filling?.changes.length ?? 0;
  return (
    <p class="row">
      <Button main off={isWorking || count === 0 || isOpen} onPress={() => void fitting.write()}>
        {count === 0 ? "Nothing to write" : `Write ${count.toLocaleString("en-US")} ${count === 1 ? "cell" : "cells"}`}
      </Button>
      <Button off={isWorking} onPress={fitting.cancel}>
        Cancel
      </Button>
    </p>
  );
}

function HeadingChoice({
  fit,
  onChoose,
}: {
  readonly fit: ListFit;
  readonly onChoose: (heading: ListFit["heading"]) => void;
}) {
  const { cells, heading, headings, rows } = fit;
  const name = (one: ListFit["heading"]) => `${one.row} ${one.first}`;
  const where = `${cells.sheet.name}, rows ${rows.first + 1} to ${rows.last + 1}`;
  if (headings.length === 1) {
    return (
      <p>
        Headings are in row {heading.row + 1} of {where}.
      </p>
    );
  }
  return (
    <Select
      label="Headings"
      value={name(heading)}
      options={headings.map((one) => ({
        value: name(one),
        label: `row ${one.row + 1}, from ${columnLetters(one.first)}: ${headingAt(cells, one, one.first)}, …`,
      }))}
      note={where}
      onChoose={(value) => {
        const chosen = headings.find((one) => name(one) === value);
        if (chosen) onChoose(chosen);
      }}
    />
  );
}

const FOR_STONE: readonly ResultRole[] = ["tons", "yards", "orderSold", "order", "deliveries", "hours"];
const FOR_BORDER: readonly ResultRole[] = ["border", "pieces", "stakes", "dig", "spoilLoads", "hours"];

/** What the wanted results need and no column says. */
function lacking(columns: NonNullable<Fitting["columns"]>, { columns: wanted }: Filling): AssumedField[] {
  const roles = new Set(columns.map(({ role }) => role));
  const wants = (some: readonly ResultRole[]) => wanted.some(({ role }) => some.includes(role));
  const forStone = wants(FOR_STONE) ? (["depth", "stone", "waste"] as const) : [];
  return [...forStone.filter((role) => !roles.has(role)), ...(wants(FOR_BORDER) ? (["border"] as const) : [])];
}
