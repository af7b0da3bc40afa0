import { describe, expect, test } from "vitest";
import { type KeptTemplate, keptText, readKept, renamedTemplate, withoutTemplate, withTemplate } from "./keptTemplates";
import type { Template } from "./template";

const template = (name: string, text = "a"): Template => ({
  format: "bedrow-template",
  version: 1,
  name,
  rows: 30,
  columns: 1,
  widths: [10],
  cells: Array.from({ length: 30 }, (_, row) => ({ at: `A${row + 1}`, text })),
});
const kept = (one: Template): KeptTemplate => ({ name: one.name, template: one, content: one });
const why = (changed: ReturnType<typeof withTemplate>) => (changed.ok ? "" : changed.why);

describe("the templates of a workbook", () => {
  test("read back as they were kept", () => {
    const both = [kept(template("One")), kept(template("Two"))];
    expect(readKept(keptText(both))).toEqual({ ok: true, templates: both });
    expect(readKept("")).toEqual({ ok: true, templates: [] });
  });

  test("are 50 at most", () => {
    const fifty = Array.from({ length: 50 }, (_, number) => kept(template(`Bed ${number}`)));
    expect(why(withTemplate(fifty, template("One more"), false))).toMatch(/^A workbook can hold 50 templates\. Delete/);
    expect(withTemplate(fifty, template("bed 7"), true)).toMatchObject({ ok: true });
  });

  test("take 1,500,000 characters at most, and it says how many they would", () => {
    // 30 cells of 30,000 characters and their addresses.
    const large = kept(template("Large", "x".repeat(30_000)));
    expect(withTemplate([], large.template!, false)).toMatchObject({ ok: true });
    expect(why(withTemplate([large], template("Another", "y".repeat(30_000)), false))).toMatch(
      /no room for it in this workbook: its templates would have 1,80\d,\d{3} characters; the limit is 1,500,000/,
    );
  });

  test("are renamed to a free name that shows, and to no other", () => {
    const both = [kept(template("One")), kept(template("Two"))];
    const renamed = renamedTemplate(both, "one", " Three ");
    expect(renamed.ok && renamed.templates.map(({ name, template: read }) => [name, read?.name])).toEqual([
      ["Three", "Three"],
      ["Two", "Two"],
    ]);
    expect(why(renamedTemplate(both, "One", "TWO"))).toMatch(/already has a template “TWO”/);
    expect(why(renamedTemplate(both, "One", "  "))).toMatch(/can't be a template's name/);
    expect(why(renamedTemplate(both, "One", "a\u202Eb"))).toMatch(/a hidden character \(U\+202E\)/);
    expect(why(renamedTemplate(both, "Four", "Five"))).toMatch(/no longer has a template “Four”/);
  });

  test("that are gone are told", () => {
    expect(why(withoutTemplate([kept(template("One"))], kept(template("Two"))))).toMatch(/no longer has/);
  });

  test("that can't be read are no hindrance to one of their name, and stay", () => {
    const bad: KeptTemplate = { name: "One", why: ["It is damaged."], content: { name: "One" } };
    const added = withTemplate([bad], template("One"), false);
    expect(added.ok && added.templates.map(({ content }) => content)).toEqual([bad.content, template("One")]);
    expect(withoutTemplate(added.ok ? added.templates : [], bad)).toMatchObject({ templates: [{ template: {} }] });
  });
});
