/*
 * Dates for checks, by the computer's own calendar and not by ours: serial numbers count from 1899-12-30, which
 * holds from 1900-03-01 on.
 */
const DAY = 86_400_000;
const START = Date.UTC(1899, 11, 30);

/** The serial number of a day such as 2026-03-02. */
export const serial = (day: string) => (Date.parse(day) - START) / DAY;

/** A serial number as 2026-03-02. */
export const iso = (date: number) => new Date(START + date * DAY).toISOString().slice(0, 10);
