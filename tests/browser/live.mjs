// Live practice cards, progress and the course on the device, as people use them.
import fs from "node:fs";
import path from "node:path";
import { accessFaults, look, open, tooSmall, tooWide } from "./page.mjs";
import { host } from "./use.mjs";

const CHAPTERS = ["mounting.html", "chain.html", "temperature.html"];

/** The first visible face of the card `id`, opened. */
const opened = async (page, id) => {
  const question = page.locator(`[id="${id}"] details.question`).first();
  if (!(await question.evaluate((details) => details.open))) await question.locator("summary").first().click();
  return question;
};

/** Ids of the cards of a page, those with the wanted sort of question first found, once all of them take answers. */
const cards = async (page) => {
  await page.waitForFunction(() => [...document.querySelectorAll("section.practice[data-item]")].every((card) => card.querySelector("form.answers")), null, { timeout: 60_000 });
  return page.evaluate(() => {
    const out = { number: [], parts: [], order: [], pick: [], all: [] };
    for (const card of document.querySelectorAll("section.practice[data-item]")) {
      const face = card.querySelector("details.question");
      const asked = [...face.querySelectorAll(".ask")];
      const sort = (ask) => (ask.querySelector("input[type=radio]") ? "pick" : ask.querySelector(".options") ? "order" : "number");
      out.all.push(card.id);
      if (asked.length > 1 && asked.every((ask) => sort(ask) === "number")) out.parts.push(card.id);
      else if (asked.length === 1) out[sort(asked[0])].push(card.id);
    }
    return out;
  });
};

/** The right answers of a face, read from its folded solution. */
const keys = (face) => face.locator(".solution .answer .result").evaluateAll((all) => all.map((result) => result.textContent.trim()));

const answer = async (face, place, text) => {
  const asked = face.locator(".ask").nth(place);
  const radio = asked.locator("input[type=radio]");
  if (await radio.count()) {
    // A solution names a statement by its letter and a choice by its words.
    const labels = await asked.locator(".choice").evaluateAll((all) => all.map((label) => label.textContent.trim().replace(/^([A-Z])\s+/, "$1: ")));
    const place = labels.findIndex((label) => label === text || label.slice(3) === text);
    await radio.nth(place).check();
  }
  else await asked.locator("input[type=text]").fill(text);
};

const checked = async (face) => {
  await face.locator("button[type=submit]").click();
  await face.locator(".verdict:not(:empty)").first().waitFor({ timeout: 20_000 });
  return face.locator(".verdict").evaluateAll((all) => all.map((verdict) => [verdict.dataset.verdict ?? "", verdict.textContent]));
};

const setUnits = (page, units) => page.locator(`[data-choose-units=${units}]`).click();

/** Cards of three chapters answered right, wrong, with another unit, with nonsense; hints; solution; new numbers. */
const answers = async (browser, address, check) => {
  const context = await look(browser, "light", 1280);
  for (const chapter of CHAPTERS) {
    const page = await open(context, address(chapter), check, chapter);
    await setUnits(page, "si");
    const found = await cards(page);
    check(found.number.length > 0, chapter, "has no card that asks for a number");
    for (const id of [found.number[0], found.parts[0], found.order[0], found.pick[0]].filter(Boolean)) {
      const place = `${chapter} ${id}`;
      const face = await opened(page, id);
      const right = await keys(face);
      for (const [part, text] of right.entries()) await answer(face, part, text);
      const marks = await checked(face);
      check(marks.every(([verdict]) => ["right", "carried"].includes(verdict)), place, `right answers ${right} are ${marks}`);
    }
    for (const id of found.number.slice(0, 4)) {
      const place = `${chapter} ${id}`;
      const face = await opened(page, id);
      const field = face.locator("input[type=text]").first();
      // A foreseen wrong answer is told as the solution tells it.
      const [wrong, says] = await face.locator(".wrong-answers li").first().evaluate((row) => {
        const answer = row.querySelector(".wrong-answer").textContent;
        // The page keeps a number and its unit on one line.
        return [answer, row.textContent.replace(answer, "").trim().replaceAll("\u00a0", " ")];
      }).catch(() => [null, null]);
      if (wrong) {
        await field.fill(wrong);
        const [[verdict, text]] = await checked(face);
        check(verdict === "wrong" && text.replaceAll("\u00a0", " ").includes(says.slice(0, 40)), place, `${wrong} is ${verdict}: ${text}`);
      }
      await field.fill("about a handful");
      await face.locator(".read-as.is-refused").first().waitFor({ timeout: 20_000 });
      const [[nonsense]] = await checked(face);
      check(nonsense === "unreadable", place, `nonsense is ${nonsense}`);
      await field.fill("3 fortnights <b>&");
      check((await checked(face))[0][0] !== "right", place, "takes markup for an answer");
      const [right] = await keys(face);
      if (/ (mm|N|kW|°C)$/.test(right)) {
        await field.fill(right.replace(/ \S+$/, " A"));
        check((await checked(face))[0][0] === "wrong-unit", place, "does not see that a unit is of another kind");
      }
      await field.fill(right);
      await page.waitForFunction((at) => at.textContent.startsWith("Read as"), await face.locator(".read-as").first().elementHandle(), { timeout: 20_000 });
      check((await checked(face))[0][0] === "right", place, `${right} is not right after all`);
    }
    page.quiet();
    await page.close();
  }
  await context.close();
};

