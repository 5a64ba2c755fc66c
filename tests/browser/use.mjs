// What people do with a page: keys, switches, search.
import fs from "node:fs";
import http from "node:http";
import path from "node:path";
import { look, open, tooWide } from "./page.mjs";

const CHAPTER = "mounting.html";
const TYPES = { ".html": "text/html; charset=utf-8", ".js": "text/javascript", ".css": "text/css", ".svg": "image/svg+xml" };

/** In the page: a description of where the focus is. */
const focused = () => {
  const at = document.activeElement;
  if (!at || at === document.body) return null;
  at.dataset.reached = "";
  const style = getComputedStyle(at);
  return {
    skip: at.classList.contains("skip"),
    words: at.textContent.trim().slice(0, 30) || at.id,
    seen: at.checkVisibility() && (style.outlineStyle !== "none" || style.boxShadow !== "none"),
    inWindow: at.getBoundingClientRect().bottom > 0 && at.getBoundingClientRect().top < innerHeight,
  };
};

/** In the page: controls that can be seen and that the focus never came to. */
const missed = () =>
  [...document.querySelectorAll("a[href], button, summary, input, select, textarea, [tabindex='0']")]
    .filter((control) => control.checkVisibility() && !control.disabled && !("reached" in control.dataset))
    .map((control) => control.textContent.trim().slice(0, 40) || control.id || control.localName);

/** Skip link first, every control reached and marked, menus closed by Escape. */
export const keyboard = async (browser, folder, check) => {
  for (const width of [360, 1280]) {
    const context = await look(browser, "light", width);
    for (const name of ["index.html", CHAPTER]) {
      const place = `${name} at ${width}`;
      const page = await open(context, path.join(folder, name), check, place);
      await page.keyboard.press("Tab");
      const first = await page.evaluate(focused);
      check(first?.skip && first.inWindow, place, "the first stop is not the skip link, in sight");
      let stops = 0;
      for (let at = first; at && stops < 2000; stops += 1) {
        await page.keyboard.press("Tab");
        at = await page.evaluate(focused);
        if (at?.skip) break;
        if (at) check(at.seen && at.inWindow, place, `the focus cannot be seen on ${at.words}`);
      }
      const left = await page.evaluate(missed);
      check(left.length === 0, place, `never reached: ${left.slice(0, 5).join("; ")}`);

      await page.evaluate(() => document.querySelector(".skip").focus());
      await page.keyboard.press("Enter");
      check(await page.evaluate(() => document.activeElement.id === "text"), place, "the skip link does not lead to the text");

      for (const words of ["Look", "Print"]) {
        const menu = page.locator("details.menu", { has: page.locator(`summary:text-is("${words}")`) });
        await menu.locator("summary").focus();
        await page.keyboard.press("Enter");
        check(await menu.locator(".menu-sheet").isVisible(), place, `the menu ${words} does not open`);
        await page.keyboard.press("Tab");
        await page.keyboard.press("Escape");
        check(!(await menu.locator(".menu-sheet").isVisible()), place, `Escape does not close the menu ${words}`);
        const back = await page.evaluate(() => document.activeElement.localName === "summary");
        check(back, place, `Escape does not lead back to ${words}`);
      }
      if (width === 360) {
        await page.locator("#contents-button").focus();
        await page.keyboard.press("Enter");
        check(await page.locator("#contents").isVisible(), place, "the contents do not open");
        check((await tooWide(page)) <= 0, place, "the contents are wider than the window");
        await page.keyboard.press("Escape");
        check(!(await page.locator("#contents").isVisible()), place, "Escape does not close the contents");
        const back = await page.evaluate(() => document.activeElement.id === "contents-button");
        check(back, place, "Escape does not lead back to the button");
      }
      page.quiet();
      await page.close();
    }
    await context.close();
  }
};

/** Units and looks change what is shown, and are remembered on the next page. */
export const switches = async (browser, folder, check) => {
  const context = await look(browser, "light", 360);
  const page = await open(context, path.join(folder, CHAPTER), check, CHAPTER);
  const shown = (units) => page.locator(`.practice .units-${units}`).first().isVisible();
  check((await shown("si")) && (await shown("us")), CHAPTER, "both systems are not there before a choice");
  for (const [units, other] of [["us", "si"], ["si", "us"]]) {
    await page.locator(`[data-choose-units=${units}]`).click();
    for (const [again, file] of [[false, CHAPTER], [true, CHAPTER], [true, "temperature.html"]]) {
      if (again) await page.goto(new URL(file, page.url()).href);
      const place = `${file}, ${units}${again ? ", opened again" : ""}`;
      check((await shown(units)) && !(await shown(other)), place, "shows the wrong units");
      const pressed = await page.locator("[data-choose-units][aria-pressed=true]").getAttribute("data-choose-units");
      check(pressed === units, place, `the button ${pressed} is pressed`);
    }
    await page.goto(new URL(CHAPTER, page.url()).href);
  }
  await page.locator("[data-choose-units=both]").click();
  check((await shown("si")) && (await shown("us")), CHAPTER, "Both does not show both");

  const paper = () => page.evaluate(() => getComputedStyle(document.querySelector("main")).backgroundColor);
  const seen = new Set();
  for (const choice of ["light", "dark", "contrast"]) {
    await page.locator('summary:text-is("Look")').click();
    await page.locator(`[data-choose-look=${choice}]`).click();
    const before = await paper();
    await page.goto(new URL("chain.html", page.url()).href);
    check((await paper()) === before, choice, "the look is not remembered");
    seen.add(before);
  }
  check(seen.size === 3, "looks", "two looks have the same paper");
  page.quiet();
  await context.close();
};

