import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeEach, describe, expect, test } from "vitest";
import { hashInputs, isBuilt, stamped } from "./inputs.mjs";

const scratch = mkdtempSync(join(tmpdir(), "inputs-"));
afterAll(() => rmSync(scratch, { recursive: true, force: true }));

let count = 0;
let root: string;
let dist: string;
beforeEach(() => {
  root = join(scratch, String(count++));
  dist = join(root, "dist");
  for (const folder of ["src/help", "assets", "test", "dist"]) mkdirSync(join(root, folder), { recursive: true });
  for (const file of ["src/a.ts", "src/help/b.html", "assets/c.png", "manifest.xml", "package-lock.json"])
    writeFileSync(join(root, file), `content of ${file}`);
});
const write = (file: string, text: string) => writeFileSync(join(root, file), text);
const succeed = async () => true;

describe("what is built", () => {
  test("is current until something that it's made from changes", async () => {
    expect(isBuilt(root, dist)).toBe(false);
    await stamped(root, dist, succeed);
    expect(isBuilt(root, dist)).toBe(true);
  });

  test.each(["src/a.ts", "src/help/b.html", "src/new.ts", "assets/c.png", "manifest.xml", "package-lock.json"])(
    "is out of date once %s is written",
    async (file) => {
      await stamped(root, dist, succeed);
      write(file, "something else");
      expect(isBuilt(root, dist)).toBe(false);
    },
  );

  test.each(["start.log", "test/a.test.ts", "src/a.test.ts", "dist/practice.js"])(
    "stays current when %s is written, which no build reads",
    async (file) => {
      await stamped(root, dist, succeed);
      write(file, "something else");
      expect(isBuilt(root, dist)).toBe(true);
    },
  );

  test("is out of date once a file that it's made from is gone", async () => {
    await stamped(root, dist, succeed);
    rmSync(join(root, "src/a.ts"));
    expect(isBuilt(root, dist)).toBe(false);
  });

  test("is out of date where the last build failed, or a file changed during it", async () => {
    await stamped(root, dist, succeed);
    await stamped(root, dist, async () => false);
    expect(isBuilt(root, dist)).toBe(false);
    await stamped(root, dist, async () => {
      write("src/a.ts", "changed meanwhile");
      return true;
    });
    expect(isBuilt(root, dist)).toBe(false);
  });

  test("is the same by its content, not by when its files were written", () => {
    const copy = join(scratch, "copy");
    cpSync(root, copy, { recursive: true });
    expect(hashInputs(copy)).toBe(hashInputs(root));
  });
});
