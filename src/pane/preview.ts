import type { Layout } from "../layout/layout";
import { countsInPlan, planOfEstimate } from "../layout/planOfEstimate";
import { type Estimate, estimateBed } from "../quantities/bed/estimate";
import type { BedForm } from "../quantities/bed/form";
import { type Bed, type FormProblem, readForm } from "../quantities/bed/read";
import { fieldOf, inFormWords } from "../quantities/bed/words";
import { Problem } from "../quantities/problem";

/** What the form comes to: an estimate, or what is in its way. */
export type Preview =
  | {
      readonly form: BedForm;
      readonly bed: Bed;
      /** undefined where no more than the area is known. */
      readonly plan: Layout | undefined;
      readonly estimate: Estimate;
      readonly problems: readonly [];
    }
  | { readonly form: BedForm; readonly estimate?: undefined; readonly problems: readonly FormProblem[] };

export function previewOf(typed: BedForm): Preview {
  const read = readForm(typed);
  if (!read.bed) {
    const problems = read.problems.map((problem) => ({ ...problem, message: inFormWords(problem.message) }));
    return { form: typed, problems };
  }
  try {
    const { bed } = read;
    const plan = planOfEstimate(bed);
    return { form: typed, bed, plan, estimate: estimateBed(bed, countsInPlan(bed, plan)), problems: [] };
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    const place = fieldOf(error.argument) ?? "form";
    return { form: typed, problems: [{ place, message: inFormWords(error.message), unfinished: false }] };
  }
}
