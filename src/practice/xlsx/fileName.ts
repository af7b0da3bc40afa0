const datedEnding = / \d{4}-\d\d-\d\d$/;

/** What the practice workbook is called until a file is opened. */
export const plainName = "Practice";

/**
 * The name of the file that a workbook is saved as: always a new one, with the date.
 *
 * @param name the workbook's.
 * @example savedName("Spring jobs", new Date(2025, 2, 9)) // "Spring jobs 2025-03-09.xlsx"
 */
export function savedName(name: string, day: Date): string {
  const plain =
    name
      .replace(datedEnding, "")
      .replace(/[\\/:*?"<>|\p{Cc}]/gu, " ")
      .trim() || plainName;
  const [year, month, date] = [day.getFullYear(), day.getMonth() + 1, day.getDate()];
  const two = (number: number) => String(number).padStart(2, "0");
  return `${plain} ${year}-${two(month)}-${two(date)}.xlsx`;
}

/** What a workbook is called that is opened from a file: `Spring jobs` for `Spring jobs.xlsx`. */
export function nameOf(fileName: string): string {
  return fileName.replace(/\.[^.]*$/, "").trim() || plainName;
}
