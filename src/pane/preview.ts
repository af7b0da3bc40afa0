import { type WorkedOutBed, workOut } from "../layout/planOfEstimate";
import type { BedForm } from "../quantities/bed/form";
import { type FormProblem, readForm } from "../quantities/bed/read";
import { fieldOf, inFormWords } from "../quantities/bed/words";
import { Problem } from "../quantities/problem";

export interface PricedPreview extends WorkedOutBed {
  readonly form: BedForm;
  readonly problems: readonly [];
}

/** What the form comes to: an estimate, or what is in its way. */
export type Preview =
  | PricedPreview
  | { readonly form: BedForm; readonly estimate?: undefined; readonly problems: readonly FormProblem[] };

export function previewOf(typed: BedForm): Preview {
  const read = readForm(typed);
  if (!read.bed) {
    const problems = read.problems.map((problem) => ({ ...problem, message: inFormWords(problem.message) }));
    return { form: typed, problems };
  }
  try {
    return { form: typed, ...workOut(read.bed), problems: [] as const };
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    const place = fieldOf(error.argument) ?? "form";
    return { form: typed, problems: [{ place, message: inFormWords(error.message), unfinished: false }] };
  }
}
