import { readFileSync } from "node:fs";
import { SHARP, TALL } from "./camera.mjs";
import { measureBy, press } from "./desk.mjs";

const SHAPES = JSON.parse(readFileSync(new URL("../../src/help/guide/shapes.json", import.meta.url), "utf8"));
const field = (page, label, text) => page.getByLabel(label, { exact: true }).fill(text);

async function startBed(page, { name, way }) {
  await field(page, "Bed name", name);
  await measureBy(page, way);
}

/** A plain rectangle, whose pins can be counted row by row. */
export async function pins(open, camera) {
  const page = await open(TALL);
  await field(page, "Bed name", "Front walk");
  await field(page, "Length", "18.5");
  await field(page, "Width", "5");
  await camera.plan(page, "pins-rows");
  await page.context().close();
}

/** Beds of other shapes, typed as the guide tells it. */
export async function otherShapes(open, camera) {
  const sharp = await open(SHARP);
  const { curve, corner, placed } = SHAPES;
  await startBed(sharp, curve);
  for (const [index, width] of curve.widths.entries()) await field(sharp, `Width ${index + 1}`, width);
  await field(sharp, "Spacing between widths", curve.typed.spacing);
  await camera.between(
    sharp,
    "shapes-widths",
    sharp.getByText("Bed name"),
    sharp.getByRole("button", { name: "Add a width" }),
  );
  await sharp.context().close();

  const page = await open(TALL);
  await startBed(page, corner);
  for (let more = corner.points.length - 4; more > 0; more -= 1) await press(page, "Add a corner");
  for (const [index, [x, y, border]] of corner.points.entries()) {
    await field(page, `Point ${index + 1}, x`, x);
    await field(page, `Point ${index + 1}, y`, y);
    await page.getByLabel(`Edging from point ${index + 1} to`).setChecked(border === "1");
  }
  await camera.plan(page, "shapes-corner");

  await press(page, "New bed");
  await startBed(page, placed);
  await field(page, "Length", placed.typed.length);
  await field(page, "Width", placed.typed.width);
  await page.getByText("Cut-outs: meter pad, plant, post").click();
  for (const [index, [along, out, across, deep]] of placed.cutOuts.entries()) {
    await press(page, "Add a cut-out");
    const part = (label) => `Cut-out ${index + 1}, ${label}`;
    await field(page, part("along, to center"), along);
    await field(page, part("out, to center"), out);
    await field(page, part("across"), across);
    await field(page, part("deep"), deep);
  }
  await camera.plan(page, "shapes-placed");
  await page.context().close();
}
