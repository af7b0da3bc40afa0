import { startingDetails } from "../../../src/pane/papers/details";
import { jobOf, orderPaper } from "../../../src/pane/papers/makePapers";
import { proposalOf, proposalPlan } from "../../../src/pane/papers/proposalOf";
import type { FoundBed } from "../../../src/pane/papers/readJob";
import { type BedForm, blankForm } from "../../../src/quantities/bed/form";
import { estimateBlock } from "../../../src/sheets/estimate/block";
import { findBlocks } from "../../../src/sheets/estimate/readBlock";
import { crewSheet } from "../../../src/sheets/papers/crewSheet";
import { foundBed } from "../../foundBed";
import type { Growing } from "./growing";

const CORNER = { row: 0, column: 0 };

/** Beds of many sizes, so that their border is cut into many lengths. */
const bed = (place: number): BedForm => ({
  ...blankForm(),
  name: `Bed ${place + 1}`,
  typed: { length: `${8 + (place % 37)}' ${place % 12}"`, width: String(3 + (place % 5)), stone: "river rock" },
});

const bedsOf = (count: number): FoundBed[] => Array.from({ length: count }, (_, place) => foundBed(bed(place), place));

/** The values that a sheet with so many estimate blocks, one below the other, would show. */
function blocks(count: number): (string | number)[][] {
  return Array.from({ length: count }, (_, place) => estimateBlock(bed(place), CORNER).formulas).flatMap((rows) => [
    ...rows.map((row) => row.map((cell) => cell ?? "")),
    [],
  ]);
}

/** What is done with the beds of a job, by their number. */
export const ofJobs: readonly Growing[] = [
  {
    what: "Find estimates on a sheet",
    of: "blocks",
    least: 3,
    ready: (count) => {
      const values = blocks(count);
      return () => findBlocks(values, CORNER);
    },
  },
  {
    what: "Order, crew sheet, and proposal",
    of: "beds",
    least: 1,
    isPuzzle: true,
    ready: (count) => {
      const beds = bedsOf(count);
      const head = { job: "Alder Court", place: "", start: "", people: 2, drawings: [], measures: [] };
      return () => {
        const job = jobOf(beds);
        orderPaper(job, startingDetails, undefined);
        crewSheet(job.crew, job.order, head, "letter", CORNER);
        proposalPlan(proposalOf(job, startingDetails), startingDetails);
      };
    },
  },
];
