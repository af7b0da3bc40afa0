import type { Anchor } from "../spreadsheet/areas";
import { compose, type DraftRow } from "./compose";
import type { LookName, Plan } from "./plan";
import { sentence } from "./typed";

/** A row of a report as the check gives it; every cell is plain text. */
export interface ReportLine {
  readonly kind: "title" | "heading" | "finding" | "note";
  readonly cells: readonly string[];
}

const WIDTHS = [12, 22, 28, 40, 40, 40, 28];
const LOOKS: Readonly<Record<ReportLine["kind"], LookName | undefined>> = {
  title: "title",
  heading: "section",
  finding: undefined,
  note: "caution",
};

/** The report of a check as a plan for a sheet. */
export function checkReport(lines: readonly ReportLine[], at: Anchor): Plan {
  const rows = lines.map(({ kind, cells }): DraftRow => {
    const look = LOOKS[kind];
    return {
      ...(look && { look }),
      cells: cells.map((text) => ({
        content: sentence(text),
        ...(kind === "finding" && { look: "wrapped" as const }),
      })),
    };
  });
  return compose("report of the check", rows, WIDTHS, at);
}
