import { tokenize } from "@borgar/fx";

/** What is before the functions' names: the office's own copy, and that of whoever develops it. */
const NAMESPACES = ["BED", "BEDDEV"];

/** As the functions are written, and as a spreadsheet program without the add-in writes them. */
const CALL = new RegExp(
  `^(?:_xlfn\\.|_xll\\.)*(?:(?:${NAMESPACES.join("|")})\\.|_xldudf_(?:${NAMESPACES.join("|")})_)(.+)$`,
  "i",
);

/**
 * The function's id where a name in a formula is one of ours, such as STONE_TONS.
 *
 * @example ownFunction("_xldudf_BED_FEET") // "FEET"
 */
export function ownFunction(name: string): string | undefined {
  return CALL.exec(name)?.[1]?.toUpperCase();
}

const LIKELY = new RegExp(`(?:${NAMESPACES.join("|")})[._]`, "i");

/** Whether a formula calls one of our functions at all; the others need no parsing. */
export function callsOwnFunction(formula: string): boolean {
  return (
    LIKELY.test(formula) &&
    tokenize(formula).some(({ type, value }) => type === "func" && ownFunction(value) !== undefined)
  );
}

/** Whether a formula names values within itself. */
export function definesNames(formula: string): boolean {
  return (
    /LET|LAMBDA/i.test(formula) && tokenize(formula).some(({ type, value }) => type === "func" && DEFINING.test(value))
  );
}

const DEFINING = /^(?:_xlfn\.)?(?:LET|LAMBDA)$/i;

/** Functions that always give a number, or an error. */
const NUMBERS = new Set(
  (
    "ABS AVERAGE CEILING COUNT COUNTA COUNTBLANK COUNTIF COUNTIFS DATE DAY DAYS EVEN EXP FIND FLOOR INT LEN LN LOG LOG10 " +
    "MATCH MAX MEDIAN MIN MOD MONTH N NETWORKDAYS NOW ODD PI POWER PRODUCT QUOTIENT RADIANS RAND ROUND ROUNDDOWN " +
    "ROUNDUP ROW ROWS COLUMN COLUMNS SEARCH SIGN SQRT SUM SUMIF SUMIFS SUMPRODUCT SUMSQ TODAY TRUNC VALUE WEEKDAY " +
    "WORKDAY YEAR"
  ).split(" "),
);
const TRUTHS = new Set("AND ISBLANK ISERR ISERROR ISLOGICAL ISNA ISNUMBER ISTEXT NOT OR XOR".split(" "));
const TEXTS = new Set(
  "CHAR CONCAT CONCATENATE DOLLAR FIXED LEFT LOWER MID PROPER REPLACE REPT RIGHT SUBSTITUTE TEXT TEXTJOIN TRIM UPPER".split(
    " ",
  ),
);

/** What an ordinary function gives, as far as its name tells. */
export function kindOfCall(name: string): "number" | "truth" | "text" | "unknown" {
  const plain = name.replace(/^_xlfn\./i, "").toUpperCase();
  if (NUMBERS.has(plain)) return "number";
  if (TRUTHS.has(plain)) return "truth";
  return TEXTS.has(plain) ? "text" : "unknown";
}