/** Hints come one at a time, the solution opens, new numbers are others, easier and harder lead on, a link leads back. */
const cases = async (browser, address, check) => {
  const context = await look(browser, "light", 360);
  for (const chapter of CHAPTERS) {
    const page = await open(context, address(chapter), check, chapter);
    await setUnits(page, "us");
    const { number: [id] } = await cards(page);
    const card = page.locator(`[id="${id}"]`);
    await card.locator(".units-us summary").first().click();
    const face = card.locator(".units-us details.question").first();
    const shown = () => face.locator(".hint").filter({ visible: true }).count();
    check((await shown()) === 0, chapter, "shows a hint at once");
    await face.getByRole("button", { name: /^Hint/ }).click();
    check((await shown()) === 1, chapter, "does not show one hint");
    const before = [await face.locator(".givens").innerText(), await card.locator(".card-case").innerText()];
    const name = (text) => card.getByRole("button", { name: text });
    await name("New numbers").click();
    await page.waitForFunction(([id, old]) => document.querySelector(`[id="${id}"] .card-case`).textContent !== old, [id, before[1]], { timeout: 20_000 });
    const numbers = await card.locator(".units-us .givens").innerText();
    check(numbers !== before[0], chapter, "new numbers are the old ones");
    const focus = await page.evaluate(() => document.activeElement.textContent);
    check(focus === "New numbers", chapter, `the focus goes to ${focus}`);
    check((await shown()) === 0, chapter, "keeps the old hints");
    const right = await keys(card.locator(".units-us details.question"));
    for (const [part, text] of right.entries()) await answer(card.locator(".units-us details.question"), part, text);
    const marks = await checked(card.locator(".units-us details.question"));
    check(marks.every(([verdict]) => ["right", "carried"].includes(verdict)), chapter, `after new numbers ${right} are ${marks}`);
    check((await tooWide(page)) <= 0, chapter, "a live card is wider than a phone");
    check((await tooSmall(page)).length === 0, chapter, `too small to touch: ${(await tooSmall(page)).slice(0, 3).join("; ")}`);
    const faults = await accessFaults(page);
    check(faults.length === 0, chapter, faults.join("; "));

    const level = (await name("Harder").getAttribute("aria-disabled")) === "false" ? "Harder" : "Easier";
    const title = await card.locator("h2, h3, h4").first().innerText();
    if ((await name(level).getAttribute("aria-disabled")) === "false") {
      await name(level).click();
      await page.waitForFunction(([id, old]) => document.querySelector(`[id="${id}"] :is(h2, h3, h4)`).textContent !== old, [id, title], { timeout: 20_000 });
    }
    const there = [await card.locator("h2, h3, h4").first().innerText(), await card.locator(".card-case").innerText(), await card.locator(".units-us details.question").innerText()];
    const link = await card.locator(".case-link").evaluate((at) => at.href);
    page.quiet();
    await page.close();
    const again = await open(context, address("index.html"), check, `${chapter}, by link`);
    await again.goto(link);
    const same = again.locator(`[id="${id}"]`);
    await again.waitForFunction(([id, wanted]) => document.querySelector(`[id="${id}"] .card-case`).textContent === wanted, [id, there[1]], { timeout: 20_000 });
    const units = same.locator(".units-us details.question");
    const here = [await same.locator("h2, h3, h4").first().innerText(), await same.locator(".card-case").innerText(), await units.innerText()];
    check(JSON.stringify(here) === JSON.stringify(there), chapter, "the link leads to another case");
    await units.locator(".solution > summary").click();
    check(await units.locator(".solution .answer").first().isVisible(), chapter, "the solution does not open");
    again.quiet();
    await again.close();
  }
  // A link that names nothing of this course says so and breaks nothing.
  const page = await open(context, `${address(CHAPTERS[0])}`, check, "a broken link");
  const { all: [id] } = await cards(page);
  await page.evaluate((id) => { location.hash = `${id}/no-such-item/nowhere/7/both`; }, id);
  await page.locator(`[id="${id}"] .card-says`, { hasText: "no such question" }).waitFor({ timeout: 20_000 });
  page.quiet();
  await context.close();
};

