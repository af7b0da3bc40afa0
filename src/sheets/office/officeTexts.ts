/** A text of the letterhead or the terms: what it's called, and what it may hold. */
export interface OfficeText {
  readonly label: string;
  readonly most: number;
  readonly mayBreak?: true;
  readonly choices?: Readonly<Record<string, string>>;
}

const LINE = 120;
const SHORT = 20;
const PAGE = 4000;

/** What the office says about itself and its terms on every job's documents. What belongs to one job isn't here. */
export const officeTexts = {
  office: { label: "Office name", most: LINE },
  officeAddress: { label: "Address", most: LINE * 2, mayBreak: true },
  officePhone: { label: "Phone", most: LINE },
  officeLicense: { label: "License number", most: LINE },
  paper: { label: "Paper", most: SHORT, choices: { letter: "Letter", a4: "A4" } },
  noticeDays: { label: "Days of notice", most: SHORT },
  federal: {
    label: "Federal holidays",
    most: SHORT,
    choices: { yes: "no business days", no: "count as business days" },
  },
  ownHolidays: { label: "Other holidays", most: PAGE, mayBreak: true },
  marksDays: { label: "Days marks are good", most: SHORT },
  marksCounted: {
    label: "Days of marks",
    most: SHORT,
    choices: { calendar: "calendar days", working: "business days" },
  },
  byBed: {
    label: "Price on the proposal",
    most: SHORT,
    choices: { bed: "by bed", sum: "one price for the job" },
  },
  validDays: { label: "Days that the price is good", most: SHORT },
  depositPercent: { label: "Deposit, percent", most: SHORT },
  notIncluded: { label: "Not included", most: PAGE, mayBreak: true },
  terms: { label: "Terms", most: PAGE, mayBreak: true },
} as const satisfies Readonly<Record<string, OfficeText>>;

export type OfficeTextKey = keyof typeof officeTexts;
export const officeTextKeys = Object.keys(officeTexts) as OfficeTextKey[];

export function officeTextOf(key: string): OfficeText | undefined {
  return Object.hasOwn(officeTexts, key) ? officeTexts[key as OfficeTextKey] : undefined;
}

/** A text as a preview shows it: a choice in its words, and the beginning of what is long. */
export function shownText(key: string, text: string): string {
  const shown = officeTextOf(key)?.choices?.[text] ?? text.replace(/\s*\n\s*/g, "; ").trim();
  if (shown === "") return "(blank)";
  return shown.length > LONGEST_SHOWN ? `${shown.slice(0, LONGEST_SHOWN)}…` : shown;
}

const LONGEST_SHOWN = 80;
