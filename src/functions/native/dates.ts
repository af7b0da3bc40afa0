import { LAST_DATE } from "../../quantities/digDate";
import { form } from "./form";
import { date, workingDays } from "./numbers";
import { dates } from "./ranges";

export const DIG_DATE = form([date, workingDays, dates], (notice, days, holidays) => {
  const off = holidays.text === undefined ? "" : `,${holidays.text}`;
  const day = notice.constant === undefined ? `INT(${notice.text})` : notice.text;
  // Full working days after the day of notice, and then the day on which digging starts.
  const start = `WORKDAY(${day},${days.text}+1${off})`;
  return { text: start, when: [[`${start}<=${LAST_DATE}`]] };
});
