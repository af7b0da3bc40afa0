import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { officeFolder } from "./officeFolder";

const ORIGIN = "https://tools.example";
const index = { format: "bedrow-template-index", version: 1, templates: ["bed.json", "gone.json"] };
const template = {
  ...{ format: "bedrow-template", version: 1, name: "Small bed", rows: 1, columns: 1, widths: [9] },
  cells: [{ at: "A1", text: "Bed" }],
};

/** What the host answers, by file: a text and its type. */
let files: Record<string, { text: string; type: string }>;
const fetched = vi.fn(async (url: URL) => {
  const file = files[url.pathname];
  return new Response(file?.text ?? "", {
    status: file ? 200 : 404,
    headers: { "content-type": file?.type ?? "text/html" },
  });
});
beforeEach(() => {
  files = {};
  vi.stubGlobal("document", { baseURI: `${ORIGIN}/pane.html` });
  vi.stubGlobal("location", { origin: ORIGIN });
  vi.stubGlobal("fetch", fetched);
});
afterEach(() => {
  vi.unstubAllGlobals();
  vi.clearAllMocks();
});

const json = (content: unknown) => ({ text: JSON.stringify(content), type: "application/json" });

describe("the office's folder of templates", () => {
  test("is empty where there is no list", async () => {
    expect(await officeFolder()).toEqual({ templates: [] });
  });

  test("is empty where the host answers with a page in place of the list", async () => {
    files["/templates/index.json"] = { text: "<!doctype html><p>Not found</p>", type: "text/html; charset=utf-8" };
    expect(await officeFolder()).toEqual({ templates: [] });
  });

  test("is asked of the add-in's own origin, and of nothing else", async () => {
    vi.stubGlobal("document", { baseURI: "https://elsewhere.example/pane.html" });
    expect(await officeFolder()).toEqual({ templates: [] });
    expect(fetched).not.toHaveBeenCalled();
  });

  test("says what is wrong with a list that can't be read", async () => {
    files["/templates/index.json"] = json("nonsense");
    expect((await officeFolder()).trouble).toMatch(/list/);
  });

  test("names each template, and says which file isn't there", async () => {
    files["/templates/index.json"] = json(index);
    files["/templates/bed.json"] = json(template);
    const { templates, trouble } = await officeFolder();
    expect(trouble).toBeUndefined();
    expect(templates.map(({ file }) => file)).toEqual(["bed.json", "gone.json"]);
    expect(templates[0]?.template?.name).toBe("Small bed");
    expect(templates[1]?.why).toEqual(["The list names it, but the folder has no such file."]);
  });
});
