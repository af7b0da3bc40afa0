import type { LookName } from "./plan";

/** What a look asks of the host. What is absent is left as it is. */
export interface Look {
  readonly fill?: string;
  readonly color?: string;
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly size?: number;
  readonly align?: "Left" | "Right";
  /** Steps in from the cell's edge, so that a unit does not touch the number before it. */
  readonly indent?: number;
  /** Breaks long text into lines, and keeps it at the top of its cell. */
  readonly wrap?: boolean;
  /** Keeps a number at the top of its cell, beside text that breaks into lines. */
  readonly top?: boolean;
  /** A rule above the cells, or below them. */
  readonly ruleAbove?: string;
  readonly ruleBelow?: string;
}

/** Colors are our own, with at least 4.5:1 between text and fill; typed cells are the only tinted ones. */
export const looks: Readonly<Record<LookName, Look>> = {
  title: { fill: "#24413A", color: "#FFFFFF", bold: true, size: 13 },
  section: { fill: "#DCE7E1", color: "#1B332D", bold: true },
  textHeading: { align: "Left", indent: 1 },
  numberHeading: { align: "Right" },
  label: { color: "#1B1B1B" },
  input: { fill: "#FBF0D9", color: "#5A3A00", align: "Right" },
  /** A typed cell whose column holds names. */
  inputWords: { fill: "#FBF0D9", color: "#5A3A00", align: "Left", indent: 1 },
  result: { color: "#1B1B1B" },
  total: { color: "#1B1B1B", bold: true, ruleAbove: "#24413A" },
  note: { color: "#5A635E", italic: true, align: "Left", indent: 1 },
  aside: { color: "#5A635E", italic: true, align: "Right" },
  caution: { color: "#1B1B1B" },
  wrapped: { color: "#1B1B1B", wrap: true },
  /** Text behind a number. */
  wrappedNext: { color: "#1B1B1B", align: "Left", indent: 1, wrap: true },
  wrappedNote: { color: "#5A635E", italic: true, align: "Left", indent: 1, wrap: true },
  topNumber: { color: "#1B1B1B", align: "Right", top: true },
  topTotal: { color: "#1B1B1B", align: "Right", bold: true, top: true },
  /** A unit behind a number, or a label, beside text that breaks into lines. */
  topUnit: { color: "#1B1B1B", align: "Left", indent: 1, top: true },
  topLabel: { color: "#1B1B1B", top: true },
  /** A line to write on. */
  blankToFill: { ruleBelow: "#5A635E" },
  checkBox: { color: "#1B1B1B", align: "Right", size: 13, top: true },
  /** A heading within a paper, on white. */
  heading: { color: "#1B332D", bold: true, wrap: true },
  /** In columns side by side, a step in from the right so that texts do not touch. */
  rightHeading: { color: "#1B332D", bold: true, align: "Right", indent: 1, wrap: true },
  rightWords: { color: "#1B1B1B", align: "Right", indent: 1, wrap: true },
  rightNumber: { color: "#1B1B1B", align: "Right", indent: 1, top: true },
  rightTotal: { color: "#1B1B1B", align: "Right", indent: 1, bold: true, top: true },
  rightTitle: { align: "Right" },
  rightLabel: { color: "#5A635E", align: "Right", indent: 1, top: true },
  /** What a line to write on is for. */
  underLine: { color: "#5A635E", size: 9 },
  warning: { color: "#8A2B00", bold: true },
};

/** The look of a cell while its warning condition holds. */
export const warned: Look = { fill: "#FFD9B0", color: "#7A2600" };
