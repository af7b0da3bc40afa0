import { serialOf } from "../../quantities/calendar/calendarDay";

/** Today where the person sits, as a serial number of the workbook's 1900 calendar. */
export function today(now = new Date()): number {
  return serialOf(now.getFullYear(), now.getMonth() + 1, now.getDate());
}
