import { expect, test } from "vitest";
import { escaped, link, number, table, unescaped } from "./html";

test("nothing in a text is markup, in a page or in an attribute", () => {
  expect(escaped(`<b> & 18' 6"`)).toBe("&lt;b&gt; &amp; 18' 6&quot;");
  expect(link(`a.html" onclick="x`, `6" stone`)).toBe('<a href="a.html&quot; onclick=&quot;x">6&quot; stone</a>');
  expect(table(['Depth, "'], [["2"]])).toContain('aria-label="Table: Depth, &quot;"');
});

test("a number has six digits and its thousands apart", () => {
  expect(number(1234.56789)).toBe("1,234.57");
  expect(number(0.1 + 0.2)).toBe("0.3");
});

test("text that was escaped reads as it was, and so does an apostrophe that another tool escaped", () => {
  const text = `18' 6" & "a < b > c"; &#39; stays`;
  expect(unescaped(escaped(text))).toBe(text);
  expect(unescaped("4&#39;  6&quot;\n")).toBe(`4' 6"`);
});
