// A paper answered on a screen: kept from letter to letter, and handed in as a file that the program grades.
import { spawnSync } from "node:child_process";
import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import { accessFaults, look, open, tooSmall, tooWide } from "./page.mjs";

/** What stands in every part, as the page would hand it in. */
const written = () =>
  [...document.querySelectorAll(".part")].map((part) => {
    const field = part.querySelector('input[type="text"]');
    return field ? field.value : (part.querySelector("input:checked")?.value.split(":")[0] ?? "");
  });

/** Checks the pages in `exam`/screen; `program` grades what they write. */
export const onScreen = async (browser, exam, program, report) => {
  const folder = path.join(exam, "screen");
  const files = fs.readdirSync(folder).sort().map((name) => path.join(folder, name));
  await report.group("papers on a screen, looks", async (check) => {
    for (const width of [360, 1280]) {
      const context = await look(browser, "light", width);
      const page = await open(context, files[0], check, String(width));
      const over = await tooWide(page);
      check(over <= 0, String(width), `${over} pixels wider than the window`);
      const small = await tooSmall(page);
      check(small.length === 0, String(width), `too small to touch: ${small.slice(0, 3).join("; ")}`);
      const faults = await accessFaults(page);
      check(faults.length === 0, String(width), faults.join("; "));
      page.quiet();
      await context.close();
    }
    // Each paper has other values, some of them long.
    const context = await look(browser, "light", 360);
    for (const file of files.slice(1)) {
      const page = await open(context, file, check, path.basename(file));
      const over = await tooWide(page);
      check(over <= 0, path.basename(file), `${over} pixels wider than the window`);
      await page.close();
    }
    await context.close();
  });

  await report.group("papers on a screen, answered", async (check) => {
    const place = path.basename(files[0]);
    const workshop = fs.mkdtempSync(path.join(os.tmpdir(), "drivecourse-screen-"));
    const context = await look(browser, "light", 360, { acceptDownloads: true });
    let page = await open(context, files[0], check, place);
    for (const field of await page.locator('.part input[type="text"]').all()) await field.fill("7 <b>mm</b>");
    for (const group of await page.locator('[role="radiogroup"]').all()) await group.locator("label").nth(1).click();
    const before = await page.evaluate(written);
    check(before.length > 5 && before.every((answer) => answer), place, "an answer was not taken");
    check((await page.locator("#count").innerText()).startsWith(`${before.length} of ${before.length}`), place, "counts wrongly");

    // Closed without a word, as when the battery dies.
    page.quiet();
    await page.close();
    page = await open(context, files[0], check, place);
    check(JSON.stringify(await page.evaluate(written)) === JSON.stringify(before), place, "answers are lost when the page is closed");
    const other = await open(context, files[1], check, place);
    check((await other.evaluate(written)).every((answer) => !answer), place, "answers show on another paper");
    other.quiet();
    await other.close();

    const [download] = await Promise.all([page.waitForEvent("download"), page.locator("#save").click()]);
    const file = path.join(workshop, download.suggestedFilename());
    await download.saveAs(file);
    const told = JSON.parse(fs.readFileSync(file, "utf8")).responses[0];
    check(told.answers.every((entry, number) => entry.answer === before[number]), place, "the file holds other answers");
    const clear = page.locator("button.clear").filter({ visible: true }).first();
    if (await clear.count()) {
      await clear.click();
      check((await page.evaluate(written)).filter((answer) => !answer).length === 1, place, "a choice cannot be taken back");
    }
    page.quiet();
    await context.close();

    const fresh = await look(browser, "light", 360);
    page = await open(fresh, files[0], check, place);
    check((await page.evaluate(written)).every((answer) => !answer), place, "is filled in on another device");
    await page.locator("#load").setInputFiles(file);
    await page.locator("#said", { hasText: "Took" }).waitFor();
    check(JSON.stringify(await page.evaluate(written)) === JSON.stringify(before), place, "a saved file does not come back");
    page.quiet();
    await page.close();
    const foreign = await open(fresh, files[1], check, place);
    await foreign.locator("#load").setInputFiles(file);
    await foreign.locator("#said", { hasText: "holds no answers" }).waitFor();
    foreign.quiet();
    await fresh.close();

    const graded = spawnSync(program, ["grade", exam, file, "--out", path.join(workshop, "results"), "--json"], { encoding: "utf8" });
    check(graded.status === 0, place, `cannot be graded: ${graded.stderr}`);
    check(graded.status === 0 && graded.stdout.includes("7 <b>mm</b>"), place, "the grades do not show what was written");
    fs.rmSync(workshop, { recursive: true, force: true });
  });
};
