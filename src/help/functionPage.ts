import { type Declaration, type DeclaredArgument, type Kind, kindWords } from "../functions/declare";
import { must } from "../quantities/must";
import { call, isError, type Result } from "./calls";
import { type Example, readExample } from "./example";
import { functionCaution } from "./functionCautions";
import { code, escaped, link, number, section, table } from "./html";
import { isSilentZero, ZERO_MEANS } from "./numbers/zeros";
import { ordinaryForm, sheetOf } from "./ordinaryForm";
import type { Page } from "./page";
import { type Slip, slipsOf } from "./slips";

export const addressOf = (id: string) => `${id}.html`;

/**
 * The reference page of a function, all of it from its declaration, and from what it says when it is tried.
 */
export function functionPage(declared: Declaration): Page {
  const example = readExample(declared.example);
  const answer = call(declared.name, example.given);
  if (isError(answer)) throw new Error(`The example of ${declared.name} fails: ${answer.message}`);
  return {
    address: addressOf(declared.name),
    title: `BED.${declared.name}`,
    about: declared.about,
    content: [
      `<p class="call">${code(callOf(declared.name, declared.arguments))}</p>`,
      `<p>Gives: ${escaped(declared.returns)}</p>`,
      `<p>${escaped(declared.rule)}</p>`,
      functionCaution(declared.name),
      section("Arguments", argumentTable(declared.arguments)),
      section("Example", exampleOf(example), resultOf(answer, declared)),
      section("In ordinary formulas", ordinary(declared.name, example, answer)),
      section(
        "Where it comes from",
        `<p>${escaped(declared.source)} ${link("numbers.html", "Where the numbers come from")}</p>`,
      ),
      section(
        "What can go wrong",
        silentZeros(declared.name, declared.arguments, example.given, answer),
        slipTable(slipsOf(declared.name, declared.arguments, example.given)),
      ),
      section(
        "Related",
        `<ul>${declared.related.map((id) => `<li>${link(addressOf(id), `BED.${id}`)}</li>`).join("")}</ul>`,
      ),
    ].join("\n"),
  };
}

/** The call as one reads it: `BED.STONE_YARDS(area, depth_in, [waste])`. */
function callOf(id: string, known: readonly DeclaredArgument[]): string {
  return `BED.${id}(${known.map(({ name, fallback }) => (fallback === undefined ? name : `[${name}]`)).join(", ")})`;
}

function argumentTable(takes: readonly DeclaredArgument[]): string {
  return table(
    ["Argument", "What to enter", "Unit", "If omitted or blank"],
    takes.map((argument) => [
      code(argument.name),
      escaped(argument.about),
      escaped(unitOf(argument)),
      escaped(defaultOf(argument)),
    ]),
  );
}

/** What is given where the kind is no measure. */
const UNITS: Partial<Record<Kind, string>> = { soil: "%", "width rule": "a word", "yes or no": "TRUE or FALSE" };

function unitOf({ kind, many }: DeclaredArgument): string {
  const isLength = kind === "ft" || kind === "in";
  const isNamed = kind === "stone" || kind === "soil";
  const unit = UNITS[kind] ?? kindWords(kind);
  return `${unit}${isLength ? ", or text" : isNamed ? ", or a name" : ""}${many ? "; a range" : ""}`;
}

function defaultOf({ fallback, blankIs }: DeclaredArgument): string {
  if (fallback === undefined) return blankIs === undefined ? "required" : `required; a blank cell is ${blankIs}`;
  return fallback === "" ? "none" : typeof fallback === "boolean" ? String(fallback).toUpperCase() : String(fallback);
}

function exampleOf(example: Example): string {
  const { cells, at } = sheetOf(example);
  const formula = `<p class="formula">${code(example.formula)}</p>`;
  if (example.cells.length === 0) return formula;
  const letters = must(cells[0])
    .slice(0, -2)
    .map((_, column) => String.fromCharCode(65 + column));
  const rows = cells.map((row, place) => [String(place + 1), ...row.slice(0, -2).map((cell) => escaped(String(cell)))]);
  return `${formula}\n<p>with these cells:</p>\n<div class="cells" data-formula-at="${at}">${table(["", ...letters], rows)}</div>`;
}

/** Rows of a list that a page shows; the rest is said in a line. */
const MOST_ROWS = 14;
const DAY_MILLISECONDS = 86_400_000;
/** Serial number of 1970-01-01 in the workbook's 1900 calendar. */
const SERIAL_OF_1970 = 25_569;

function resultOf(answer: Result, { kind }: Declaration): string {
  if (typeof answer === "number") {
    const date = new Date((answer - SERIAL_OF_1970) * DAY_MILLISECONDS).toISOString().slice(0, 10);
    return `<p class="result">gives <output>${number(answer)}</output>${kind === "date" ? `, which shows as ${date} in a date format` : ""}</p>`;
  }
  const [headings, ...rows] = answer;
  const shown = rows
    .slice(0, MOST_ROWS)
    .map((row) => row.map((cell) => (typeof cell === "number" ? number(cell) : escaped(cell))));
  const more = rows.length > MOST_ROWS ? `<p>and ${rows.length - MOST_ROWS} more rows</p>` : "";
  return `<p>spills into the cells to the right and below:</p>\n<div class="result">${table(must(headings).map(String), shown)}</div>${more}`;
}

function ordinary(id: string, example: Example, answer: Result): string {
  const form = ordinaryForm(id, example, answer);
  if ("none" in form)
    return `<p>There's no ordinary formula: ${escaped(form.none)}. A copy for others keeps the value and says so.</p>`;
  return [
    "<p>The example the way a copy for others writes it, for people without the add-in:</p>",
    `<p class="formula ordinary">${code(form.formula)}</p>`,
    "<p>If the arguments are cells, the formula checks them too, and shows an error where the function would.</p>",
  ].join("\n");
}

/** What a blank does without an error; what the example gives then, where that is another number. */
function silentZeros(
  id: string,
  known: readonly DeclaredArgument[],
  given: readonly unknown[],
  answer: Result,
): string {
  const lines = known.flatMap((argument, place) => {
    if (!isSilentZero(argument)) return [];
    const blank = given[place] === undefined ? answer : call(id, given.with(place, null));
    const then =
      typeof blank === "number" && typeof answer === "number" && blank !== answer
        ? ` The example then gives ${number(blank)} instead of ${number(answer)}.`
        : "";
    return [`<li>${code(argument.name)}: ${escaped(ZERO_MEANS[argument.name] ?? "")}.${then}</li>`];
  });
  if (lines.length === 0) return "";
  return `<p><strong>Omitted, blank, or 0, with no error:</strong></p>\n<ul>${lines.join("\n")}</ul>`;
}

function slipTable(slips: readonly Slip[]): string {
  return table(
    ["If", "The cell shows", "Also for"],
    slips.map(({ argument, words, error, message, alsoFor }) => [
      `${code(argument)} ${escaped(words)}`,
      `${code(error)} ${escaped(message)}`,
      alsoFor.map(code).join(", "),
    ]),
  );
}
