import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join, resolve } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { fourParts, isHigher, readOptions } from "../../src/packaging/cliOptions.mjs";
import { installGuide } from "../../src/packaging/installGuide.mjs";
import { DIST } from "../dist";

describe("a package for the office", () => {
  test("takes an https origin, and the version in the four parts of a manifest", () => {
    expect(readOptions(["--origin", "https://tools.example", "--version", "1.4"], "0.1.0")).toEqual({
      origin: "https://tools.example",
      version: "1.4.0.0",
      from: undefined,
      to: "package",
    });
    expect(readOptions(["--origin", "https://tools.example:8443/"], "0.1.0").origin).toBe("https://tools.example:8443");
  });

  test.each([
    [["--origin", "http://tools.example"], /not https/],
    [["--origin", "tools.example"], /not an address/],
    [["--origin", "https://tools.example/bedrow"], /has a path/],
    [["--origin", "https://tools.example/?a=1"], /has a path/],
    [["--origin", "https://tools.example/#a"], /has a path/],
    [["--origin", "https://localhost:3000"], /only works on this computer/],
    [["--origin", "https://127.0.0.1"], /only works on this computer/],
    [["--origin", "https://[::1]:8443"], /only works on this computer/],
    [[], /Say where/],
    [["--origin"], /needs a value/],
    [["--origin", "--version"], /needs a value/],
    [["--folder", "x"], /isn't an option\. Use:.* --origin .*\[--version .*\[--from .*\[--to /],
    [["--origin", "https://tools.example", "--version", "new"], /isn't a version/],
    [["--origin", "https://tools.example", "--version", "1.2.3.4.5"], /isn't a version/],
  ])("refuses %j in words", (given, words) => {
    expect(() => readOptions(given, "0.1.0")).toThrow(words);
  });

  test("comes after the one before it", () => {
    expect(isHigher(fourParts("1.10"), fourParts("1.9.9"))).toBe(true);
    expect(isHigher("1.0.0.0", "1.0.0.0")).toBe(false);
    expect(isHigher("0.9.0.0", "1.0.0.0")).toBe(false);
  });

  test("has a guide that names its origin and runs no script", () => {
    const guide = installGuide({ origin: "https://tools.example", version: "1.4.0.0" });
    expect(guide).toContain("https://tools.example/pane.html");
    expect(guide).toContain("built for <strong>https://tools.example</strong>");
    expect(guide).toContain("<title>Installing Bedrow 1.4.0.0</title>");
    expect(guide).not.toMatch(/<script|javascript:| on\w+=/i);
  });
});

describe("the folder for the office, made of a build", () => {
  const root = resolve(import.meta.dirname, "../..");
  const scratch = mkdtempSync(join(tmpdir(), "package-test-"));
  afterAll(() => rmSync(scratch, { recursive: true, force: true }));
  const folder = join(scratch, "made");
  const make = (version: string, to = folder) =>
    spawnSync(
      process.execPath,
      ["src/package.mjs", "--origin", ORIGIN, "--version", version, "--from", join(root, "dist"), "--to", to],
      { cwd: root, encoding: "utf8" },
    );

  test("holds what the host loads, at its own address, and no practice workbook", () => {
    const { status, stdout, stderr } = make("1.4");
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    expect(stdout).toContain("1.4.0.0");
    const manifest = readFileSync(join(folder, "manifest.xml"), "utf8");
    expect(manifest).toContain("<Version>1.4.0.0</Version>");
    const named = [...manifest.matchAll(/https:\/\/[^"<]+/g)].map(([address]) => address);
    const own = named.filter((address) => new URL(address).origin === ORIGIN);
    // Everything that the manifest sends the host to, but the schema's names, lies in the folder.
    expect(own.length).toBeGreaterThan(5);
    for (const address of own) expect(existsSync(join(folder, new URL(address).pathname)), address).toBe(true);
    expect(textFiles(folder).filter((file) => readFileSync(file, "utf8").includes("localhost"))).toEqual([]);
    const names = (of: string) => readdirSync(of, { recursive: true, encoding: "utf8" }).map((name) => basename(name));
    const practice = /^practice|^grid|^univer|^built-from/;
    expect(names(DIST).filter((name) => practice.test(name)).length).toBeGreaterThanOrEqual(6);
    expect(names(folder).filter((name) => practice.test(name))).toEqual([]);
    // Nor the spreadsheet program's client library: built.test.ts says why.
    const scripts = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".js"));
    const ofTheLibrary = (name: string) =>
      /Office JavaScript API library/.test(readFileSync(join(folder, name), "utf8"));
    expect(scripts.filter((name) => /(^|\/)(office|excel-)/.test(name) || ofTheLibrary(name))).toEqual([]);
    const pages = JSON.parse(readFileSync(join(folder, "functions.json"), "utf8")) as { functions: FunctionPage[] };
    for (const { helpUrl } of pages.functions) expect(existsSync(join(folder, new URL(helpUrl).pathname))).toBe(true);
    expect(readdirSync(folder)).toEqual(expect.arrayContaining(["LICENSE.txt", "licenses.txt", "help", "templates"]));
  });

  test("is not made twice of one version, and the one that was there stays", () => {
    const { status, stderr } = make("1.4");
    expect(status).toBe(1);
    expect(stderr).toContain("holds version 1.4.0.0 already");
    expect(existsSync(join(folder, "manifest.xml"))).toBe(true);
    expect(make("1.5").status).toBe(0);
  });

  test("never takes the place of a folder that holds something else", () => {
    const { status, stderr } = make("1.6", join(folder, "help"));
    expect(status).toBe(1);
    expect(stderr).toContain("left as it is");
    expect(existsSync(join(folder, "help/index.html"))).toBe(true);
  });
});

const ORIGIN = "https://tools.example";

interface FunctionPage {
  readonly helpUrl: string;
}

const textFiles = (folder: string) =>
  readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => /\.(html|json|xml|css)$/.test(name))
    .map((name) => join(folder, name));
