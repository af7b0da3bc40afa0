import { readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { OfficeAddinManifest } from "office-addin-manifest";
import { beforeAll, describe, expect, test } from "vitest";
import { parseStringPromise } from "xml2js";
import { adaptManifest } from "../../src/manifest.mjs";

const ROOT = resolve(import.meta.dirname, "../..");
const xml = readFileSync(join(ROOT, "manifest.xml"), "utf8");

/** An element as xml2js gives it: attributes under `$`, children in lists by name. */
interface Element {
  $?: Record<string, string>;
  _?: string;
  [child: string]: unknown;
}

let manifest: Element;
beforeAll(async () => {
  manifest = (await parseStringPromise(xml)).OfficeApp as Element;
});

/** All elements of a name, wherever they stand. */
function all(name: string, within: unknown = manifest): Element[] {
  if (Array.isArray(within)) return within.flatMap((one) => all(name, one));
  if (typeof within !== "object" || within === null) return [];
  return Object.entries(within).flatMap(([key, children]) => [
    ...(key === name && Array.isArray(children) ? (children as Element[]) : []),
    ...(key === "$" ? [] : all(name, children)),
  ]);
}

const attribute = (name: string, key: string) => all(name).map((element) => element.$?.[key] ?? "");

/** Stands in for the host's own validator, which is a service on the web and out of reach for a test. */
describe("the manifest", () => {
  test("is read by the platform's own manifest library", async () => {
    const info = await OfficeAddinManifest.readManifestFile(join(ROOT, "manifest.xml"));
    expect(info).toMatchObject({
      displayName: "Bedrow",
      officeAppType: "TaskPaneApp",
      permissions: "ReadWriteDocument",
    });
    expect(info.id).toMatch(/^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/);
    expect(info.version).toMatch(/^\d+\.\d+\.\d+\.\d+$/);
    expect(info.hosts).toEqual(["Workbook"]);
  });

  test("names a resource for every resid, and uses every resource", () => {
    const JSON_TEXT = JSON.stringify(manifest);
    const used = new Set([...JSON_TEXT.matchAll(/"resid":"([^"]+)"/g)].map(([, id]) => id));
    const defined = ["bt:Image", "bt:Url", "bt:String"].flatMap((name) => attribute(name, "id")).filter(Boolean);
    expect(new Set(defined)).toEqual(used);
    expect(defined.length).toBe(new Set(defined).size);
    for (const id of defined) expect(id.length).toBeLessThanOrEqual(32);
  });

  test("keeps to the lengths the host allows", () => {
    for (const { $ } of all("bt:ShortStrings").flatMap((strings) => all("bt:String", strings))) {
      expect($?.DefaultValue?.length).toBeLessThanOrEqual(125);
    }
    for (const { $ } of all("bt:LongStrings").flatMap((strings) => all("bt:String", strings))) {
      expect($?.DefaultValue?.length).toBeLessThanOrEqual(250);
    }
    expect(attribute("Description", "DefaultValue")[0]?.length).toBeLessThanOrEqual(250);
    expect(attribute("DisplayName", "DefaultValue")[0]?.length).toBeLessThanOrEqual(125);
  });

  test("loads everything from one https origin", () => {
    const urls = [...xml.matchAll(/DefaultValue="(https?:[^"]*)"/g)].map(([, url]) => new URL(url!));
    expect(urls.length).toBeGreaterThan(8);
    expect(new Set(urls.map(({ origin }) => origin)).size).toBe(1);
    expect(urls.every(({ protocol }) => protocol === "https:")).toBe(true);
  });

  test("names icons that have the size they are named for", () => {
    for (const size of [16, 32, 64, 80]) {
      const png = readFileSync(join(ROOT, `assets/icon-${size}.png`));
      // Width and height are at bytes 16 and 20 of a PNG (its IHDR chunk, RFC 2083).
      expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([size, size]);
    }
    const named = [...xml.matchAll(/assets\/icon-(\d+)\.png/g)].map(([, size]) => Number(size));
    expect([...new Set(named)].sort()).toEqual([16, 32, 64, 80]);
    for (const { $ } of all("bt:Image").filter(({ $ }) => $?.size)) expect($?.resid).toBe(`Icon.${$?.size}`);
  });

  test("runs functions and pane in one shared runtime", () => {
    expect(attribute("Runtime", "resid")).toEqual(["Pane.Url"]);
    expect(attribute("Runtime", "lifetime")).toEqual(["long"]);
    expect(
      all("Page")
        .flatMap((page) => all("SourceLocation", page))
        .map(({ $ }) => $?.resid),
    ).toEqual(["Pane.Url"]);
    expect(attribute("Set", "Name")).toContain("SharedRuntime");
  });

  test("offers one ribbon button, which opens the pane", () => {
    expect(all("Control")).toHaveLength(1);
    expect(all("Action").map(({ $ }) => $?.["xsi:type"])).toEqual(["ShowTaskpane"]);
  });

  test("has a namespace the host accepts", () => {
    const namespace = all("bt:String").find(({ $ }) => $?.id === "Functions.Namespace")?.$?.DefaultValue;
    expect(namespace).toBe("BED");
    expect(namespace).toMatch(/^[A-Z][A-Z0-9_.]{0,31}$/);
  });
});

describe("the manifest for another place", () => {
  test("moves everything to the origin that is given", () => {
    const moved = adaptManifest(xml, { origin: "https://tools.office.example" });
    expect(moved).not.toContain("bedrow.example");
    expect(moved.match(/https:\/\/tools\.office\.example\//g)?.length).toBeGreaterThan(8);
  });

  test("gives the development copy an id, a name and a namespace of its own", () => {
    const copy = adaptManifest(xml, { development: true });
    const id = (text: string) => /<Id>(.*)<\/Id>/.exec(text)?.[1];
    expect(id(copy)).not.toBe(id(xml));
    expect(copy).toContain('id="Functions.Namespace" DefaultValue="BEDDEV"');
    expect(copy).toContain('<DisplayName DefaultValue="Bedrow (development)"/>');
  });

  test("refuses an origin that the host would not load from", () => {
    expect(() => adaptManifest(xml, { origin: "http://tools.example" })).toThrow(/not https/);
    expect(() => adaptManifest(xml, { origin: "https://tools.example/bedrow" })).toThrow(/has a path/);
    expect(() => adaptManifest(xml, { origin: "tools" })).toThrow(/not an address/);
  });
});
