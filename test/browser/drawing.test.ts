import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { measureBy } from "./bedForm";
import { launch, openPractice, picture } from "./openPractice";
import { openScreen } from "./openScreen";

let browser: Browser;
let page: Page;
beforeAll(async () => {
  browser = await launch();
  ({ page } = await openPractice(browser, { viewport: { width: 1900, height: 1100 } }));
});
afterAll(() => browser.close());

/** What a sheet shows, row by row. */
const rowsOf = (sheet: string): Promise<unknown[][]> =>
  page.evaluate(
    (name) =>
      Excel.run(async (context) => {
        const used = context.workbook.worksheets.getItem(name).getUsedRangeOrNullObject(true);
        used.load("values");
        await context.sync();
        return used.values;
      }),
    sheet,
  );

/** What the cells of the last block say, by label; where a label stands twice, what stands last. */
async function cells(sheet: string): Promise<Record<string, number>> {
  const rows = await rowsOf(sheet);
  return Object.fromEntries(rows.map(([label, value]) => [String(label), Number(value)]));
}

/** How many cuts of fabric the drawing writes below itself. */
const cutsInWords = async () =>
  Number(/Fabric: (\d+) cut/.exec((await page.locator("#pane-plan").textContent()) ?? "")?.[1]);

/** The counts that the drawing in the pane writes below itself. */
async function drawnCounts() {
  const text = (await page.locator("#pane-plan").textContent()) ?? "";
  const number = (pattern: RegExp) => Number(pattern.exec(text)?.[1]);
  return {
    pins: number(/Pins: (\d+)/),
    pieces: number(/in (\d+) pieces?/),
    stakes: number(/(\d+) stakes/),
  };
}

/**
 * The marks in a picture itself, as the browser shows it: pins as dots counted in its pixels, after all else is taken
 * out of it, stakes as squares beside the edging, without those of the legend, and cuts of fabric as areas.
 *
 * @param printed the picture as its text; left out, the one in the pane.
 */
async function marks(printed?: string) {
  return page.evaluate(async (text) => {
    const svg = (text === undefined
      ? document.querySelector("#pane-plan")
      : new DOMParser().parseFromString(text, "image/svg+xml").documentElement) as unknown as SVGSVGElement;
    const dots = svg.querySelector('path[stroke-linecap="round"]') as SVGPathElement;
    const only = svg.cloneNode(false) as SVGSVGElement;
    const copy = dots.cloneNode(true) as SVGPathElement;
    copy.setAttribute("stroke", "black");
    // Dots so small that no two touch.
    copy.setAttribute("stroke-width", "0.6");
    const placed = document.createElementNS("http://www.w3.org/2000/svg", "g");
    placed.setAttribute("transform", (dots.closest("g[transform]") as SVGGElement).getAttribute("transform") ?? "");
    placed.append(copy);
    only.append(placed);
    const [times, width, height] = [6, svg.width.baseVal.value, svg.height.baseVal.value];
    only.setAttribute("width", String(width * times));
    only.setAttribute("height", String(height * times));
    const image = new Image();
    image.src = `data:image/svg+xml,${encodeURIComponent(new XMLSerializer().serializeToString(only))}`;
    await image.decode();
    const [across, down] = [Math.ceil(width * times), Math.ceil(height * times)];
    const canvas = Object.assign(document.createElement("canvas"), { width: across, height: down });
    const context = canvas.getContext("2d") as CanvasRenderingContext2D;
    context.drawImage(image, 0, 0);
    const { data } = context.getImageData(0, 0, across, down);
    const isInk = (at: number) => (data[4 * at + 3] ?? 0) > 127;
    const seen = new Uint8Array(across * down);
    let pins = 0;
    for (let start = 0; start < seen.length; start++) {
      if (seen[start] || !isInk(start)) continue;
      pins++;
      const open = [start];
      seen[start] = 1;
      for (let at = open.pop(); at !== undefined; at = open.pop())
        for (const next of [at - 1, at + 1, at - across, at + across])
          if (next >= 0 && next < seen.length && !seen[next] && isInk(next)) {
            seen[next] = 1;
            open.push(next);
          }
    }
    const squares = [...svg.querySelectorAll('path[stroke-width="1.1"]')].map((path) => path.getAttribute("d") ?? "");
    const held = squares.filter((d) => d.includes("L")).length;
    const cuts = svg.querySelectorAll('path[fill-rule="evenodd"][stroke-width="0.8"]').length;
    return { pins, stakes: Math.max(0, squares.length - 1 - (held > 0 ? 1 : 0)), cuts };
  }, printed);
}

async function insertOnNewSheet(name: string): Promise<void> {
  await page.getByRole("button", { name: "Insert on a new sheet" }).click();
  await page.getByText(`Added to ${name}!A1`).waitFor();
}

