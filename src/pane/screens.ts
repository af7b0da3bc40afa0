/** Where the build puts the help, beside the pane's own page. */
export const HELP_FOLDER = "help/";

/**
 * The pane's screens. `guide` is the page of the guide that tells how the work of a screen is
 * done, and where on it. The build fails on a page or a place that does not exist.
 */
export const screens = {
  estimate: { label: "Estimate", guide: "first-estimate.html" },
  jobRows: { label: "Job rows", guide: "job-rows.html" },
  papers: { label: "Job documents", guide: "papers.html" },
  rates: { label: "Rates", guide: "first-estimate.html#prices" },
  check: { label: "Check the sheets", guide: "looks-wrong.html#check" },
  explain: { label: "Explain a cell", guide: "looks-wrong.html#explain" },
  templates: { label: "Templates", guide: "templates.html" },
  copy: { label: "Copy for others", guide: "without-the-add-in.html" },
  help: { label: "Help", guide: undefined },
} as const satisfies Record<string, { label: string; guide: `${string}.html${string}` | undefined }>;

export type Screen = keyof typeof screens;

/** The way through the work, in its order. */
export const work = ["estimate", "jobRows", "papers"] as const satisfies readonly Screen[];

/** What helps with the work, in the order of the list of tools. */
export const tools = (Object.keys(screens) as Screen[]).filter(
  (screen) => !(work as readonly Screen[]).includes(screen),
);
