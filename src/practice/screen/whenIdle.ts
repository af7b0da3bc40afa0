/** No one waits longer than this for what is only begun when the page is idle. */
const longestMs = 1000;

/** Resolves when the browser has nothing more pressing to do, and soon in any case. */
export function whenIdle(): Promise<void> {
  return new Promise((resolve) => {
    // Not every browser tells when it is idle; there, one breath has to do.
    if (typeof requestIdleCallback === "undefined") setTimeout(resolve, 0);
    else requestIdleCallback(() => resolve(), { timeout: longestMs });
  });
}
