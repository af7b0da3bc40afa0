import type { TroubleGroup } from "../../../src/help/faultTable";
import type { HeadlessHost } from "../../headlessHost";
import { type Bench, select, type Try } from "./bench";
import type { Operation } from "./operation";

/** What may come of a deed in a trouble. */
export type Outcome =
  /** The workbook is as it was, and the person is told. */
  | "as before"
  /** All of it was done. */
  | "done"
  /** Something may be left, and the person is told so. */
  | "told of the rest";

/** A trouble, as a column of the table. */
export interface Trouble {
  readonly key: string;
  readonly group: TroubleGroup;
  readonly title: string;
  readonly about: string;
  /** What is allowed to come of it; the first is the usual. */
  readonly allowed: readonly Outcome[];
  readonly applies: (operation: Operation, syncs: number) => boolean;
  /** Tries the operation in it, once or several times. */
  readonly tries: (bench: Bench, operation: Operation, syncs: number) => Promise<Try[]>;
}

/** Where all changes of a request take effect, and only the answer to it is lost. */
const ALL = Number.POSITIVE_INFINITY;
/** After how many of the changes of a request it fails. */
const AFTER = [0, 1, 6, ALL] as const;
/** What is written is written by the last requests; those before only read, so that they are the same after any. */
const WRITING_SYNCS = 2;

const numbers = (from: number, to: number) => Array.from({ length: to - from + 1 }, (_, index) => from + index);

async function each<T>(items: readonly T[], play: (item: T) => Promise<Try>): Promise<Try[]> {
  const tries: Try[] = [];
  for (const item of items) tries.push(await play(item));
  return tries;
}

const everyFault = (syncs: number) =>
  numbers(1, syncs).flatMap((sync) => (sync > syncs - WRITING_SYNCS ? AFTER : [ALL]).map((after) => ({ sync, after })));

const idOf = ({ grid }: HeadlessHost, name: string) => grid.sheets.list().find((sheet) => sheet.name === name)?.id;

/** Happens to the sheet that an operation is meant for, while it runs: each before another of its requests. */
function meanwhile(happens: (host: HeadlessHost, sheetId: string) => void): Trouble["tries"] {
  return async (bench, { sheet }, syncs) => {
    const toSheet = (host: HeadlessHost) => {
      const id = idOf(host, sheet!);
      if (id !== undefined) happens(host, id);
    };
    return each(numbers(2, syncs), (beforeSync) => bench.play({ meanwhile: { beforeSync, happens: toSheet } }));
  };
}

const selecting = (address: string): Trouble["tries"] => {
  return async (bench, { front }) => [await bench.play({ arrange: () => select(front, address) })];
};

