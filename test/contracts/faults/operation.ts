import type { PracticeOffice } from "../../../src/practice/grid/practiceOffice";
import type { HeadlessHost } from "../../headlessHost";
import type { Report } from "./bench";

/** Something that a person does in the pane, and that writes to the workbook. */
export interface Operation {
  /** In the person's words, as a row of the table. */
  readonly title: string;
  /** Which exported functions of the workbook room it stands for. */
  readonly writers: readonly string[];
  readonly office: PracticeOffice;
  /** This sheet, and what is selected on it. */
  readonly front: string;
  readonly selected: string;
  /** The sheet that it reads or writes to; left out where it only makes new ones. */
  readonly sheet?: string;
  /** One of the cells that it writes to and that someone else may type into, such as Notes!E14. */
  readonly cell?: string;
  /** Whether it goes by what is selected. */
  readonly bySelection?: boolean;
  /** Whether it makes or takes away sheets. */
  readonly withSheets?: boolean;
  /** Makes the workbook ready, and gives the action: what the pane does once the button is pressed. */
  readonly ready: (host: HeadlessHost) => Promise<() => Promise<Report>>;
}
