import { appendFileSync, existsSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { type Browser, chromium } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { findBrowser } from "../browser/findBrowser";
import { copyRepository, type Running, readmeCommand, runIn, until } from "./newcomer";
import { typeIntoCell } from "./typeIntoCell";

const REST_MS = 20_000;
/** What a resting process may use for its own housekeeping. A build takes several seconds. */
const REST_CPU_SECONDS = 0.3;
const seesProcesses = existsSync("/proc/self/stat");

const copy = copyRepository();
const command = readmeCommand(copy.read("README.md"));
const running: Running[] = [];
const run = (words: string, log: string) => {
  const one = runIn(copy, words, log);
  running.push(one);
  return one;
};
const count = (text: string, words: string) => text.split(words).length - 1;
/** Puts a file, and a folder with a file, beside what is built from. */
const writeBeside = (name: string) => {
  writeFileSync(join(copy.folder, `${name}.txt`), "Not read by the build.\n");
  writeFileSync(join(copy.folder, `test/${name}.txt`), "Nor is this.\n");
};

let browser: Browser;
beforeAll(async () => {
  browser = await chromium.launch({ executablePath: findBrowser(), args: ["--no-sandbox", "--disable-gpu"] });
});
afterAll(async () => {
  await browser?.close();
  await Promise.all(running.map((one) => one.stop()));
  copy.remove();
});

async function answerOnPage(address: string, formula: string): Promise<unknown> {
  const page = await browser.newPage();
  try {
    await page.goto(address);
    return await typeIntoCell(page, formula);
  } finally {
    await page.close();
  }
}

describe("the command in the README, in a fresh copy", () => {
  let started: Running;
  let dev: Running;
  beforeAll(async () => {
    started = run(command, "start.log");
    await started.address;
    // Builds while the other rests: what each uses is told by its own processes.
    dev = run("npm run dev", "dev.log");
  });

  test("opens a practice workbook where a BED function answers in a cell that was typed into", async () => {
    // 8 ft and 6 of 12 in.
    expect(await answerOnPage(await started.address, '=BED.FEET("8\' 6""")')).toBe(8.5);
  });

  test("builds once, then rests, whatever is written beside it", async () => {
    const built = statSync(join(copy.folder, "dist/practice.js")).mtimeMs;
    const used = started.cpuSeconds();
    writeBeside("start-beside");
    await sleep(REST_MS);
    expect(count(started.output(), "Building")).toBe(1);
    expect(statSync(join(copy.folder, "dist/practice.js")).mtimeMs).toBe(built);
    if (seesProcesses) {
      expect(used).toBeGreaterThan(REST_CPU_SECONDS);
      expect(started.cpuSeconds() - used).toBeLessThan(REST_CPU_SECONDS);
    }
  });

  test("stops at Ctrl+C without a complaint", async () => {
    const address = await started.address;
    await started.stop();
    await expect(fetch(address)).rejects.toThrow("fetch failed");
    expect(started.output()).not.toMatch(/error/i);
  });

  test("serves what is built right away the second time", async () => {
    const again = run(command, "again.log");
    expect((await fetch(await again.address)).status).toBe(200);
    expect(again.output()).not.toContain("Building");
    await again.stop();
  });

  describe("and `npm run dev` beside it", () => {
    const builds = () => count(dev.output(), "Built in");
    const served = async (file: string) => (await fetch(new URL(file, await dev.address))).text();

    test("rebuilds nothing for a file that it doesn't read", async () => {
      await dev.address;
      // A second build right after the first would begin within this time.
      await sleep(REST_MS / 4);
      expect(builds()).toBe(1);
      const used = dev.cpuSeconds();
      writeBeside("dev-beside");
      await sleep(REST_MS / 4);
      expect(builds()).toBe(1);
      // A watcher tidies up after its first build, for longer on a busy machine; another build takes several seconds.
      if (seesProcesses) expect(dev.cpuSeconds() - used).toBeLessThan(REST_CPU_SECONDS * 4);
    });

    test.each([
      ["pane.css", "src/pane/pane.css", "/* changed by a test */"],
      ["functions.js", "src/functions/entry.ts", 'Object.assign(globalThis, { changed: "by a test" });'],
      ["pane.js", "src/pane/index.tsx", 'Object.assign(globalThis, { changed: "by a test" });'],
      ["help/limits.html", "src/help/guide/8-limits.html", "<p>changed by a test</p>"],
      ["manifest.xml", "manifest.xml", "<!-- changed by a test -->"],
    ])("serves %s again when %s is changed", async (file, source, change) => {
      const [mark = ""] = /changed[^*<};-]*/.exec(change) ?? [];
      expect(await served(file)).not.toContain(mark);
      appendFileSync(join(copy.folder, source), `\n${change}\n`);
      await until(async () => (await served(file)).includes(mark) || undefined);
    });
  });

  test("builds again when the source has changed, and says in words when it can't", async () => {
    appendFileSync(join(copy.folder, "src/functions/entry.ts"), "\nconst = nothing;\n");
    const broken = run(command, "broken.log");
    expect(await broken.ended).not.toBe(0);
    expect(broken.output()).toMatch(/^Building/m);
    expect(broken.output()).toMatch(/functions\.js: .*entry\.ts/s);
    expect(broken.output()).toMatch(/^The build failed\.$/m);
    expect(broken.output()).not.toContain("Practice workbook:");
  });
});
