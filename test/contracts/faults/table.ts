import type { FaultCell, FaultTable } from "../../../src/help/faultTable";
import { inLines } from "../../generated/inLines.mjs";
import type { Report, Try } from "./bench";
import { type Outcome, troubles } from "./troubles";

/** Collects what came of everything, for the page of the help. */
export function startTable() {
  const sentences: string[] = [];
  const operations: FaultTable["operations"][number][] = [];
  const panes: FaultTable["panes"][number][] = [];
  const saysOf = (told: readonly Report[]): number[] => {
    const texts = new Set(told.filter(({ done }) => !done).map(({ text }) => text));
    return [...texts].map((text) => {
      const known = sentences.indexOf(text);
      return known >= 0 ? known : sentences.push(text) - 1;
    });
  };
  return {
    addOperation: (title: string, steps: number, cells: Readonly<Record<string, FaultCell>>) => {
      operations.push({ title, steps, cells });
    },
    addPanes: (title: string, outcome: string, told: readonly Report[]) => {
      panes.push({ title, outcome, says: saysOf(told) });
    },
    cellOf: (tries: readonly Try[], outcomeOf: (one: Try) => Outcome): FaultCell => {
      const count = (outcome: Outcome) => tries.filter((one) => outcomeOf(one) === outcome).length;
      return {
        asBefore: count("as before"),
        done: count("done"),
        told: count("told of the rest"),
        says: saysOf(tries),
      };
    },
    /** What came of some tries that came of none where all were tried: an outcome, a sentence, or a row. */
    besides: (all: FaultTable): string[] => [
      ...sentences.filter((sentence) => !all.sentences.includes(sentence)),
      ...operations.flatMap(({ title, steps, cells }) => {
        const known = all.operations.find((one) => one.title === title);
        if (known?.steps !== steps) return [`${title}: ${steps} steps`];
        return Object.entries(cells).flatMap(([key, cell]) =>
          (["asBefore", "done", "told"] as const)
            .filter((outcome) => cell[outcome] > (known.cells[key]?.[outcome] ?? 0))
            .map((outcome) => `${title}, ${key}: ${outcome}`),
        );
      }),
    ],
    /** As it is kept with the help. */
    text: (): string => {
      const listed = troubles.map(({ key, group, title, about }) => ({ key, group, title, about }));
      const table: FaultTable = { troubles: listed, operations, panes, sentences };
      return inLines({ ...table });
    },
  };
}
