/** The origin written in the manifest of the repository; nothing is served there. */
export const PLACEHOLDER_ORIGIN = "https://bedrow.example";

/** A development copy must be told from the office's own by the host, so it has its own id and namespace. */
const DEVELOPMENT_ID = "cadb890a-b16d-47f5-9873-b23263638d0b";

/**
 * The manifest for one place: its origin, and whether it is the development copy.
 *
 * @param {string} xml the manifest of the repository.
 * @param {{ origin?: string, development?: boolean }} place `origin` is https without a path, such as
 *   `https://tools.example`; without one the placeholder stays.
 * @returns {string} the manifest to install.
 * @throws {Error} for an origin that is not https or carries a path.
 */
export function adaptManifest(xml, { origin, development = false }) {
  let adapted = xml;
  if (origin !== undefined) {
    let url;
    try {
      url = new URL(origin);
    } catch {
      throw new Error(`The origin "${origin}" is not an address. Give one like https://tools.example.`);
    }
    if (url.protocol !== "https:")
      throw new Error(`The origin "${origin}" is not https. The host loads add-ins from https only.`);
    if (url.pathname !== "/" || url.search || url.hash)
      throw new Error(`The origin "${origin}" has a path. Give the origin alone, like ${url.origin}.`);
    adapted = adapted.replaceAll(PLACEHOLDER_ORIGIN, url.origin);
  }
  if (development) {
    adapted = adapted
      .replace(/<Id>[^<]*<\/Id>/, `<Id>${DEVELOPMENT_ID}</Id>`)
      .replace('<DisplayName DefaultValue="Bedrow"/>', '<DisplayName DefaultValue="Bedrow (development)"/>')
      .replace('id="Functions.Namespace" DefaultValue="BED"', 'id="Functions.Namespace" DefaultValue="BEDDEV"');
  }
  return adapted;
}
