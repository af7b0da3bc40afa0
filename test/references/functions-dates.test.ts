import { WORKDAY } from "@formulajs/formulajs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { DIG_DATE } from "../../src/functions/index";
import { iso, serial } from "../dates";

/** 5 U.S.C. 6103 (seen): a holiday on a Saturday, as 4 July 2026, is kept on the Friday before. */
const INDEPENDENCE_DAY_2026 = "2026-07-03";

describe("day counts, the day of notice not counted, federal holidays (computed)", () => {
  test.each([
    ["2026-03-02", 2, "2026-03-05"],
    ["2026-03-06", 2, "2026-03-11"],
    ["2026-07-02", 2, "2026-07-08"],
  ])("notice on %s, %d working days: %s", (notice, days, first) => {
    const holidays = [[serial(INDEPENDENCE_DAY_2026)], [""], [null]];
    expect(iso(DIG_DATE(serial(notice), days, holidays))).toBe(first);
    expect(iso(DIG_DATE(notice, days, [[INDEPENDENCE_DAY_2026]]))).toBe(first);
  });

  test("a time of day in the notice changes nothing", () => {
    expect(iso(DIG_DATE(serial("2026-03-02") + 0.99, 2))).toBe("2026-03-05");
  });
});

describe("against WORKDAY of @formulajs/formulajs, with one day more", () => {
  test("for any day of notice, number of days, and holidays", () => {
    const date = fc.integer({ min: serial("2000-01-01"), max: serial("2060-12-31") });
    const afterwards = fc.array(fc.integer({ min: 0, max: 40 }), { maxLength: 8 });
    fc.assert(
      fc.property(date, fc.integer({ min: 1, max: 20 }), afterwards, (notice, days, offsets) => {
        const holidays = offsets.map((offset) => notice + offset);
        const asDate = (day: number) => new Date(`${iso(day)}T00:00:00`);
        const expected = WORKDAY(asDate(notice), days + 1, holidays.map(asDate));
        expect(expected).toBeInstanceOf(Date);
        const [y, m, d] = [expected.getFullYear(), expected.getMonth(), expected.getDate()];
        expect(
          DIG_DATE(
            notice,
            days,
            holidays.map((day) => [day]),
          ),
        ).toBe(serial(new Date(Date.UTC(y, m, d)).toISOString()));
      }),
    );
  });
});
