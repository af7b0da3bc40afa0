// Renders assets/icon.svg to the sizes that the manifest names: `node assets/render-icons.mjs [chromium]`.
import { readFile, writeFile } from "node:fs/promises";
import { chromium } from "playwright-core";

const here = new URL(".", import.meta.url);
const svg = await readFile(new URL("icon.svg", here), "utf8");
const browser = await chromium.launch({
  executablePath: process.argv[2] ?? "/usr/bin/chromium",
  args: ["--no-sandbox"],
});
for (const size of [16, 32, 64, 80]) {
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  await page.setContent(`<style>*{margin:0}svg{display:block;width:${size}px;height:${size}px}</style>${svg}`);
  await writeFile(new URL(`icon-${size}.png`, here), await page.screenshot({ omitBackground: true }));
  await page.close();
}
await browser.close();
