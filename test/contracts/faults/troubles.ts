import type { TroubleGroup } from "../../../src/help/faultTable";
import { chosenLibrary } from "../../client/library";
import type { HeadlessHost } from "../../headlessHost";
import { type Bench, type Clean, select, type Try } from "./bench";
import type { Operation } from "./operation";

/** What may come of a action in a trouble. */
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
  readonly applies: (operation: Operation, clean: Clean) => boolean;
  /** Tries the operation in it, once or several times. */
  readonly tries: (bench: Bench, operation: Operation, clean: Clean) => Promise<Try[]>;
}

/** Where all changes of a request take effect, and only the answer to it is lost. */
const ALL = Number.POSITIVE_INFINITY;
/** After how many of the changes of a request it fails, beside one and two thirds of them. */
const FIRST = [0, 6] as const;
/** What is written is written by the last requests; those before only read, so that they are the same after any. */
const WRITING_SYNCS = 2;

/** A code that is in no list, and words such as come up from inside a program. */
const UNKNOWN_FAULT = [
  "0x800A03EC" as "GeneralException",
  "Exception from HRESULT: 0x800A03EC. RichApi.Error: undefined is not an object (evaluating 'e.argumentId')",
] as const;
/** How many of the last points are tried with a second failure. */
const LAST_POINTS = 3;

const numbers = (from: number, to: number) => Array.from({ length: to - from + 1 }, (_, index) => from + index);

/** The client library's file that the tests run on, if they do. */
export const FILE = chosenLibrary();

/**
 * Those that are played on the client library's file at hand: its two files take turns. There an operation is tried in
 * every trouble once, at the trouble's last moment, when most has been written. What is in a request is the same as on
 * the stand-in, which tries each moment.
 */
export const onThisFile = <T>(all: readonly T[]): readonly T[] =>
  FILE === undefined ? all : all.filter((_, place) => place % 2 === (FILE === "web" ? 0 : 1));

async function each<T>(items: readonly T[], play: (item: T) => Promise<Try>): Promise<Try[]> {
  const tries: Try[] = [];
  const tried = FILE ? items.slice(-1) : items;
  for (const item of tried) tries.push(await play(item));
  return tries;
}

/** Each point of each request at which it can fail, as far as another one says more. */
const everyFault = ({ syncs, changes }: Clean) =>
  numbers(1, syncs).flatMap((sync) => {
    const made = changes[sync - 1] ?? 0;
    const between = [...FIRST, Math.floor(made / 3), Math.floor((made * 2) / 3)].filter((after) => after < made);
    const points = sync > syncs - WRITING_SYNCS ? [...new Set(between), ALL] : [ALL];
    return points.map((after) => ({ sync, after }));
  });

const idOf = ({ grid }: HeadlessHost, name: string) => grid.sheets.list().find((sheet) => sheet.name === name)?.id;

/**
 * Happens to the sheet that an operation is meant for, or that it makes, while it runs: each before another of its
 * requests.
 */
function meanwhile(happens: (host: HeadlessHost, sheetId: string) => void | Promise<void>): Trouble["tries"] {
  return async (bench, { sheet }, { syncs }) => {
    const toSheet = async (host: HeadlessHost) => {
      const made = host.grid.sheets.list().find(({ name }) => !bench.sheetNames.includes(name))?.id;
      const id = sheet === undefined ? made : idOf(host, sheet);
      if (id !== undefined) await happens(host, id);
    };
    return each(numbers(2, syncs), (beforeSync) => bench.play({ meanwhile: { beforeSync, happens: toSheet } }));
  };
}

const hasSheet = ({ sheet, withSheets }: Operation, { syncs }: Clean) =>
  (sheet !== undefined || withSheets === true) && syncs > 1;

/** @param first the first of the selected cells: what goes there is what goes to that cell alone. */
const selecting = (address: string, first = address): Trouble["tries"] => {
  return async (bench, { front }) => [
    await bench.play({ arrange: () => select(front, address), arrangeDone: () => select(front, first) }),
  ];
};

const protectStructure = (host: HeadlessHost) => {
  host.session.structureProtected = true;
};

