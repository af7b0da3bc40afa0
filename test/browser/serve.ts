import { readFile } from "node:fs/promises";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join, normalize } from "node:path";

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript",
  ".css": "text/css",
  ".json": "application/json",
  ".png": "image/png",
  ".svg": "image/svg+xml",
};

/** Serves a folder on a free port of this machine. */
export async function serve(folder: string): Promise<{ readonly origin: string; close(): Promise<void> }> {
  const server = createServer(async (request, response) => {
    const path = normalize(new URL(request.url ?? "/", "http://localhost").pathname);
    try {
      const content = await readFile(join(folder, path));
      response.writeHead(200, { "content-type": TYPES[extname(path)] ?? "application/octet-stream" }).end(content);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise<void>((resolve) => server.listen(0, "localhost", resolve));
  const { port } = server.address() as AddressInfo;
  return {
    origin: `http://localhost:${port}`,
    close: () => new Promise((resolve) => server.close(() => resolve())),
  };
}
