import { defineConfig } from "vitest/config";
import { BaseSequencer, type TestSpecification } from "vitest/node";
import { listFunctions } from "../src/building/listFunctions.mjs";

listFunctions();

/** What takes longest starts first, so that it isn't left running alone at the end. */
const LONGEST = [
  /\/test\/start\//,
  /\/faults\/faults\.test\.ts$/,
  /\/browser\/screens\//,
  /\/browser\/(storage|templates)/,
  /\/browser\//,
];

const rank = ({ moduleId }: TestSpecification) => {
  const place = LONGEST.findIndex((files) => files.test(moduleId));
  return place < 0 ? LONGEST.length : place;
};

/** Orders the files also in a fresh clone, where no earlier run says how long each of them takes. */
class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return (await super.sort(files)).sort((one, other) => rank(one) - rank(other));
  }
}

/** The tests that run a second time on the client library of `@microsoft/office-js`; see DEVELOPERS.md. */
const onTheClientLibrary = (file: "web" | "desktop", include: string[]) => ({
  extends: true as const,
  test: { name: `client-${file}`, include, env: { CLIENT_LIBRARY: file } },
});

/** What has to hold on both of its files: all that writes, in whatever goes wrong, and what the two carry differently. */
const onEitherFile = [
  "test/client/**/*.test.ts",
  "test/contracts/faults/faults.test.ts",
  "test/contracts/{cell-editing,client-*,largeWrite,standin-sync,standin-tables,standin-workbook,syncs}.test.ts",
];

/** What the stand-in does, which the client library must do as well. */
const onEither = ["standin-{files,load,looks,names,office,pages,writing}"];

/**
 * The other contracts that go through `Excel`. The library's requests are answered by the stand-in, so that a run on the
 * library tries both; on the stand-in alone, their writers are in the table of failures.
 */
const onTheLibrary = [
  "check",
  "commaInSheetName",
  "drawing",
  "insert",
  "insertParts",
  "jobRows",
  "plainCopy",
  "plainCopyRates",
  "rates-{older,sheet}",
  "readRegion",
  "selectedBlock",
  "stores",
  "undoneAsBefore",
  "templates",
  "text-kept",
  "updateEstimate",
];
const contracts = (names: readonly string[]) => `test/contracts/{${names.join()}}.test.ts`;

export default defineConfig({
  root: new URL("..", import.meta.url).pathname,
  oxc: { jsx: { runtime: "automatic", importSource: "preact" } },
  test: {
    // A machine under load is slow, not wrong; speed is the benchmarks' business.
    testTimeout: 120_000,
    hookTimeout: 120_000,
    // Loading the grid again for each file would take a third of the run. A file cleans up what it changes.
    isolate: false,
    // The grid makes much that is thrown away at once; with more room for it, tests that run on the grid take a quarter less.
    execArgv: ["--max-semi-space-size=128"],
    expect: { poll: { timeout: 60_000 } },
    sequence: { sequencer: LongestFirst },
    reporters: ["default", new URL("./closingLine.ts", import.meta.url).pathname],
    projects: [
      {
        extends: true,
        test: {
          name: "unit",
          include: ["src/**/*.test.ts", "src/**/*.test.tsx", "test/{references,properties,contracts}/**/*.test.ts"],
          exclude: [contracts(onTheLibrary)],
        },
      },
      onTheClientLibrary("web", [...onEitherFile, contracts([...onEither, ...onTheLibrary])]),
      onTheClientLibrary("desktop", onEitherFile),
      {
        extends: true,
        // Waits most of its time, beside the others.
        test: { name: "start", include: ["test/start/**/*.test.ts"], testTimeout: 600_000, hookTimeout: 600_000 },
      },
      {
        extends: true,
        test: {
          name: "browser",
          include: ["test/browser/**/*.test.ts"],
          globalSetup: ["test/browser/setup.ts"],
          testTimeout: 300_000,
          hookTimeout: 300_000,
        },
      },
    ],
  },
});
