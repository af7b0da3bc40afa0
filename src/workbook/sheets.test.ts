import { expect, test } from "vitest";
import { createProductHost } from "../../test/productHost";
import { belowUsed } from "./sheets";

test("below what a sheet holds is one blank row, and a blank sheet begins at its top", async () => {
  const host = await createProductHost({
    sheets: [
      { name: "Beds", cells: { B2: "Front", C5: 7 } },
      { name: "Blank", cells: {} },
    ],
  });
  // C5 is row 4 counted from 0; row 5 stays blank.
  expect((await belowUsed("Beds")).at).toEqual({ row: 6, column: 0 });
  expect((await belowUsed("Blank")).at).toEqual({ row: 0, column: 0 });
  host.dispose();
});
