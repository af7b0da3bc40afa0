import { type Estimate, estimateBed } from "../quantities/bed/estimate";
import type { BedForm } from "../quantities/bed/form";
import { type FormProblem, readForm } from "../quantities/bed/read";
import { fieldOf, inFormWords } from "../quantities/bed/words";
import { Problem } from "../quantities/problem";

/** What the form comes to: an estimate, or what stands in its way. */
export type Preview =
  | { readonly estimate: Estimate; readonly problems: readonly [] }
  | { readonly estimate?: undefined; readonly problems: readonly FormProblem[] };

export function previewOf(form: BedForm): Preview {
  const { bed, problems } = readForm(form);
  if (!bed) return { problems: problems.map((problem) => ({ ...problem, message: inFormWords(problem.message) })) };
  try {
    return { estimate: estimateBed(bed), problems: [] };
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    const place = fieldOf(error.argument) ?? "form";
    return { problems: [{ place, message: inFormWords(error.message), unfinished: false }] };
  }
}
