import { tokenize } from "@borgar/fx";
import type { FileValue } from "./read/cells";

/** What a cell shows: the result of its formula, or its constant. */
export type Shown = string | number | boolean;

const ERRORS = ["#N/A", "#REF!", "#NAME?", "#DIV/0!", "#NULL!", "#VALUE!", "#NUM!"] as const;
const TRUTHS: ReadonlyMap<string, boolean> = new Map([
  ["TRUE", true],
  ["FALSE", false],
]);

/** Whether a plan's content is a formula. */
export function isFormula(content: string | number): content is `=${string}` {
  return typeof content === "string" && content.startsWith("=") && content.length > 1;
}

/**
 * What a plan's content is in a file, where it is no formula: the host's text mark is not kept, since text is text there.
 *
 * @example contentValue("'6-8") // "6-8"
 */
export function contentValue(content: string | number): FileValue | undefined {
  if (typeof content === "number") return content;
  if (content === "") return undefined;
  if (content.startsWith("'")) return content.slice(1);
  return TRUTHS.get(content) ?? errorOf(content) ?? content;
}

/** What a cell shows, as a file holds it. */
export function shownValue(shown: Shown): FileValue {
  return typeof shown === "string" ? (errorOf(shown) ?? shown) : shown;
}

function errorOf(text: string): FileValue | undefined {
  const error = ERRORS.find((one) => one === text);
  if (error) return { error };
  // Errors that came later have no place in every program's files.
  return /^#[A-Z]+!$/.test(text) ? { error: "#VALUE!" } : undefined;
}

/**
 * A formula as a file holds it: without its "=", newer functions with their prefix, and without the sign that picks one
 * value of several, which files leave out.
 *
 * @param formula in English names with commas, with its "=".
 * @param sheetNames new names, in the file, of sheets whose names a file can't hold; as references spell them.
 * @example fileFormula("=NOT(ISFORMULA(A1))") // NOT(_xlfn.ISFORMULA(A1))
 */
export function fileFormula(formula: string, sheetNames: ReadonlyMap<string, string> = new Map()): string {
  const tokens = tokenize(formula, { mergeRefs: true }).filter(({ type }) => type !== "fx_prefix");
  return tokens
    .map(({ type, value }, place) => {
      if (type === "func") return inFile(value);
      if (type === "operator" && (value === "@" || value === "#")) return "";
      const reference = type.startsWith("range") ? onSheet(value, sheetNames) : value;
      return tokens[place + 1]?.value === "#" ? `_xlfn.ANCHORARRAY(${reference})` : reference;
    })
    .join("");
}

function onSheet(reference: string, sheetNames: ReadonlyMap<string, string>): string {
  const end = reference.lastIndexOf("!");
  const name = sheetNames.get(reference.slice(0, Math.max(end, 0)));
  return name === undefined ? reference : name + reference.slice(end);
}

/**
 * Functions that spreadsheet programs got after 2007. A file names them with a prefix, so that older programs know
 * that they do not know them. From memory of the published file format, [MS-XLSX] "Future Functions".
 */
const NEWER = new Set(
  (
    "ACOT ACOTH AGGREGATE ARABIC ARRAYTOTEXT BASE BETA.DIST BETA.INV BINOM.DIST BINOM.DIST.RANGE BINOM.INV BITAND " +
    "BITLSHIFT BITOR BITRSHIFT BITXOR BYCOL BYROW CEILING.MATH CEILING.PRECISE CHISQ.DIST CHISQ.DIST.RT CHISQ.INV " +
    "CHISQ.INV.RT CHISQ.TEST CHOOSECOLS CHOOSEROWS COMBINA CONCAT CONFIDENCE.NORM CONFIDENCE.T COT COTH COVARIANCE.P " +
    "COVARIANCE.S CSC CSCH DAYS DECIMAL DROP ERF.PRECISE ERFC.PRECISE EXPAND EXPON.DIST F.DIST F.DIST.RT F.INV " +
    "F.INV.RT F.TEST FLOOR.MATH FLOOR.PRECISE FORECAST.LINEAR FORMULATEXT GAMMA GAMMA.DIST GAMMA.INV " +
    "GAMMALN.PRECISE GAUSS HSTACK HYPGEOM.DIST IFNA IFS ISFORMULA ISOMITTED ISOWEEKNUM LAMBDA LET LOGNORM.DIST " +
    "LOGNORM.INV MAKEARRAY MAP MAXIFS MINIFS MODE.MULT MODE.SNGL MUNIT NEGBINOM.DIST NORM.DIST NORM.INV NORM.S.DIST " +
    "NORM.S.INV NUMBERVALUE PDURATION PERCENTILE.EXC PERCENTILE.INC PERCENTRANK.EXC PERCENTRANK.INC PERMUTATIONA PHI " +
    "POISSON.DIST QUARTILE.EXC QUARTILE.INC RANDARRAY RANK.AVG RANK.EQ REDUCE RRI SCAN SEC SECH SEQUENCE SHEET " +
    "SHEETS SKEW.P SORTBY STDEV.P STDEV.S SWITCH T.DIST T.DIST.2T T.DIST.RT T.INV T.INV.2T T.TEST TAKE TEXTAFTER " +
    "TEXTBEFORE TEXTJOIN TEXTSPLIT TOCOL TOROW UNICHAR UNICODE UNIQUE VALUETOTEXT VAR.P VAR.S VSTACK WEIBULL.DIST " +
    "WRAPCOLS WRAPROWS XLOOKUP XMATCH XOR Z.TEST"
  ).split(" "),
);

/** The two whose names were taken when they came. */
const NEWER_STILL = new Set(["FILTER", "SORT"]);

/** With a dot in their names since before 2007, or stored without a prefix. */
const DOTTED = new Set(["ERROR.TYPE", "ISO.CEILING", "NETWORKDAYS.INTL", "WORKDAY.INTL"]);

/**
 * A function's name as a file holds it.
 *
 * @example inFile("ISFORMULA") // "_xlfn.ISFORMULA"
 */
export function inFile(name: string): string {
  const plain = name.toUpperCase();
  if (NEWER.has(plain)) return `_xlfn.${plain}`;
  return NEWER_STILL.has(plain) ? `_xlfn._xlws.${plain}` : name;
}

/** Whether a function's name shows that it comes with an add-in: spreadsheet programs' own have no other dots. */
export function isOfAnAddIn(name: string): boolean {
  const plain = name.replace(/^_xlfn\./i, "").toUpperCase();
  return plain.startsWith("_XLDUDF_") || (plain.includes(".") && !NEWER.has(plain) && !DOTTED.has(plain));
}