/** Cards about the one machine of a chapter are marked against that machine, and only their link is offered. */
const oneMachine = async (browser, address, check) => {
  const context = await look(browser, "light", 360);
  const chapter = "whole-machine.html";
  const page = await open(context, address(chapter), check, chapter);
  await setUnits(page, "si");
  const found = await cards(page);
  check(found.all.length >= 20, chapter, "has fewer than 20 questions");
  const tools = await page.locator("section.practice .card-tools").evaluateAll((all) => all.map((tools) => tools.textContent));
  check(tools.every((words) => words === "Link to this case"), chapter, `offers other numbers: ${tools[0]}`);
  for (const id of [...found.number.slice(0, 5), ...found.parts.slice(0, 3), found.order[0], found.pick[0]].filter(Boolean)) {
    const place = `${chapter} ${id}`;
    const face = await opened(page, id);
    const right = await keys(face);
    for (const [part, text] of right.entries()) await answer(face, part, text);
    const marks = await checked(face);
    check(marks.every(([verdict]) => ["right", "carried"].includes(verdict)), place, `right answers ${right} are ${marks}`);
    if (!found.number.includes(id)) continue;
    const field = face.locator("input[type=text]").first();
    const wrong = await face.locator(".wrong-answers li .wrong-answer").first().textContent().catch(() => "");
    await field.fill(wrong || "1234567");
    await face.locator("button[type=submit]").click();
    await face.locator(".verdict:not([data-verdict=right])").waitFor({ timeout: 20_000 });
    check((await face.locator(".verdict").getAttribute("data-verdict")) !== "right", place, `${wrong} is right`);
  }
  check((await tooWide(page)) <= 0, chapter, "wider than a phone");
  // The link leads to the same machine, in its own card and in another.
  const [id, second] = found.number;
  const says = (card) => [".card-case", ".givens", ".solution .answer"].flatMap((part) => [...card.querySelectorAll(part)].map((at) => at.textContent.replace(/\s+/g, ""))).join("; ");
  const there = await page.locator(`[id="${id}"]`).evaluate(says);
  const link = await page.locator(`[id="${id}"] .case-link`).evaluate((at) => at.href);
  page.quiet();
  await page.close();
  for (const [card, target] of [[id, link], [second, link.replace(`#${id}/`, `#${second}/`)]]) {
    const again = await open(context, address("index.html"), check, `${chapter}, by link`);
    await again.goto(target);
    await again.locator(`[id="${card}"] details.question[open]`).first().waitFor({ timeout: 20_000 });
    const here = await again.locator(`[id="${card}"]`).evaluate(says);
    check(here === there, chapter, `the link leads to another case: ${here}`);
    again.quiet();
    await again.close();
  }
  await context.close();
};

