import { digDate, LAST_DATE, MOST_WORKING_DAYS } from "../../quantities/digDate";
import { must } from "../../quantities/must";
import { may, needs } from "../argument";
import { declare } from "../declare";
import { count } from "../read";
import { date } from "../readNamed";
import { dates } from "../readRanges";
import { dayShown } from "../working";
import { worksheetFunction } from "../worksheetFunction";

export const DIG_DATE = worksheetFunction(
  digDate,
  needs("notice_date", date),
  needs("working_days", count, { most: MOST_WORKING_DAYS }),
  may("holidays", dates),
);

export const digDateDeclared = /* @__PURE__ */ declare(DIG_DATE, {
  name: "DIG_DATE",
  purpose: "Dig and haul",
  about: "First day you can dig after giving notice. A guide only: your ticket and state law come first.",
  gives: "first day to dig",
  returns: "A date as a serial number; format the cell as a date.",
  kind: "date",
  rule: "That many full business days after the day of notice, which isn't counted. Your ticket and state law come first.",
  example: '=BED.DIG_DATE("2026-03-02", 2) gives 2026-03-05',
  source: "49 CFR 196.103 requires the call before digging; states set the days. Your ticket comes first.",
  related: ["DIG_YARDS"],
  arguments: {
    notice_date: { about: "Day you give notice (not counted): a date, or text like 2026-03-02." },
    working_days: { about: "Full business days of notice your one-call center requires, like 2." },
    holidays: { about: "Holidays: one cell or a range of dates. Blanks are skipped." },
  },
  native: (notice, days, holidays) => {
    const off = holidays.text === undefined ? "" : `,${holidays.text}`;
    const day = notice.constant === undefined ? `INT(${notice.text})` : notice.text;
    // Full working days after the day of notice, and then the day on which digging starts.
    const start = `WORKDAY(${day},${days.text}+1${off})`;
    return { text: start, when: [[`${start}<=${LAST_DATE}`]] };
  },
  working: (answer, notice, days, holidays) => {
    // A dig date after fewer days of notice is the working day that comes next.
    const counted = Array.from({ length: days }, (_, passed) => digDate(notice, passed, holidays));
    const told =
      days > MOST_DAYS_TOLD
        ? `${days} business days to ${dayShown(must(counted.at(-1)))}`
        : counted.map(dayShown).join(", ");
    return [
      `notice on ${dayShown(notice)}, not counted`,
      `full business days: ${told}`,
      `you can dig starting ${dayShown(answer)}`,
    ];
  },
});

/** Working days that are told one by one. */
const MOST_DAYS_TOLD = 6;
