import type { FaultCell, FaultTable } from "../../../src/help/faultTable";
import { inLines } from "../../generated/inLines.mjs";
import type { Told, Try } from "./bench";
import { type Outcome, troubles } from "./troubles";

/** Collects what came of everything, for the page of the help. */
export function startTable() {
  const sentences: string[] = [];
  const operations: FaultTable["operations"][number][] = [];
  const panes: FaultTable["panes"][number][] = [];
  const saysOf = (told: readonly Told[]): number[] => {
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
    addPanes: (title: string, outcome: string, told: readonly Told[]) => {
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
    /** As it is kept with the help. */
    text: (): string => {
      const listed = troubles.map(({ key, group, title, about }) => ({ key, group, title, about }));
      const table: FaultTable = { troubles: listed, operations, panes, sentences };
      return inLines({ ...table });
    },
  };
}
