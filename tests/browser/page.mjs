// Opening a page and looking at it.
import fs from "node:fs";
import { createRequire } from "node:module";
import { pathToFileURL } from "node:url";
import { FileSystemConfigLoader, HtmlValidate } from "html-validate";

const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
const TOUCHED = ".bar a, .bar button, .bar summary, nav a, main button, main summary, main input, main select, main textarea";
const SLOWEST = 120_000; // the page with the whole course, on a busy machine
const LEAST = 43.5; // 44 pixels, less what rounding takes off

const axe = fs.readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** A context in one of the looks, `light`, `dark` or `contrast`. */
export const look = async (browser, name, width, options = {}) => {
  const context = await browser.newContext({
    viewport: { width, height: 900 },
    colorScheme: name === "dark" ? "dark" : "light",
    contrast: name === "contrast" ? "more" : "no-preference",
    ...options,
  });
  if (name === "contrast") {
    await context.addInitScript(() => {
      try {
        localStorage.setItem("drivecourse.look", "contrast");
      } catch {
        // A page without storage keeps the look of the device.
      }
    });
  }
  return context;
};

/** Opens a file; every line in the console and every request that leaves the machine becomes a fault. */
export const open = async (context, file, check, place) => {
  const page = await context.newPage();
  page.setDefaultTimeout(SLOWEST);
  const faults = [];
  page.on("console", (line) => {
    if (["error", "warning"].includes(line.type())) faults.push(`console: ${line.text()}`);
  });
  page.on("pageerror", (error) => faults.push(`script: ${error.message}`));
  page.on("request", (request) => {
    const url = new URL(request.url());
    const near = ["file:", "data:", "blob:"].includes(url.protocol) || url.hostname === "127.0.0.1";
    if (!near) faults.push(`asks ${url.host} for something`);
  });
  await page.goto(file.startsWith("http") ? file : pathToFileURL(file).href);
  page.quiet = () => check(faults.length === 0, place, faults.join("; "));
  return page;
};

/** Waits until the page has looked at itself, which it does before the next picture of it; only then does anybody see it. */
const settled = (page) =>
  page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => done()))));

/** Opens everything in the text. */
export const unfold = async (page) => {
  await page.evaluate(() => {
    for (const details of document.querySelectorAll("main details")) details.open = true;
    dispatchEvent(new Event("resize"));
  });
  await settled(page);
};

/** What axe finds, a line each. */
export const accessFaults = async (page) => {
  await settled(page);
  const session = await page.context().newCDPSession(page);
  // Through the debugger, because the page's own policy lets no strange script in.
  await session.send("Runtime.evaluate", { expression: axe });
  const run = `axe.run(document, { preload: false, resultTypes: ["violations"], runOnly: ${JSON.stringify(RULES)} })
    .then((found) => JSON.stringify(found.violations.map((rule) => rule.id + ": " + rule.nodes.slice(0, 3)
    .map((node) => node.html.slice(0, 140) + " " + (node.any[0]?.message ?? "")).join(" | "))))`;
  const { result } = await session.send("Runtime.evaluate", { expression: run, awaitPromise: true, returnByValue: true });
  await session.detach();
  return result.value ? JSON.parse(result.value) : ["axe did not run"];
};

/** How many pixels the page is wider than the window. */
export const tooWide = (page) => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);

/** Controls smaller than a finger. */
export const tooSmall = (page) =>
  page.evaluate(
    ([touched, least]) =>
      [...document.querySelectorAll(touched)]
        .filter((element) => element.checkVisibility())
        // A label round a box to tick is touched as well as the box.
        .map((element) => element.closest("label") ?? element)
        .map((element) => [element.textContent.trim().slice(0, 30), element.getBoundingClientRect()])
        .filter(([, box]) => box.width > 0 && (box.width < least || box.height < least))
        .map(([words, box]) => `${words} ${Math.round(box.width)} by ${Math.round(box.height)}`),
    [TOUCHED, LEAST],
  );

/** What html-validate says of the files, `[file, fault]` each; a file without a fault gives `[file, ""]`. */
export const validate = async (files) => {
  const validator = new HtmlValidate(
    new FileSystemConfigLoader({ root: true, extends: ["html-validate:recommended", "html-validate:a11y"] }),
  );
  const out = [];
  for (const file of files) {
    const report = await validator.validateFile(file);
    const messages = report.results.flatMap((result) => result.messages);
    out.push([file, messages.slice(0, 3).map((m) => `${m.line}:${m.column} ${m.ruleId}: ${m.message}`).join("; ")]);
  }
  return out;
};

/** Pages in a PDF. */
export const sheets = (pdf) => (pdf.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g) ?? []).length;
