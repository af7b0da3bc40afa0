import { BaseSequencer, type TestSpecification } from "vitest/node";

/** What takes longest starts first, so that it isn't left running alone at the end. */
const LONGEST = [/test\/contracts\/faults\/faults\.test\.ts$/, /test\/browser\//];

const rank = ({ moduleId }: TestSpecification) => {
  const place = LONGEST.findIndex((files) => files.test(moduleId));
  return place < 0 ? LONGEST.length : place;
};

/** Orders the test files of a run, also in a fresh clone, where no earlier run says how long each of them takes. */
export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return (await super.sort(files)).sort((one, other) => rank(one) - rank(other));
  }
}
