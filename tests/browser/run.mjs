// Builds the demonstration and checks its pages in a browser.
//
//   (cd tests/browser && npm ci --ignore-scripts)
//   CHROMIUM=/path/to/the/browser node tests/browser/run.mjs [FOLDER]
//
// FOLDER is a demonstration made before; without it one is made in a temporary folder with the release build of the
// program. Ends with a line `N passed, N failed`, and with 1 when anything failed.
import { spawnSync } from "node:child_process";
import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import { course, papers } from "./check.mjs";
import { live } from "./live.mjs";
import { Report } from "./report.mjs";
import { onScreen } from "./screen.mjs";

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), "../..");

const fail = (words) => {
  console.error(`tests/browser: ${words}`);
  process.exit(2);
};

const target = path.resolve(root, process.env.CARGO_TARGET_DIR ?? "target");
const program = path.join(target, "release", process.platform === "win32" ? "drivecourse.exe" : "drivecourse");

/** Makes the demonstration in `folder`. */
const demonstrate = (folder) => {
  if (!fs.existsSync(program)) fail("the release build is missing; run: cargo build --release");
  const made = spawnSync(program, ["demo", "--out", folder], { encoding: "utf8" });
  if (made.status !== 0) fail(`the demonstration cannot be made: ${made.error?.message ?? made.stderr}`);
};

const given = process.argv[2];
if (given && !fs.existsSync(given)) fail(`${given} is not there`);
if (!process.env.CHROMIUM) fail("name the browser in the variable CHROMIUM");

const workshop = fs.mkdtempSync(path.join(os.tmpdir(), "drivecourse-pages-"));
const report = new Report();
let browser;
try {
  const folder = given ? path.resolve(given) : path.join(workshop, "demo");
  if (!given) demonstrate(folder);
  browser = await chromium.launch({
    executablePath: process.env.CHROMIUM,
    args: ["--no-sandbox", "--disable-gpu", "--no-first-run"],
  });
  await course(browser, path.join(folder, "course"), report);
  await live(browser, path.join(folder, "course"), report);
  await papers(browser, path.join(folder, "exam"), report);
  await onScreen(browser, path.join(folder, "exam"), program, report);
} finally {
  await browser?.close();
  fs.rmSync(workshop, { recursive: true, force: true });
}
process.exit(report.close());
