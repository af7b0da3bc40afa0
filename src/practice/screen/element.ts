/**
 * The page's element with this id.
 *
 * @throws Error where the page has none, which is a fault of the build.
 */
export function element(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (!found) throw new Error(`The page has no #${id}.`);
  return found;
}
