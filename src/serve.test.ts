import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, afterEach, beforeEach, describe, expect, test } from "vitest";
import { serve } from "./serve.mjs";

const scratch = mkdtempSync(join(tmpdir(), "serve-"));
const folder = join(scratch, "dist");
mkdirSync(join(folder, "help"), { recursive: true });
writeFileSync(join(scratch, "secret.txt"), "not for anybody");
writeFileSync(join(folder, "practice.html"), "<h1>Practice</h1>");
writeFileSync(join(folder, "pane.js"), "1;");
writeFileSync(join(folder, "help/index.html"), "<h1>Help</h1>");
afterAll(() => rmSync(scratch, { recursive: true, force: true }));

let server: Awaited<ReturnType<typeof serve>>;
beforeEach(async () => {
  server = await serve(folder);
});
afterEach(() => server.close());

/** The status for a path that is sent as it stands; `fetch` would tidy it first. */
const statusOf = (path: string) =>
  new Promise<number | undefined>((done, failed) => {
    const { hostname, port } = new URL(server.origin);
    request({ hostname, port, path }, (response) => done(response.resume().statusCode))
      .on("error", failed)
      .end();
  });

describe("the server", () => {
  test("sends each file with its type", async () => {
    const type = async (path: string) => (await fetch(server.origin + path)).headers.get("content-type");
    expect(await type("/practice.html")).toBe("text/html; charset=utf-8");
    expect(await type("/pane.js")).toBe("text/javascript; charset=utf-8");
  });

  test("shows the practice workbook at the bare address, and the help's index in its folder", async () => {
    expect(await (await fetch(server.origin)).text()).toContain("Practice");
    expect(await (await fetch(`${server.origin}/help/`)).text()).toContain("Help");
    expect((await fetch(`${server.origin}/nothing.js`)).status).toBe(404);
  });

  test.each(["/../secret.txt", "/%2e%2e/secret.txt", "/..%2fsecret.txt", "/help/..%2f..%2fsecret.txt", "/%", "//"])(
    "keeps to its folder when asked for %s",
    async (path) => {
      expect(await statusOf(path)).not.toBe(200);
    },
  );

  test("has a browser ask each time, and sends a file again only where it changed", async () => {
    const first = await fetch(`${server.origin}/pane.js`);
    expect(first.headers.get("cache-control")).toBe("no-cache");
    const headers = { "if-none-match": first.headers.get("etag")! };
    expect((await fetch(`${server.origin}/pane.js`, { headers })).status).toBe(304);
    writeFileSync(join(folder, "pane.js"), "1; 2;");
    expect(await (await fetch(`${server.origin}/pane.js`, { headers })).text()).toBe("1; 2;");
  });

  test("waits for a build that is under way", async () => {
    let finish = () => {};
    const built = new Promise<void>((resolve) => {
      finish = resolve;
    });
    let asked = () => {};
    const arrived = new Promise<void>((resolve) => {
      asked = resolve;
    });
    const waiting = await serve(folder, {
      until: () => {
        asked();
        return built;
      },
    });
    const answer = fetch(`${waiting.origin}/late.js`);
    await arrived;
    writeFileSync(join(folder, "late.js"), "late");
    finish();
    expect(await (await answer).text()).toBe("late");
    await waiting.close();
  });

  test("closes although a browser holds its connection open", async () => {
    const other = await serve(folder);
    await fetch(`${other.origin}/pane.js`);
    await other.close();
    await expect(fetch(`${other.origin}/pane.js`)).rejects.toThrow("fetch failed");
  });

  test("says when a port is taken", async () => {
    await expect(serve(folder, { port: Number(new URL(server.origin).port) })).rejects.toMatchObject({
      code: "EADDRINUSE",
    });
  });
});