const shapes: { readonly name: string; readonly fill: () => Promise<void> }[] = [
  {
    name: "Kidney",
    fill: async () => {
      await measureBy(page, "widths");
      await page.getByLabel("All widths at once").fill(`0, 5' 6", 7, 6, 4' 6", 6' 6", 3`);
      expect(await page.getByLabel("Width 5", { exact: true }).inputValue()).toBe(`4' 6"`);
      // One by one as well.
      await page.getByLabel("Width 7", { exact: true }).fill("0");
      await page.getByLabel("Spacing between widths").fill("4'");
      await page.getByText("Cut-outs: meter pad").click();
      await page.getByRole("button", { name: "Add a cut-out" }).click();
      await page.getByLabel("Cut-out 1, along, to center").fill("8");
      await page.getByLabel("Cut-out 1, out, to center").fill("1.5");
      await page.getByLabel("Cut-out 1, across").fill("2");
      await page.getByLabel("Cut-out 1, deep").fill(`18"`);
    },
  },
  {
    name: "Ring",
    fill: async () => {
      await measureBy(page, "round");
      await page.getByLabel("Diameter", { exact: true }).fill(`9' 6"`);
      await page.getByLabel("Inner diameter").fill("2");
    },
  },
  {
    name: "Corner bed",
    fill: async () => {
      await measureBy(page, "points");
      await page.getByLabel("All corners at once").fill("0, 0; 18, 0; 18, 4; 4, 4; 4, 12; 0, 11");
      await page.getByLabel("Point 6, y").fill("12");
      await page.getByLabel("Edging from point 1 to point 2").uncheck();
      await page.getByLabel("Edging from point 6 to point 1").uncheck();
    },
  },
];

shapes.push(
  {
    name: "Wall strip",
    fill: async () => {
      await measureBy(page, "rectangle");
      await page.getByLabel("Length", { exact: true }).fill(`18' 6"`);
      await page.getByLabel("Width", { exact: true }).fill("5");
    },
  },
  {
    name: "Island",
    fill: async () => {
      await measureBy(page, "points");
      // Edging along two sides that don't meet: two runs.
      await page.getByLabel("All corners at once").fill("0, 0; 24, 0; 24, 13; 0, 13");
      await page.getByLabel("Edging from point 2 to point 3").uncheck();
      await page.getByLabel("Edging from point 4 to point 1").uncheck();
    },
  },
);
shapes.push({
  name: "Steps",
  fill: async () => {
    await measureBy(page, "rectangle");
    await page.getByLabel("Length", { exact: true }).fill("20");
    await page.getByLabel("Width", { exact: true }).fill("11");
    await page.getByText("Rounded corners, areas to deduct").click();
    await page.getByLabel("Corner radius").fill("2");
    await page.getByLabel("Front left corner").check();
    // Steps at the wall, which the cut-out touches. The group is open from the first bed on.
    await page.getByRole("button", { name: "Add a cut-out" }).click();
    await page.getByLabel("Cut-out 1, along, to center").fill("12");
    await page.getByLabel("Cut-out 1, out, to center").fill("1");
    await page.getByLabel("Cut-out 1, across").fill("4");
    await page.getByLabel("Cut-out 1, deep").fill("2");
  },
});
shapes.push({
  name: "Tied bed",
  fill: async () => {
    await measureBy(page, "points");
    await page.getByText("Corners by two distances").click();
    await page.getByLabel("Between the two points").fill("6");
    // Over a base of 6 ft: 8 ft straight out from either end (6-8-10), and 4 ft out from the middle (3-4-5).
    await page.getByLabel("From the first point, from the second").fill("8', 10\n10, 8-0\n5, 5");
    const places = ["Point 1, x", "Point 1, y", "Point 2, x", "Point 2, y", "Point 3, x", "Point 3, y"];
    const taped = await Promise.all(places.map((label) => page.getByLabel(label).inputValue()));
    expect(taped).toEqual(["0", "8", "6", "8", "3", "4"]);
  },
});

describe("a bed that is drawn", () => {
  test.each(shapes)("$name: the picture, the pane and the cells count the same", async ({ name, fill }) => {
    await page.getByRole("button", { name: "New bed" }).click();
    await page.getByLabel("Bed name").fill(name);
    await fill();
    await page.locator("#pane-plan").waitFor();
    await expect.poll(() => page.locator("#pane-plan").textContent()).toContain(name);
    await insertOnNewSheet(name);
    const counted = await cells(name);
    // The drawing follows what is typed after a pause.
    await expect
      .poll(drawnCounts)
      .toEqual({ pins: counted.Pins, pieces: counted["Edging pieces"], stakes: counted.Stakes });
    expect(await marks()).toEqual({ pins: counted.Pins, stakes: counted.Stakes, cuts: await cutsInWords() });
    await page.getByText(": drawing up to date").waitFor();
    await picture(page, `drawing-${name.toLowerCase().replace(" ", "-")}`);
  });

  test("is told to be out of date once an input changes in its block, and is drawn again", async () => {
    await page.evaluate(() =>
      Excel.run(async (context) => {
        const sheet = context.workbook.worksheets.getItem("Ring");
        sheet.activate();
        const column = sheet.getRange("A1:A40");
        column.load("values");
        await context.sync();
        const row = column.values.findIndex(([label]) => label === "Diameter");
        sheet.getCell(row, 1).values = [["11 ft"]];
        sheet.getRange("B3").select();
        await context.sync();
      }),
    );
    await page.getByText(": drawing out of date").waitFor();
    const shapesOn = () =>
      page.evaluate(() =>
        Excel.run(async (context) => {
          const { shapes: all } = context.workbook.worksheets.getItem("Ring");
          all.load("items/altTextDescription");
          await context.sync();
          return all.items.map(({ altTextDescription }) => altTextDescription);
        }),
      );
    const [before] = await shapesOn();
    await page.getByRole("button", { name: "Redraw" }).click();
    await page.getByText("The drawing of Ring is up to date.").first().waitFor();
    const after = await shapesOn();
    expect(after).toHaveLength(1);
    expect(after[0]).not.toBe(before);
    await picture(page, "drawing-again");
  });
});

