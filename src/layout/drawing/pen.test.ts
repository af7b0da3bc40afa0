import { describe, expect, it } from "vitest";
import { paletteOf, themeStyle } from "./palette";
import { Pen, pathThrough, textWidth } from "./pen";
import { element, escaped, short } from "./svg";

describe("SVG as text", () => {
  it("has numbers to the hundredth without needless zeros", () => {
    expect([1.234, 1.236, 2, 2.5, -0.001, 1e-9].map(short)).toEqual(["1.23", "1.24", "2", "2.5", "0", "0"]);
  });

  it("closes an element without children itself, and leaves out what is undefined", () => {
    expect(element("path", { d: "M0 0", stroke: undefined, "stroke-width": 1.257 })).toBe(
      '<path d="M0 0" stroke-width="1.26"/>',
    );
    expect(element("g", {}, "<a/>", "<b/>")).toBe("<g><a/><b/></g>");
    expect(element("g", { id: 'a "b" & <c>' }, "")).toBe('<g id="a &quot;b&quot; &amp; &lt;c&gt;"></g>');
  });

  it("keeps what XML allows and drops control characters", () => {
    const forbidden = "\u0000\u0001\u0008\u000b\u000c\u000e\u001f\ufffe\uffff";
    expect(escaped(`5'${forbidden} 6" \u00a0½\t\n é`)).toBe("5' 6&quot; \u00a0½\t\n é");
    expect(escaped("a & b && <<c>>")).toBe("a &amp; b &amp;&amp; &lt;&lt;c&gt;&gt;");
  });
});

describe("the width of text", () => {
  // Shares of the font size, as the letters of Arial are: narrow, half narrow, wide, capitals, and all others.
  it.each([
    ["ijlI.,:;'|!·", 0.26],
    ['"()frt-/ ', 0.36],
    ["mwMW@%", 0.87],
    ["ABXYZ&", 0.7],
    ["abcxyz0189é", 0.56],
  ])("of each of %s is %s of its size", (characters, share) => {
    for (const character of characters) expect(textWidth(character, 100)).toBeCloseTo(100 * share, 9);
  });

  it("adds up", () => {
    // 1, 8, foot mark, space, 6, inch mark: 2 · 0.56 + 0.26 + 0.36 + 0.56 + 0.36 of 10.
    expect(textWidth(`18' 6"`, 10)).toBeCloseTo(26.6, 9);
    expect(textWidth("", 10)).toBe(0);
  });
});

describe("the pen", () => {
  const pen = new Pen("bed", "light", 11);
  const at = { x: 10, y: 20 };

  it("writes text with its middle at the point", () => {
    expect(pen.text("a < b", at, { size: 10, color: "#123456" })).toBe(
      '<text x="10" y="23.6" font-size="10" fill="#123456" text-anchor="middle">a &lt; b</text>',
    );
  });

  it("writes text from a point, up to it, bold, turned and with a rim of paper", () => {
    const style = { size: 10, color: "#123456" };
    const tag = '<text x="10" y="23.6" font-size="10" fill="#123456"';
    expect(pen.text("a", at, { ...style, anchor: "start" })).toBe(`${tag}>a</text>`);
    expect(pen.text("a", at, { ...style, anchor: "end" })).toBe(`${tag} text-anchor="end">a</text>`);
    expect(pen.text("a", at, { ...style, anchor: "start", bold: true })).toBe(`${tag} font-weight="bold">a</text>`);
    expect(pen.text("a", at, { ...style, anchor: "start", turn: -90 })).toBe(
      `${tag} transform="rotate(-90 10 20)">a</text>`,
    );
    expect(pen.text("a", at, { ...style, anchor: "start", turn: 0, halo: true })).toBe(
      `${tag} stroke="#ffffff" stroke-width="3" stroke-linejoin="round" paint-order="stroke">a</text>`,
    );
  });

  it("draws lines, plain and dashed", () => {
    expect(pen.line(at, { x: 1.005, y: 2.557 }, "#123456", 0.8)).toBe(
      '<path d="M10 20L1 2.56" stroke="#123456" stroke-width="0.8"/>',
    );
    expect(pen.line(at, at, "#123456", 0.8, "1 2")).toContain('stroke-dasharray="1 2"');
  });

  it("draws paths through points, closed for a ring", () => {
    const corners = [at, { x: 30, y: 20 }, { x: 30, y: 45.678 }];
    expect(pathThrough(corners, false)).toBe("M10 20L30 20L30 45.68");
    expect(pathThrough(corners, true)).toBe("M10 20L30 20L30 45.68Z");
  });

  it("calls its parts by the drawing's id", () => {
    expect(pen.part("overlap")).toBe("bed-overlap");
  });
});

describe("the colors", () => {
  /** Relative luminance of an sRGB color (WCAG 2.2, definition). */
  function luminance(color: string): number {
    const [red, green, blue] = [1, 3, 5].map((from) => {
      const share = Number.parseInt(color.slice(from, from + 2), 16) / 255;
      return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
  }
  const contrast = (one: string, other: string) => {
    const [dark, light] = [luminance(one), luminance(other)].sort((a, b) => a - b);
    return (light! + 0.05) / (dark! + 0.05);
  };

  it.each(["light", "dark"] as const)("of the %s theme keep text at 4.5 to 1, and layers apart", (theme) => {
    const colors = paletteOf(theme);
    for (const color of Object.values(colors)) expect(color).toMatch(/^#[0-9a-f]{6}$/);
    for (const ground of [colors.paper, colors.fabric, colors.otherFabric])
      expect(contrast(colors.ink, ground)).toBeGreaterThan(4.5);
    // Dimensions and the names of pieces have a rim of paper.
    for (const words of [colors.soft, colors.border]) expect(contrast(words, colors.paper)).toBeGreaterThan(4.5);
    // Marks and areas against the lines around them: 3 to 1 (WCAG 2.2, 1.4.11).
    for (const area of [colors.stone, colors.soil]) expect(contrast(area, colors.ink)).toBeGreaterThan(3);
    expect(contrast(colors.lawn, colors.paper)).toBeGreaterThan(3);
    expect(new Set(Object.values(colors)).size).toBe(9);
    const isLight = luminance(colors.paper) > luminance(colors.ink);
    expect(isLight).toBe(theme === "light");
  });

  it("that follow the screen are variables, set light and, where the screen is dark, dark", () => {
    const { ink, otherFabric } = paletteOf("auto");
    expect([ink, otherFabric]).toEqual(["var(--bed-ink)", "var(--bed-otherFabric)"]);
    const rule = (theme: "light" | "dark") =>
      `#plan{${Object.entries(paletteOf(theme))
        .map(([name, color]) => `--bed-${name}:${color}`)
        .join(";")}}`;
    expect(themeStyle("auto", "plan")).toBe(
      `<style>${rule("light")}@media (prefers-color-scheme:dark){${rule("dark")}}</style>`,
    );
    expect([themeStyle("light", "plan"), themeStyle("dark", "plan")]).toEqual(["", ""]);
  });
});