/** A card worked with the keyboard alone. */
const keyboardOnly = async (browser, address, check) => {
  const context = await look(browser, "light", 1280);
  const page = await open(context, address(CHAPTERS[0]), check, CHAPTERS[0]);
  await setUnits(page, "si");
  const { number: [id] } = await cards(page);
  const face = page.locator(`[id="${id}"] details.question`).first();
  await face.locator("summary").first().focus();
  await page.keyboard.press("Enter");
  const [right] = await keys(face);
  const reach = async (wanted) => {
    for (let stops = 0; stops < 20; stops += 1) {
      await page.keyboard.press("Tab");
      if (await page.evaluate((wanted) => document.activeElement.matches(wanted), wanted)) return true;
    }
    return false;
  };
  check(await reach("input[type=text]"), id, "the field is not reached");
  await page.keyboard.type(right);
  await page.keyboard.press("Enter");
  await face.locator(".verdict:not(:empty)").waitFor({ timeout: 20_000 });
  check((await face.locator(".verdict").getAttribute("data-verdict")) === "right", id, "Enter does not check the answer");
  check(await page.evaluate(() => document.activeElement.matches("input[type=text]")), id, "checking moves the focus");
  const label = await page.evaluate(() => document.activeElement.labels[0]?.textContent);
  check(/^Your answer/.test(label ?? ""), id, "the field has no label");
  page.quiet();
  await context.close();
};

/** Progress is noted, kept over a reload, saved, cleared and loaded. */
const progress = async (browser, address, check) => {
  const context = await look(browser, "light", 360, { acceptDownloads: true });
  let page = await open(context, address(CHAPTERS[0]), check, "progress");
  await setUnits(page, "si");
  const { number } = await cards(page);
  for (const [place, id] of number.slice(0, 2).entries()) {
    const face = await opened(page, id);
    await answer(face, 0, place ? "0.123456 mm" : (await keys(face))[0]);
    await checked(face);
    await answer(face, 0, (await keys(face))[0]);
    await checked(face);
  }
  const noted = () => page.evaluate(() => JSON.parse(localStorage.getItem("drivecourse.progress") ?? "[]"));
  const two = await noted();
  check(two.length === 2 && two[0][2] === 1 && two[1][2] === 0, "progress", `notes ${JSON.stringify(two)}`);
  page.quiet();
  await page.close();

  page = await open(context, address("progress.html"), check, "progress.html");
  await page.locator(".skills h2").first().waitFor({ timeout: 20_000 });
  const chapters = await page.locator(".skills h2").evaluateAll((all) => all.map((head) => head.firstChild.textContent.trim()));
  const listed = await page.locator(".contents a > span:last-child").evaluateAll((all) => all.map((name) => name.textContent.trim()));
  check(chapters.length > 5 && chapters.every((title) => listed.includes(title)), "progress.html", `${chapters} are no chapters`);
  check(JSON.stringify(chapters) === JSON.stringify(listed.filter((title) => chapters.includes(title))), "progress.html", "the chapters are not in the order of the course");
  const tried = page.locator(".skills li", { hasText: "sure, from" });
  await tried.first().waitFor({ timeout: 20_000 });
  const skills = new Set(two.map(([skill]) => skill)).size;
  check((await tried.count()) === skills, "progress.html", "does not list what was noted");
  check((await page.locator(".skills .chart").count()) === skills, "progress.html", "has no chart for each");
  check((await tooWide(page)) <= 0, "progress.html", "wider than a phone");
  check((await tooSmall(page)).length === 0, "progress.html", `too small to touch: ${(await tooSmall(page)).join("; ")}`);
  const faults = await accessFaults(page);
  check(faults.length === 0, "progress.html", faults.join("; "));

  const [download] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name: "Save to a file" }).click()]);
  const file = await download.path();
  check(JSON.parse(fs.readFileSync(file, "utf8")).answers.length === 2, "progress.html", "does not save what it holds");
  await page.getByRole("button", { name: "Clear" }).click();
  await page.getByRole("button", { name: "Clear everything" }).click();
  await page.locator(".skills li .chart").first().waitFor({ state: "detached", timeout: 20_000 });
  check((await noted()).length === 0, "progress.html", "is not cleared");
  const load = (path) => page.locator("#progress input[type=file]").setInputFiles(path);
  await load({ name: "odd.json", mimeType: "application/json", buffer: Buffer.from('{"progress":1,"answers":[["x",-1,2,"<b>"]]}') });
  await page.locator(".card-says", { hasText: "holds no progress" }).waitFor({ timeout: 20_000 });
  check((await noted()).length === 0, "progress.html", "takes an odd file");
  await load({ name: "progress.json", mimeType: "application/json", buffer: fs.readFileSync(file) });
  await tried.first().waitFor({ timeout: 20_000 });
  check(JSON.stringify(await noted()) === JSON.stringify(two), "progress.html", "is not loaded as it was saved");

  await page.getByRole("button", { name: "Practise this now" }).click();
  const face = page.locator("#practise details.question").first();
  await face.locator(".givens, .options").first().waitFor({ timeout: 20_000 });
  const right = await keys(face);
  for (const [part, text] of right.entries()) await answer(face, part, text);
  const marks = await checked(face);
  check(marks.every(([verdict]) => ["right", "carried"].includes(verdict)), "progress.html", `the card there marks ${right} as ${marks}`);
  check((await noted()).length === 3, "progress.html", "does not note the card there");
  page.quiet();
  await context.close();
};