export const troubles: readonly Trouble[] = [
  {
    key: "fault",
    group: "fails",
    title: "The program fails at a step",
    about:
      "The spreadsheet program gives up in the middle: at each step in turn, after none, some and all of what the step changes.",
    allowed: ["as before", "done"],
    applies: () => true,
    tries: (bench, _, syncs) =>
      each(everyFault(syncs), ({ sync, after }) => bench.play({ plan: (host) => host.failAtSync(sync, after) })),
  },
  {
    key: "faultTwice",
    group: "fails",
    title: "It fails again while putting back",
    about: "The same, and the first try to put things back fails as well.",
    allowed: ["as before", "done"],
    applies: (_, syncs) => syncs > 1,
    tries: (bench, _, syncs) =>
      each(everyFault(syncs).slice(-AFTER.length), ({ sync, after }) =>
        bench.play({
          plan: (host) => {
            host.failAtSync(sync, after);
            host.failAtSync(sync + 1);
            host.failAtSync(sync + 3, 1);
          },
        }),
      ),
  },
  {
    key: "faultForGood",
    group: "fails",
    title: "It fails for good",
    about: "The program breaks down half-way and does nothing more at all, so that nothing can be put back either.",
    allowed: ["told of the rest", "as before"],
    applies: (_, syncs) => syncs > 1,
    tries: async (bench, _, syncs) => [
      await bench.play({
        plan: (host) => {
          host.failAtSync(syncs, 4);
          for (const later of numbers(syncs + 1, syncs + 12)) host.failAtSync(later);
        },
      }),
    ],
  },
  {
    key: "protected",
    group: "protected",
    title: "The sheet is protected",
    about: "The sheet that is written to was protected before.",
    allowed: ["as before", "done"],
    applies: ({ sheet }) => sheet !== undefined,
    tries: async (bench, { sheet }) => [
      await bench.play({ arrange: (host) => void host.session.protectedSheets.add(idOf(host, sheet!)!) }),
    ],
  },
  {
    key: "protectedMeanwhile",
    group: "protected",
    title: "It is protected meanwhile",
    about: "Somebody protects the sheet between two steps.",
    allowed: ["as before", "done", "told of the rest"],
    applies: ({ sheet }, syncs) => sheet !== undefined && syncs > 1,
    tries: meanwhile((host, id) => void host.session.protectedSheets.add(id)),
  },
  {
    key: "structure",
    group: "protected",
    title: "The workbook is protected",
    about: "The structure of the workbook is protected: no sheet can be added, taken away or renamed.",
    allowed: ["as before", "done"],
    applies: ({ withSheets }) => withSheets === true,
    tries: async (bench) => [
      await bench.play({
        arrange: (host) => {
          host.session.structureProtected = true;
        },
      }),
    ],
  },
  {
    key: "editing",
    group: "fails",
    title: "A cell is open for typing",
    about:
      "Somebody is typing into a cell; the pane says so after two and a half seconds, and goes on once it is left.",
    allowed: ["done"],
    applies: () => true,
    tries: async (bench) => [
      await bench.play({
        plan: (host) => {
          host.isEditing = true;
          setTimeout(() => {
            host.isEditing = false;
          }, 50);
        },
      }),
    ],
  },
  {
    key: "editingRefused",
    group: "fails",
    title: "… in a program that does not wait",
    about: "Some versions of the program refuse in place of waiting: at each step in turn.",
    allowed: ["as before", "done"],
    applies: () => true,
    tries: (bench, _, syncs) =>
      each(numbers(1, syncs), (sync) =>
        bench.play({ plan: (host) => host.failAtSync(sync, 0, "InvalidOperationInCellEditMode") }),
      ),
  },
  {
    key: "table",
    group: "selected",
    title: "A table is selected",
    about: "The selected cell lies in a table.",
    allowed: ["as before"],
    applies: ({ bySelection }) => bySelection === true,
    tries: selecting("H2"),
  },
  {
    key: "column",
    group: "selected",
    title: "A whole column is selected",
    about: "The selection is a column from end to end, blank in its first cell.",
    allowed: ["as before", "done"],
    applies: ({ bySelection }) => bySelection === true,
    tries: selecting("P:P"),
  },
  {
    key: "everything",
    group: "selected",
    title: "The whole sheet is selected",
    about: "All cells of the sheet are selected.",
    allowed: ["as before", "done"],
    applies: ({ bySelection }) => bySelection === true,
    tries: selecting("A1:XFD1048576"),
  },
  {
    key: "lastRow",
    group: "selected",
    title: "The last row is selected",
    about: "The selected cell is in the last row of the sheet, 1,048,576.",
    allowed: ["as before"],
    applies: ({ bySelection }) => bySelection === true,
    tries: selecting("D1048576"),
  },
  {
    key: "lastColumn",
    group: "selected",
    title: "The last column is selected",
    about: "The selected cell is in the last column of the sheet, XFD.",
    allowed: ["as before"],
    applies: ({ bySelection }) => bySelection === true,
    tries: selecting("XFD40"),
  },
  {
    key: "picture",
    group: "selected",
    title: "A picture is selected",
    about: "A picture or a chart is selected, and no cell.",
    allowed: ["as before", "done"],
    applies: () => true,
    tries: async (bench) => [
      await bench.play({
        arrange: (host) => {
          host.session.pictureSelected = true;
        },
      }),
    ],
  },
  {
    key: "deleted",
    group: "others",
    title: "The sheet is deleted meanwhile",
    about: "Somebody deletes the sheet between two steps.",
    allowed: ["as before", "done"],
    applies: ({ sheet }, syncs) => sheet !== undefined && syncs > 1,
    tries: meanwhile((host, id) => host.grid.sheets.remove(id)),
  },
  {
    key: "renamed",
    group: "others",
    title: "It is renamed meanwhile",
    about: "Somebody gives the sheet another name between two steps.",
    allowed: ["as before", "done"],
    applies: ({ sheet }, syncs) => sheet !== undefined && syncs > 1,
    tries: meanwhile((host, id) => host.grid.sheets.rename(id, "Renamed")),
  },
];
