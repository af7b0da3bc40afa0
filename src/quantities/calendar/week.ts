export const DAYS_PER_WEEK = 7;

/** Days of the week as the computer's calendar numbers them. */
export const SUNDAY = 0;
export const MONDAY = 1;
export const THURSDAY = 4;
export const SATURDAY = 6;