/** After one visit the course works without a network; a newer one is offered and taken. */
const offline = async (browser, folder, check) => {
  const { home, close } = await host(folder);
  const context = await look(browser, "light", 360);
  const worker = path.join(folder, "service-worker.js");
  const old = fs.readFileSync(worker, "utf8");
  try {
    let page = await open(context, `${home}index.html`, check, "first visit");
    await page.locator(".kept", { hasText: "now on your device" }).waitFor({ timeout: 60_000 });
    check((await tooWide(page)) <= 0, "first visit", "the note is wider than a phone");
    const faults = await accessFaults(page);
    check(faults.length === 0, "first visit", faults.join("; "));
    await context.setOffline(true);
    await page.goto(`${home}${CHAPTERS[1]}`);
    await setUnits(page, "si");
    const { number: [id] } = await cards(page);
    const face = await opened(page, id);
    await answer(face, 0, (await keys(face))[0]);
    check((await checked(face))[0][0] === "right", "without a network", "a card does not mark");
    await page.goto(home);
    check((await page.locator("h1").count()) > 0, "without a network", "the first page is not there");
    await context.setOffline(false);
    page.quiet();
    await page.close();

    fs.writeFileSync(worker, old.replace(/VERSION = "[0-9a-f]+"/, 'VERSION = "newer"'));
    page = await open(context, `${home}index.html`, check, "next visit");
    await page.locator(".kept", { hasText: "newer version" }).waitFor({ timeout: 60_000 });
    await Promise.all([page.waitForEvent("load"), page.getByRole("button", { name: "Use it now" }).click()]);
    const kept = await page.evaluate(async () => (await caches.keys()).length);
    check(kept === 1, "next visit", `${kept} versions are kept`);
    page.quiet();
  } finally {
    fs.writeFileSync(worker, old);
    await context.close();
    close();
  }
};

/** Checks the live course in `folder`, from a web server and straight from its files. */
export const live = async (browser, folder, report) => {
  const { home, close } = await host(folder);
  const places = [["a web server", (name) => home + name], ["its files", (name) => path.join(folder, name)]];
  try {
    for (const [from, address] of places) {
      await report.group(`live cards answered, from ${from}`, (check) => answers(browser, address, check));
      await report.group(`hints, new numbers and links, from ${from}`, (check) => cases(browser, address, check));
      await report.group(`progress, from ${from}`, (check) => progress(browser, address, check));
    }
    await report.group("live cards, keyboard alone", (check) => keyboardOnly(browser, places[1][1], check));
    await report.group("one machine in many questions", (check) => oneMachine(browser, places[1][1], check));
  } finally {
    close();
  }
  await report.group("the course on the device", (check) => offline(browser, folder, check));
};
