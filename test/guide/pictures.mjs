// Makes the guide's pictures and the README's again from a build: `npm run build && node test/guide/pictures.mjs [folder of the build]`.
import { cp, mkdtemp, readdir, rm, stat } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { firstEstimate, jobRows, limits, looksWrong, practice } from "./bedScenes.mjs";
import { Camera } from "./camera.mjs";
import { atTheDesk } from "./desk.mjs";
import { papers, sheetsOfPaper, templates, withoutTheAddIn } from "./officeScenes.mjs";
import { otherShapes, pins } from "./shapeScenes.mjs";

const ROOT = resolve(import.meta.dirname, "../..");
const PICTURES = join(ROOT, "src/help/guide/pictures");
const SCENES = [
  firstEstimate,
  otherShapes,
  jobRows,
  papers,
  sheetsOfPaper,
  templates,
  looksWrong,
  withoutTheAddIn,
  limits,
  pins,
];

const build = resolve(process.argv[2] ?? process.env.DIST ?? join(ROOT, "dist"));
/** The pictures of before stay until all new ones are made. */
const scratch = await mkdtemp(join(tmpdir(), "pictures-"));
try {
  await atTheDesk(build, async (open) => {
    for (const scene of SCENES) await scene(open, new Camera(scratch));
    await practice(open, join(ROOT, "assets/practice.png"));
  });
  await rm(PICTURES, { recursive: true, force: true });
  await cp(scratch, PICTURES, { recursive: true });
} finally {
  await rm(scratch, { recursive: true, force: true });
}
const sizes = await Promise.all((await readdir(PICTURES)).map(async (name) => (await stat(join(PICTURES, name))).size));
console.log(`${sizes.length} pictures, ${Math.round(sizes.reduce((sum, size) => sum + size, 0) / 1000)} kB together.`);