export const troubles: readonly Trouble[] = [
  {
    key: "fault",
    group: "fails",
    title: "The program fails at a step",
    about:
      "The spreadsheet program gives up midway: at each step in turn, after none, some, or all of the step's changes.",
    allowed: ["as before", "done"],
    applies: () => true,
    tries: (bench, _, clean) =>
      each(everyFault(clean), ({ sync, after }) => bench.play({ plan: (host) => host.failAtSync(sync, after) })),
  },
  {
    key: "faultTwice",
    group: "fails",
    title: "It fails again while undoing",
    about: "The same, and the first try at undoing fails too.",
    allowed: ["as before", "done"],
    applies: (_, { syncs }) => syncs > 1,
    tries: (bench, _, clean) =>
      each(everyFault(clean).slice(-LAST_POINTS), ({ sync, after }) =>
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
    about: "The program breaks down midway and does nothing more, so nothing can be put back either.",
    allowed: ["told of the rest", "as before"],
    applies: (_, { syncs }) => syncs > 1,
    tries: async (bench, _, { syncs }) => [
      await bench.play({
        plan: (host) => {
          host.failAtSync(syncs, 4);
          for (const later of numbers(syncs + 1, syncs + 12)) host.failAtSync(later);
        },
      }),
    ],
  },
  {
    key: "faultUnknown",
    group: "fails",
    title: "It fails for its own reason",
    about: "The program answers with an error code we don't know, at the first step and at the last.",
    allowed: ["as before", "done"],
    applies: () => true,
    tries: (bench, _, { syncs }) =>
      each([...new Set([1, syncs])], (sync) =>
        bench.play({ plan: (host) => host.failAtSync(sync, 2, ...UNKNOWN_FAULT) }),
      ),
  },
  {
    key: "protected",
    group: "protected",
    title: "The sheet is protected",
    about: "The sheet to be changed is already protected.",
    allowed: ["as before", "done"],
    applies: ({ sheet }) => sheet !== undefined,
    tries: async (bench, { sheet }) => [
      await bench.play({ arrange: (host) => void host.session.protectedSheets.add(idOf(host, sheet!)!) }),
    ],
  },
  {
    key: "protectedMeanwhile",
    group: "protected",
    title: "It gets protected meanwhile",
    about: "Someone protects the sheet between two steps.",
    allowed: ["as before", "done", "told of the rest"],
    applies: hasSheet,
    tries: meanwhile((host, id) => void host.session.protectedSheets.add(id)),
  },
  {
    key: "structure",
    group: "protected",
    title: "The workbook is protected",
    about: "The workbook structure is protected: no sheet can be added, deleted, or renamed.",
    allowed: ["as before", "done"],
    applies: ({ withSheets }) => withSheets === true,
    tries: async (bench) => [await bench.play({ arrange: protectStructure, arrangeDone: () => undefined })],
  },
  {
    key: "structureMeanwhile",
    group: "protected",
    title: "The workbook is protected meanwhile",
    about: "Someone protects the workbook structure between two steps.",
    allowed: ["as before", "done", "told of the rest"],
    applies: ({ withSheets }, { syncs }) => withSheets === true && syncs > 1,
    tries: (bench, _, { syncs }) =>
      each(numbers(2, syncs), (beforeSync) => bench.play({ meanwhile: { beforeSync, happens: protectStructure } })),
  },
  {
    key: "editing",
    group: "fails",
    title: "A cell is open for typing",
    about: "Someone is typing in a cell; the pane says so after two and a half seconds, and goes on when they're done.",
    allowed: ["done"],
    applies: () => true,
    tries: (bench, _, { syncs }) =>
      each(numbers(1, syncs), (sync) =>
        bench.play({
          plan: (host) => {
            const open = () => {
              host.isEditing = true;
              setTimeout(() => {
                host.isEditing = false;
              }, 50);
            };
            // A request that is on its way does not wait any more; the next one does.
            if (sync === 1) open();
            else host.session.beforeSync(sync - 1, open);
          },
        }),
      ),
  },
  {
    key: "editingRefused",
    group: "fails",
    title: "… in a program that does not wait",
    about: "Some versions of the program refuse instead of waiting: at each step in turn.",
    allowed: ["as before", "done"],
    applies: () => true,
    tries: (bench, _, { syncs }) =>
      each(numbers(1, syncs), (sync) =>
        bench.play({ plan: (host) => host.failAtSync(sync, 0, "InvalidOperationInCellEditMode") }),
      ),
  },
  {
    key: "table",
    group: "selected",
    title: "A table is selected",
    about: "The selected cell is in a table.",
    allowed: ["as before"],
    applies: ({ bySelection }) => bySelection === true,
    tries: selecting("H2"),
  },
  {
    key: "column",
    group: "selected",
    title: "A whole column is selected",
    about: "The selection is a whole column, blank in its first cell.",
    allowed: ["as before", "done"],
    applies: ({ bySelection }) => bySelection === true,
    tries: selecting("P:P", "P1"),
  },
  {
    key: "everything",
    group: "selected",
    title: "The whole sheet is selected",
    about: "All cells of the sheet are selected.",
    allowed: ["as before", "done"],
    applies: ({ bySelection }) => bySelection === true,
    tries: selecting("A1:XFD1048576", "A1"),
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
    about: "A picture or chart is selected instead of a cell.",
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
    about: "Someone deletes the sheet between two steps.",
    allowed: ["as before", "done"],
    applies: hasSheet,
    tries: meanwhile((host, id) => host.grid.sheets.remove(id)),
  },
  {
    key: "renamed",
    group: "others",
    title: "It gets renamed meanwhile",
    about: "Someone renames the sheet between two steps.",
    allowed: ["as before", "done"],
    applies: hasSheet,
    tries: meanwhile((host, id) => host.grid.sheets.rename(id, "Renamed")),
  },
  {
    key: "typed",
    group: "others",
    title: "Someone types in its place meanwhile",
    about: "Someone types in one of its cells between two steps.",
    allowed: ["as before", "done"],
    applies: ({ cell }, { syncs }) => cell !== undefined && syncs > 1,
    tries: (bench, { cell }, { syncs }) => {
      const happens = async (host: HeadlessHost) => {
        const isThere = idOf(host, cell!.replace(/!.*/, "").replaceAll("'", "")) !== undefined;
        if (isThere) await host.type({ [cell!]: "31 (measured again)" });
      };
      return each(numbers(2, syncs), (beforeSync) => bench.play({ meanwhile: { beforeSync, happens } }));
    },
  },
  {
    key: "rows",
    group: "others",
    title: "Rows are inserted above meanwhile",
    about: "Someone inserts three rows at the top of the sheet between two steps.",
    allowed: ["as before", "done", "told of the rest"],
    applies: ({ cell, sheet }, { syncs }) => cell !== undefined && sheet !== undefined && syncs > 1,
    tries: meanwhile((host, id) => {
      // Someone else does it: what is selected here stays.
      const selected = host.grid.selection.get();
      host.open.workbook.getSheetBySheetId(id)!.insertRows(0, 3);
      host.grid.selection.set(selected);
    }),
  },
];