/** Arrow keys turn pages until they are switched off, and never act where something is written. */
export const turning = async (browser, folder, check) => {
  const context = await look(browser, "light", 1280);
  const page = await open(context, path.join(folder, CHAPTER), check, "turning");
  const at = () => path.basename(new URL(page.url()).pathname);
  const next = await page.locator('nav.turn a[rel="next"]').getAttribute("href");
  const press = async (key) => { await page.keyboard.press(key); await page.waitForTimeout(300); };
  await press("Shift+ArrowRight");
  check(at() === CHAPTER, "turning", "a key with Shift turns the page");
  await page.locator("#search-words").fill("soft");
  await press("ArrowRight");
  check(at() === CHAPTER, "turning", "an arrow key in a field turns the page");
  await page.evaluate(() => document.activeElement.blur());
  const turned = async (key, to) => {
    await page.keyboard.press(key);
    // Where it does not get there, the check says where it is.
    await page.waitForURL((url) => url.pathname.endsWith(`/${to}`), { timeout: 10_000 }).catch(() => {});
    check(at() === to, "turning", `${key} leads to ${at()}`);
  };
  await turned("ArrowRight", next);
  await turned("ArrowLeft", CHAPTER);
  await page.locator('summary:text-is("Look")').click();
  await page.locator("[data-choose-turn=off]").click();
  await page.evaluate(() => document.activeElement.blur());
  await press("ArrowRight");
  check(at() === CHAPTER, "turning", "switched off, an arrow key still turns the page");
  page.quiet();
  await context.close();
};

/** Words are found, and lead to a place that is there. */
export const search = async (browser, folder, check) => {
  const context = await look(browser, "light", 1280);
  const page = await open(context, path.join(folder, "index.html"), check, "search");
  await page.locator("#search-words").fill("soft foot");
  const hits = page.locator("#search-found a");
  await hits.first().waitFor({ timeout: 10_000 });
  check((await hits.count()) > 0, "search", "finds nothing");
  check((await tooWide(page)) <= 0, "search", "the list is wider than the window");
  const target = new URL(await hits.first().evaluate((link) => link.href));
  check(fs.existsSync(path.join(folder, path.basename(target.pathname))), "search", `leads to ${target.pathname}`);
  await hits.first().click();
  await page.waitForURL((url) => url.pathname === target.pathname, { waitUntil: "load" });
  const there = await page.evaluate(() => !location.hash || !!document.getElementById(decodeURIComponent(location.hash.slice(1))));
  check(there, "search", `there is no place ${target.hash}`);
  await page.goto(new URL("index.html", page.url()).href);
  await page.locator("#search-words").fill("zzyzx");
  await page.locator("#search-count", { hasText: "0 places" }).waitFor({ timeout: 10_000 });
  check((await hits.count()) === 0, "search", "finds a word that is nowhere");
  page.quiet();
  await context.close();
};

/** A web server on this machine for the files in `folder`; `missing` names what was asked for and is not there. */
export const host = async (folder) => {
  const missing = [];
  const server = http.createServer((request, response) => {
    const file = path.join(folder, path.normalize(decodeURIComponent(new URL(request.url, "http://x").pathname)));
    if (!file.startsWith(folder) || !fs.existsSync(file) || !fs.statSync(file).isFile()) {
      missing.push(request.url);
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, { "content-type": TYPES[path.extname(file)] ?? "application/octet-stream", "cache-control": "no-cache" });
    fs.createReadStream(file).pipe(response);
  });
  await new Promise((ready) => server.listen(0, "127.0.0.1", ready));
  const close = () => {
    server.close();
    server.closeAllConnections();
  };
  return { home: `http://127.0.0.1:${server.address().port}/`, missing, close };
};

/** The same pages from a web server on this machine: nothing missing, every link of the contents there. */
export const served = async (browser, folder, check) => {
  const { home, missing, close } = await host(folder);
  try {
    const context = await look(browser, "light", 1280);
    const page = await open(context, `${home}index.html`, check, "index.html");
    const links = await page.locator("#contents a").evaluateAll((all) => all.map((link) => link.href));
    check(links.length > 3, "index.html", "has no contents");
    for (const link of links) {
      await page.goto(link);
      check((await page.locator("h1").first().innerText()).length > 0, link.replace(home, ""), "has no heading");
    }
    check(missing.length === 0, "index.html", `not there: ${missing.join(", ")}`);
    page.quiet();
    await context.close();
  } finally {
    close();
  }
};
