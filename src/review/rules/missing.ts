import type { Role } from "../../headings/roles";
import { must } from "../../quantities/must";
import { type Mention, mentionsOf, NOTICE, type Subject } from "../sheet/subjects";
import type { Study } from "../study";
import type { Observation, Rule } from "./rule";

interface Question {
  readonly id: string;
  /** Where this is in the estimate… */
  readonly given: Subject;
  /** …this should be, too. */
  readonly wanted: Subject | "notice";
  readonly asks: string;
  readonly matters: string;
  readonly todo: string;
  readonly rank: number;
}

/** In words of the trade; each asks, since beds without fabric and jobs without hauling exist. */
const QUESTIONS: readonly Question[] = [
  {
    id: "no-fabric",
    given: "stone",
    wanted: "fabric",
    asks: "There's stone but no fabric under it. Is that right?",
    matters: "Without fabric, stone sinks into the soil and weeds come up.",
    todo: "Add fabric, or ignore this and say why.",
    rank: 12,
  },
  {
    id: "no-pins",
    given: "fabric",
    wanted: "pins",
    asks: "There's fabric but nothing to pin it down. Who's bringing the pins?",
    matters: "Unpinned fabric moves while you spread stone.",
    todo: "Add pins by the box.",
    rank: 5,
  },
  {
    id: "no-stakes",
    given: "border",
    wanted: "stakes",
    asks: "There's edging but no stakes. Do enough come with the pieces?",
    matters: "Edging without stakes leans as soon as stone pushes on it.",
    todo: "Count the stakes and add the ones that don't come with the pieces.",
    rank: 5,
  },
  {
    id: "no-hauling",
    given: "digging",
    wanted: "hauling",
    asks: "There's digging but no hauling. Where does the soil go?",
    matters: "Soil swells when you dig it, and someone has to load, haul, and dump it.",
    todo: "Add loads and a dump fee, or note where the soil stays.",
    rank: 15,
  },
  {
    id: "no-dig-notice",
    given: "digging",
    wanted: "notice",
    asks: "There's digging but no dig notice. Did someone call?",
    matters:
      "Lines get marked only after notice, and the law requires it (49 CFR 196.103). Your ticket and state law come first.",
    todo: "Give notice before you dig, and note the ticket number and first dig date.",
    rank: 10,
  },
  {
    id: "no-delivery",
    given: "stone",
    wanted: "delivery",
    asks: "There's stone but no delivery. How does it get to the site?",
    matters: "Delivery can cost as much per ton as the stone.",
    todo: "Add delivery by the load, or note that it's in the stone price.",
    rank: 15,
  },
  {
    id: "no-clean-up",
    given: "stone",
    wanted: "clean-up",
    asks: "There's no cleanup. Who sweeps the walk and hauls the scraps?",
    matters: "It's an hour or two for the crew on every job.",
    todo: "Add the hours, or note which line has them.",
    rank: 5,
  },
  {
    id: "no-waste",
    given: "stone",
    wanted: "waste",
    asks: "There's no waste on the stone for low spots. Is that right?",
    matters: "Low spots and leftovers take 5% to 10% (common practice).",
    todo: "Add a waste %.",
    rank: 8,
  },
];

export const missing: Rule = {
  id: "missing",
  title: "Something may be missing",
  level: "question",
  rank: 10,
  matters: "What you leave out costs more than typing errors, and no formula shows it.",
  *look(study) {
    const priced = study.book.grids.filter((grid) => study.isChecked(grid.index) && !grid.isEmpty);
    const mentions = new Map<number, Map<Subject, Mention[]>>();
    for (const grid of priced) mentions.set(grid.index, yield* mentionsOf(study, grid.index));
    for (const grid of priced) {
      yield undefined;
      const circle = linkedWith(study, grid.index);
      const spokenOf = (subject: Subject) => circle.flatMap((sheet) => mentions.get(sheet)?.get(subject) ?? []);
      const own = must(mentions.get(grid.index));
      if (!isPriced(study, grid.index)) continue;
      for (const question of QUESTIONS) {
        const given = largest(own.get(question.given) ?? []);
        if (!given?.most) continue;
        if (question.wanted === "notice") {
          if (!circle.some((sheet) => speaksOfNotice(study, sheet))) yield observe(grid.index, question, given, []);
          continue;
        }
        const wanted = spokenOf(question.wanted);
        // A note such as "delivery included" is an answer.
        if (!wanted.some(({ most }) => most === undefined || most > 0))
          yield observe(grid.index, question, given, wanted);
      }
    }
  },
};

function observe(
  sheet: number,
  { id, asks, matters, todo, rank }: Question,
  given: Mention,
  zero: readonly Mention[],
): Observation {
  const place = zero[0] ?? given;
  return {
    cell: { sheet, row: place.row, column: place.column },
    group: `${sheet}:${id}`,
    about: id,
    seen: zero.length > 0 ? `${asks} There's a line for it, but it comes to nothing.` : asks,
    isSentence: true,
    matters,
    todo,
    rank,
  };
}

/** A sheet on which money is worked out is an estimate; a list of rates or a takeoff alone is none. */
function isPriced({ measures, book }: Study, sheet: number): boolean {
  return measures.some(
    ({ cell, role }) =>
      cell.sheet === sheet && PRICED.has(role) && book.patternAt(sheet, cell.row, cell.column) !== undefined,
  );
}

const PRICED = new Set<Role>(["cost", "price"]);

const largest = (mentions: readonly Mention[]): Mention | undefined =>
  mentions.reduce<Mention | undefined>(
    (best, one) => (best === undefined || (one.most ?? 0) > (best.most ?? 0) ? one : best),
    undefined,
  );

function speaksOfNotice({ book }: Study, sheet: number): boolean {
  const grid = must(book.grids[sheet]);
  for (let row = grid.top; row <= grid.bottom; row++) {
    for (let column = grid.left; column <= grid.right; column++) {
      if (grid.kind(row, column) === "text" && NOTICE.test(String(grid.value(row, column)))) return true;
    }
  }
  return false;
}

/** A sheet, and those that it reads or that read it: an estimate may be on several. */
function linkedWith(study: Study, sheet: number): number[] {
  const links = study.once("links between sheets", () => {
    const found = new Map<number, Set<number>>();
    const link = (one: number, other: number) => found.set(one, (found.get(one) ?? new Set()).add(other));
    for (const run of study.readers.runs) {
      for (const target of study.book.targetsOf({ ...run, row: run.from })) {
        if (target.sheet === run.sheet) continue;
        link(run.sheet, target.sheet);
        link(target.sheet, run.sheet);
      }
    }
    return found;
  });
  return [sheet, ...(links.get(sheet) ?? [])];
}
