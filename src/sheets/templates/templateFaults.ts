import { must } from "../../quantities/must";
import { cellAddress } from "../../spreadsheet/areas";
import { areaOf, cellsOf, fits } from "./area";
import { formulaFault } from "./formulaFault";
import { hiddenCharacter } from "./hiddenCharacters";
import { hidingIn } from "./hidingLook";
import { MOST_CELLS, MOST_LIST_CHARACTERS } from "./limits";
import { canonical, isWorkbookName } from "./reference";
import { isOfRatesSheet, type Template, type TemplateCell } from "./template";

/** Something for which a template is refused. */
export interface Fault {
  /** The cell in the template; absent where it is about the whole. */
  readonly at?: string;
  /** Words that follow the cell's address, or are alone. */
  readonly what: string;
}

/**
 * All for which a template is refused: nothing in it may run, reach outside of the workbook, or disguise itself. Its
 * shape must have been checked before.
 */
export function templateFaults(template: Template): Fault[] {
  return [
    ...textFaults(template),
    ...sizeFaults(template),
    ...outsideFaults(template),
    ...cellFaults(template),
    ...lookFaults(template),
    ...mergedFaults(template),
    ...choiceFaults(template),
    ...warningFaults(template),
  ];
}

const LONGEST_NAME = 80;
const LONGEST_NOTE = 1000;

function textFaults({ name, note = "", by = "" }: Template): Fault[] {
  const texts = [
    ["name", name],
    ["name of who saved it", by],
    ["note", note],
  ] as const;
  const faults = texts.flatMap(([what, text]) => {
    const most = what === "note" ? LONGEST_NOTE : LONGEST_NAME;
    if (text.length > most) return [{ what: `Its ${what} is longer than ${most} characters.` }];
    const hidden = hiddenCharacter(text, what === "note");
    return hidden ? [{ what: `Its ${what} has a hidden character (${hidden}).` }] : [];
  });
  return name.trim() === "" ? [...faults, { what: "It has no name." }] : faults;
}

function sizeFaults({ rows, columns, widths }: Template): Fault[] {
  return [
    ...(rows * columns > MOST_CELLS ? [{ what: "It has too many cells." }] : []),
    ...(widths.length === columns ? [] : [{ what: "It doesn't have one width for each column." }]),
  ];
}

function outsideFaults({ outside = [] }: Template): Fault[] {
  const seen = new Set<string>();
  return outside.flatMap(({ reads, value }) => {
    const isTwice = seen.has(reads.toLowerCase());
    seen.add(reads.toLowerCase());
    const hidden = typeof value === "string" ? hiddenCharacter(value, true) : undefined;
    if (hidden) return [{ what: `The value of ${reads} has a hidden character (${hidden}).` }];
    if (typeof value === "number" && !Number.isFinite(value)) return [{ what: `The value of ${reads} is too large.` }];
    if (isTwice) return [{ what: `It lists ${reads} twice.` }];
    if (canonical(reads) === reads || (isWorkbookName(reads) && !isOfRatesSheet(reads))) return [];
    return [
      {
        what: `It lists ${reads.slice(0, 60)} as read outside of it, which isn't an address or a name.`,
      },
    ];
  });
}

/** Whether a template lists something as read outside of it. */
export function listsOf({ outside = [] }: Template): (reads: string) => boolean {
  const all = new Set(outside.map(({ reads }) => reads.toLowerCase()));
  return (reads) => all.has(reads.toLowerCase());
}

function cellFaults(template: Template): Fault[] {
  const frame = { rows: template.rows, columns: template.columns, lists: listsOf(template) };
  const seen = new Set<string>();
  return template.cells.flatMap((cell): Fault[] => {
    const { at } = cell;
    const area = areaOf(at);
    if (!area || area.rows * area.columns > 1 || !fits(area, template)) return [{ what: `It has no cell ${at}.` }];
    if (seen.has(at)) return [{ at, what: "is given twice" }];
    seen.add(at);
    const what = cell.formula === undefined ? contentFault(cell) : formulaFault(cell.formula, frame);
    return what ? [{ at, what }] : [];
  });
}

function contentFault({ text, number = 0 }: TemplateCell): string | undefined {
  if (!Number.isFinite(number)) return "holds a number that is too large";
  const hidden = text === undefined ? undefined : hiddenCharacter(text, true);
  return hidden && `has text with a hidden character (${hidden})`;
}

function lookFaults(template: Template): Fault[] {
  const seen = new Set<string>();
  return (template.looks ?? []).flatMap((look): Fault[] => {
    const places = look.at.flatMap((at) => areaFault(at, template));
    if (places.length > 0) return places;
    for (const at of look.at) {
      for (const cell of cellsOf(must(areaOf(at)))) {
        const address = cellAddress(cell);
        if (seen.has(address)) return [{ at: address, what: "has two formats" }];
        seen.add(address);
      }
    }
    const { at, ...shown } = look;
    return hidingIn(shown).map(({ why }) => ({ at: must(at[0]), what: why }));
  });
}

function mergedFaults(template: Template): Fault[] {
  const filled = new Set(template.cells.map(({ at }) => at));
  const seen = new Set<string>();
  return (template.merged ?? []).flatMap((at): Fault[] => {
    const fault = areaFault(at, template);
    if (fault.length > 0) return fault;
    const [first = "", ...covered] = [...cellsOf(must(areaOf(at)))].map(cellAddress);
    if (covered.length === 0) return [{ at, what: "is merged with nothing" }];
    const under = covered.find((cell) => filled.has(cell));
    if (under) return [{ at: under, what: `is hidden under the merged cells ${at}` }];
    const twice = [first, ...covered].find((cell) => seen.has(cell));
    for (const cell of [first, ...covered]) seen.add(cell);
    return twice ? [{ at: twice, what: "is merged twice" }] : [];
  });
}

function choiceFaults(template: Template): Fault[] {
  return (template.choices ?? []).flatMap(({ at, names }): Fault[] => {
    const fault = areaFault(at, template);
    if (fault.length > 0) return fault;
    const hidden = names.map((name) => hiddenCharacter(name)).find((found) => found !== undefined);
    if (hidden) return [{ at, what: `offers a choice with a hidden character (${hidden})` }];
    if (names.some((name) => name.includes(",") || name.trim() === "")) {
      return [{ at, what: "offers a choice that is blank or has a comma in it" }];
    }
    if (must(names[0]).trimStart().startsWith("="))
      return [{ at, what: `offers a list that is a formula (${names[0]})` }];
    return names.join(",").length > MOST_LIST_CHARACTERS ? [{ at, what: "offers a list that is too long" }] : [];
  });
}

function warningFaults(template: Template): Fault[] {
  const frame = { rows: template.rows, columns: template.columns, lists: () => false };
  return (template.warnings ?? []).flatMap(({ at, when }): Fault[] => {
    const fault = areaFault(at, template);
    if (fault.length > 0) return fault;
    const what = formulaFault(when, frame);
    if (what) return [{ at, what: `in its color rule, ${what}` }];
    return /\bBED(?:DEV)?[._]/i.test(when)
      ? [{ at, what: "has a function of this add-in in its color rule, which isn't allowed" }]
      : [];
  });
}

function areaFault(at: string, template: Template): Fault[] {
  const area = areaOf(at);
  return area && fits(area, template) ? [] : [{ what: `It has no cells ${at}.` }];
}
