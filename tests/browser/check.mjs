// Checks every page of a built course (or a folder of papers) in a browser.
//
//   npm install
//   node check.mjs FOLDER [--pictures FOLDER]
//
// Each page is opened at 360 and 1280 pixels, in the light, dark and high-contrast look, folded and unfolded, and must
// have no fault that axe finds, no line in the console, nothing wider than the window, and nothing to touch smaller
// than 44 pixels. Its source must satisfy html-validate. Where the browser is not found by itself, name it in the
// variable CHROMIUM. Ends with 1 when anything was found.
import fs from "node:fs";
import path from "node:path";
import { createRequire } from "node:module";
import { pathToFileURL } from "node:url";
import { FileSystemConfigLoader, HtmlValidate } from "html-validate";
import { chromium } from "playwright-core";

const WIDTHS = [360, 1280];
const LOOKS = ["light", "dark", "contrast"];
const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
const TOUCHED = ".bar a, .bar button, .bar summary, nav a, main button, main summary, main input, main select, main textarea";
const LEAST = 43.5; // 44 pixels, less what rounding takes off
// Paths the usual systems put the browser at, tried in order.
const BROWSERS = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];

const usage = () => {
  console.error("usage: node check.mjs FOLDER [--pictures FOLDER]");
  process.exit(2);
};

const [folder, option, pictures] = process.argv.slice(2);
if (!folder || (option && (option !== "--pictures" || !pictures))) usage();
if (!fs.existsSync(folder) || !fs.statSync(folder).isDirectory()) {
  console.error(`${folder} is not a folder`);
  process.exit(2);
}
if (pictures) fs.mkdirSync(pictures, { recursive: true });

const pages = fs
  .readdirSync(folder, { recursive: true })
  .map(String)
  .filter((name) => name.endsWith(".html"))
  .sort();
if (pages.length === 0) {
  console.error(`there is no page in ${folder}`);
  process.exit(2);
}

let faults = 0;
const fault = (place, words) => {
  faults += 1;
  console.log(`${place}: ${words}`);
};

// The source of each page.
const validator = new HtmlValidate(
  new FileSystemConfigLoader({ root: true, extends: ["html-validate:recommended", "html-validate:a11y"] }),
);
for (const page of pages) {
  const report = await validator.validateFile(path.join(folder, page));
  for (const result of report.results) {
    for (const message of result.messages) {
      fault(`${page}:${message.line}:${message.column}`, `${message.ruleId}: ${message.message}`);
    }
  }
}

// Each page in each look and width.
const axe = fs.readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const executablePath = process.env.CHROMIUM ?? BROWSERS.find((place) => fs.existsSync(place));
const browser = await chromium.launch({ executablePath, args: ["--no-sandbox", "--disable-gpu", "--no-first-run"] });

const accessFaults = async (session) => {
  // Through the debugger, because the page's own policy lets no strange script in.
  await session.send("Runtime.evaluate", { expression: axe });
  const run = `axe.run(document, { preload: false, runOnly: ${JSON.stringify(RULES)} }).then((found) => JSON.stringify(found.violations.map(
    (rule) => [rule.id, rule.nodes.map((node) => node.html.slice(0, 140) + " " + (node.any[0]?.message ?? ""))])))`;
  const { result } = await session.send("Runtime.evaluate", { expression: run, awaitPromise: true, returnByValue: true });
  return result.value ? JSON.parse(result.value) : [["axe did not run", []]];
};

for (const width of WIDTHS) {
  for (const look of LOOKS) {
    const context = await browser.newContext({
      viewport: { width, height: 900 },
      colorScheme: look === "dark" ? "dark" : "light",
      contrast: look === "contrast" ? "more" : "no-preference",
    });
    if (look === "contrast") {
      await context.addInitScript(() => {
        try {
          localStorage.setItem("drivecourse.look", "contrast");
        } catch {
          // A page without storage keeps the look of the device.
        }
      });
    }
    for (const name of pages) {
      const place = `${name} at ${width}, ${look}`;
      const page = await context.newPage();
      page.on("console", (line) => {
        if (["error", "warning"].includes(line.type())) fault(place, `console: ${line.text()}`);
      });
      page.on("pageerror", (error) => fault(place, `script: ${error.message}`));
      await page.goto(pathToFileURL(path.resolve(folder, name)).href);
      const session = await context.newCDPSession(page);
      for (const folded of [true, false]) {
        const state = folded ? place : `${place}, unfolded`;
        if (!folded) {
          await page.evaluate(() => {
            for (const details of document.querySelectorAll("main details")) details.open = true;
            dispatchEvent(new Event("resize"));
          });
        }
        if (pictures) {
          const file = `${name.replaceAll(/[\\/]/g, "_").replace(".html", "")}_${width}_${look}${folded ? "" : "_open"}.png`;
          await page.screenshot({ path: path.join(pictures, file), fullPage: true });
        }
        const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
        if (over > 0) fault(state, `${over} pixels wider than the window`);
        const small = await page.evaluate(
          ([touched, least]) =>
            [...document.querySelectorAll(touched)]
              .filter((element) => element.checkVisibility())
              .map((element) => [element.textContent.trim().slice(0, 30), element.getBoundingClientRect()])
              .filter(([, box]) => box.width > 0 && (box.width < least || box.height < least))
              .map(([words, box]) => `${words} ${Math.round(box.width)} by ${Math.round(box.height)}`),
          [TOUCHED, LEAST],
        );
        for (const words of small) fault(state, `too small to touch: ${words}`);
        for (const [rule, nodes] of await accessFaults(session)) fault(state, `${rule}: ${nodes.join(" | ")}`.slice(0, 600));
      }
      await page.close();
    }
    await context.close();
  }
}
await browser.close();
console.log(`${pages.length} pages, ${faults} faults`);
process.exit(faults ? 1 : 0);
