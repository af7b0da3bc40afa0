import { execFileSync } from "node:child_process";
import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";
import { chromium } from "playwright-core";

/** Chromium without a window. It starts no pages for menus of its own, so the tests take far less time in it. */
const HEADLESS = "chromium-headless-shell";
const NAMES = [HEADLESS, "chromium", "chromium-browser", "google-chrome", "chrome"];

/**
 * Where a Chromium stands: the one that `CHROMIUM_PATH` names, one on the path, or one that is fetched now, from the
 * system's packages or by the test library.
 *
 * @throws Error that says what to install by hand.
 */
export function findBrowser(): string {
  const found = installed();
  if (found) return found;
  const ways: [string, string[]][] =
    process.platform === "linux" && process.getuid?.() === 0 && existsSync("/usr/bin/apt-get")
      ? [
          ["apt-get", ["update", "-qq"]],
          ["apt-get", ["install", "-y", "-qq", "--no-install-recommends", HEADLESS, "fonts-dejavu-core"]],
        ]
      : [[process.execPath, ["node_modules/playwright-core/cli.js", "install", "chromium"]]];
  console.log("No browser on this machine; getting one for the browser tests…");
  for (const [command, given] of ways) {
    execFileSync(command, given, { stdio: "inherit", env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" } });
  }
  const got = installed();
  if (!got) throw new Error("There is no Chromium for the browser tests. Install one, or name it in CHROMIUM_PATH.");
  return got;
}

function installed(): string | undefined {
  const folders = (process.env.PATH ?? "").split(delimiter);
  const candidates = [
    process.env.CHROMIUM_PATH ?? "",
    ...NAMES.flatMap((name) => folders.map((folder) => join(folder, name))),
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
    chromium.executablePath(),
  ];
  return candidates.find((path) => path !== "" && existsSync(path));
}
