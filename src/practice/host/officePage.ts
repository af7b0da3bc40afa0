/** The parts of a page that an add-in can't use. */
type Withheld = Pick<Window, "alert" | "confirm" | "prompt"> & {
  readonly history: Pick<History, "pushState" | "replaceState">;
};

/**
 * Takes from a page what `office.js` takes from every page that loads it: the browser's own dialog boxes, and the
 * ways to rewrite its history.
 */
export function withholdFromPage(page: Withheld): void {
  for (const name of ["alert", "confirm", "prompt"] as const) {
    page[name] = () => {
      throw new Error(`Function window.${name} is not supported.`);
    };
  }
  Object.assign(page.history, { pushState: null, replaceState: null });
}