test("a job of all these beds has on its order and its crew sheet as much as is drawn on that sheet", async () => {
  await openScreen(page, "Job documents");
  const ticked = page.getByRole("group", { name: "Beds of this job" }).getByRole("checkbox", { checked: true });
  await expect.poll(() => ticked.count()).toBe(shapes.length);
  await page.getByLabel("Job", { exact: true }).fill("All ways");
  // The drawings of the crew sheet are pictures; what they are made from passes by here.
  await page.evaluate(() => {
    const drawn: string[] = [];
    const source = Object.getOwnPropertyDescriptor(HTMLImageElement.prototype, "src")!;
    Object.defineProperty(HTMLImageElement.prototype, "src", {
      ...source,
      set(address: string) {
        if (address.includes("crew-")) drawn.push(decodeURIComponent(address.slice(address.indexOf(",") + 1)));
        source.set!.call(this, address);
      },
    });
    Object.assign(window, { drawn });
  });
  for (const paper of ["Crew sheet", "Order"]) {
    await page.getByRole("button", { name: paper, exact: true }).click();
    await page.getByText(`Added ${paper.replace(" sheet", "")} All ways.`).waitFor();
  }
  const svgs = await page.evaluate(() => (window as unknown as { drawn: string[] }).drawn);
  expect(svgs).toHaveLength(shapes.length);
  const drawn: Awaited<ReturnType<typeof marks>>[] = [];
  for (const svg of svgs) drawn.push(await marks(svg));
  const all = (key: "pins" | "stakes" | "cuts") => drawn.reduce((sum, one) => sum + one[key], 0);
  const blocks = await Promise.all(shapes.map(({ name }) => cells(name)));
  const counted = (label: string) => blocks.reduce((sum, one) => sum + one[label]!, 0);
  expect([all("pins"), all("stakes")]).toEqual([counted("Pins"), counted("Stakes")]);

  const crew = (await rowsOf("Crew All ways")).flat().map(String);
  const said = (words: RegExp) =>
    crew.flatMap((cell) => words.exec(cell)?.[1] ?? []).map((n) => Number(n.replace(",", "")));
  expect(said(/([\d,]+) pins set/)).toEqual([all("pins")]);
  // Each length of the cut list is in the drawing of its bed, and rolls and pieces are shared across beds.
  const words = svgs.map((svg) =>
    svg
      .replace(/<[^>]+>/g, " ")
      .replaceAll("&quot;", '"')
      .replace(/\s+/g, " "),
  );
  const stocks = crew.flatMap((cell) => /^(\d+)\. (.*); .* left over$/.exec(cell)?.slice(1, 3).join("|") ?? []);
  const cuts = stocks.flatMap((stock) => {
    const [number = "", list = ""] = stock.split("|");
    return list.split(" + ").map((cut, place) => {
      const [, bed = "", part = "", length = ""] = /^(.*) (P?\d+): (.*)$/.exec(cut) ?? [];
      return { number, place, bed, part, length };
    });
  });
  expect(
    stocks.some(
      (stock) => new Set(cuts.filter(({ number }) => stock.startsWith(`${number}|`)).map(({ bed }) => bed)).size > 1,
    ),
  ).toBe(true);
  shapes.forEach(({ name }, index) => {
    for (const { number, place, part, length } of cuts.filter(({ bed }) => bed === name))
      expect(words[index]).toContain(
        part.startsWith("P")
          ? `${part} cut to ${length} from ${place > 0 ? "the offcut of " : ""}piece ${number}`
          : `${length} off roll ${number}`,
      );
    const own = cuts.filter(({ bed, part }) => bed === name && !part.startsWith("P"));
    expect(new Set(own.map(({ part }) => part)).size).toBe(drawn[index]!.cuts);
  });
  const order = await rowsOf("Order All ways");
  const rolls = order.find((row) => /fabric/i.test(String(row[0])) && row.some((cell) => typeof cell === "number"));
  const numbers = cuts.filter(({ part }) => !part.startsWith("P")).map(({ number }) => Number(number));
  expect(rolls).toContain(Math.max(...numbers));
});
