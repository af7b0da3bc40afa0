// @ts-check
import { readFile, stat } from "node:fs/promises";
import { createServer } from "node:http";
import { extname, join, resolve, sep } from "node:path";

/** @type {Readonly<Record<string, string>>} */
const TYPES = {
  ".css": "text/css; charset=utf-8",
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".json": "application/json",
  ".png": "image/png",
  ".svg": "image/svg+xml",
  ".txt": "text/plain; charset=utf-8",
  ".xml": "application/xml",
};

/** What an address that names a folder shows: the help has an index, the build opens on the practice workbook. */
const INDEXES = ["index.html", "practice.html"];

/**
 * Serves a folder to this machine only. A browser may keep files, but asks each time whether they have changed. Nothing
 * is packed: on one machine, packing takes longer than sending.
 *
 * @param {string} folder
 * @param {object} [options]
 * @param {number} [options.port] 0 for any free one.
 * @param {() => Promise<unknown>} [options.until] awaited before each answer, such as a build that is under way.
 * @returns {Promise<{ origin: string, close: () => Promise<void> }>} the origin, such as http://localhost:8080.
 * @throws where the port is taken, with the code EADDRINUSE.
 */
export async function serve(folder, { port = 0, until = async () => {} } = {}) {
  const root = resolve(folder);
  const server = createServer(async ({ method, url = "/", headers }, response) => {
    if (method !== "GET" && method !== "HEAD") return void response.writeHead(405, { allow: "GET, HEAD" }).end();
    await until();
    const file = await fileAt(root, url);
    if (!file) return void response.writeHead(404).end();
    const { path, etag } = file;
    const caching = { etag, "cache-control": "no-cache" };
    if (headers["if-none-match"] === etag) return void response.writeHead(304, caching).end();
    try {
      const content = await readFile(path);
      const type = TYPES[extname(path)] ?? "application/octet-stream";
      response.writeHead(200, { ...caching, "content-type": type, "content-length": content.length });
      response.end(method === "HEAD" ? undefined : content);
    } catch {
      // Gone between the two looks at it, as when a build is replaced.
      response.writeHead(404).end();
    }
  });
  await new Promise((listening, failed) => {
    server.once("error", failed);
    server.listen(port, "localhost", () => listening(undefined));
  });
  const address = /** @type {import("node:net").AddressInfo} */ (server.address());
  return {
    origin: `http://localhost:${address.port}`,
    close: () =>
      new Promise((closed) => {
        server.close(() => closed());
        // A browser holds its connections open.
        server.closeAllConnections();
      }),
  };
}

/**
 * @param {string} root
 * @param {string} url
 * @returns {Promise<{ path: string, etag: string } | undefined>} undefined where there is no such file.
 */
async function fileAt(root, url) {
  try {
    const path = join(root, decodeURIComponent(new URL(url, "http://localhost").pathname));
    if (!`${path}${sep}`.startsWith(`${root}${sep}`)) return undefined;
    for (const candidate of url.endsWith("/") ? INDEXES.map((name) => join(path, name)) : [path]) {
      const found = await stat(candidate).catch(() => undefined);
      if (found?.isFile()) return { path: candidate, etag: `"${found.size}-${found.mtimeMs}"` };
    }
  } catch {
    // What is no address names no file.
  }
  return undefined;
}
