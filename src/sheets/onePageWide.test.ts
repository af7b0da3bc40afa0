import { expect, test } from "vitest";
import { onePageWide } from "./onePageWide";

test("few rows leave the least sides, and many rows widen them so that they fit the page", () => {
  // 126 characters in 9 columns are 695.25 points: 9.66 in. At 7.5 in they are printed at 78%: 10 in hold 59 rows.
  const widths = Array.from({ length: 9 }, () => 14);
  expect(onePageWide(widths, 40, []).marginsIn).toMatchObject({ left: 0.5, right: 0.5 });
  // 68 rows of 15 points fit 97% of 10 in at 68.5%: 6.61 in across, which leaves 0.94 in at each side, and 1 in eighths.
  expect(onePageWide(widths, 68, [66])).toMatchObject({ breaksAbove: [66], marginsIn: { left: 1, right: 1 } });
  // No rows make the print narrower than 6 in.
  expect(onePageWide(widths, 200, []).marginsIn).toMatchObject({ left: 1.25, right: 1.25 });
});
