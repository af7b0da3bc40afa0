const WEB = "which reaches out to the web";
const PROGRAM = "which talks to another program";
const CODE = "which runs code outside the sheet";
const MACRO = "an old macro command, which runs by itself";
const SERVER = "which asks a server";
const HIDES = "which hides what it reads";
const TELLS = "which reveals details of the computer or the file";

const words = (names: string, why: string): [string, string][] => names.split(" ").map((name) => [name, why]);

/** Functions that are refused with a reason of their own, from memory of their published descriptions. */
const REASONS = new Map<string, string>([
  ...words("WEBSERVICE FILTERXML ENCODEURL IMAGE STOCKHISTORY TRANSLATE DETECTLANGUAGE IMPORTXML IMPORTDATA", WEB),
  ...words("IMPORTHTML IMPORTRANGE IMPORTFEED IMPORTTEXT IMPORTCSV COPILOT", WEB),
  ["HYPERLINK", "which leaves the workbook when clicked"],
  ...words("RTD DDE INITIATE REQUEST POKE EXECUTE TERMINATE", PROGRAM),
  ...words("CALL REGISTER REGISTER.ID UNREGISTER PY EXEC RUN EVALUATE VBA.EXECUTE SHELL", CODE),
  ...words("SQL.REQUEST SQL.OPEN SQL.EXEC.QUERY SQL.RETRIEVE QUERY GETPIVOTDATA", SERVER),
  ...words("INDIRECT", HIDES),
  ...words("CELL INFO SHEET SHEETS DOCUMENTS WINDOWS NAMES LINKS FILES DIRECTORY", TELLS),
  ...words("FOPEN FCLOSE FREAD FREADLN FWRITE FWRITELN FPOS FSIZE OPEN CLOSE SAVE NEW ALERT INPUT GOTO HALT", MACRO),
  ...words("RETURN FORMULA BEEP ERROR ECHO RESULT ARGUMENT ACTIVATE SELECT CONNECT QUIT PRINT VOLATILE CALLER", MACRO),
]);

/** Families of them by how their names begin. */
const FAMILIES: readonly (readonly [RegExp, string])[] = [
  [/^CUBE/, SERVER],
  [/^SQL\./, SERVER],
  [/^(?:GET|SET|ON|APP|SEND|SAVE|OPEN|FILE|WORKBOOK|WINDOW|DEFINE|DELETE|FORMULA|WAIT|CUSTOM|PRINT|VBA|EDIT)\./, MACRO],
];

/**
 * Why a function is refused by its name, to follow "calls NAME, "; undefined where nothing is known against it.
 *
 * @param name in capitals, without prefixes.
 * @example refusedFunction("INDIRECT") // "which hides what it reads"
 */
export function refusedFunction(name: string): string | undefined {
  return REASONS.get(name) ?? FAMILIES.find(([family]) => family.test(name))?.[1];
}
