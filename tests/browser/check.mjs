// What must hold of every page of the course, and of papers, keys and results.
import { execFileSync } from "node:child_process";
import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import { accessFaults, look, open, sheets, tooSmall, tooWide, unfold, validate } from "./page.mjs";
import { keyboard, search, served, switches, turning } from "./use.mjs";

const WIDTHS = [360, 1280];
const LOOKS = ["light", "dark", "contrast"];
const PAPERS = 3; // papers looked at in the browser; the source of all of them is validated

const pagesIn = (folder) =>
  fs
    .readdirSync(folder, { recursive: true })
    .map(String)
    .filter((name) => name.endsWith(".html"))
    .sort()
    .map((name) => path.join(folder, name));

/** Does `work` with every file, as many at a time as there are processors. */
const each = async (files, work) => {
  const left = [...files];
  const one = async () => {
    for (let file = left.shift(); file; file = left.shift()) await work(file);
  };
  await Promise.all(Array.from({ length: os.availableParallelism() }, one));
};

/** Width, size of controls, and what axe finds. */
const looksRight = async (page, check, place) => {
  const over = await tooWide(page);
  check(over <= 0, place, `${over} pixels wider than the window`);
  const small = await tooSmall(page);
  check(small.length === 0, place, `too small to touch: ${small.slice(0, 3).join("; ")}`);
  const faults = await accessFaults(page);
  check(faults.length === 0, place, faults.join("; "));
};

/** Checks the course in `folder`. */
export const course = async (browser, folder, report) => {
  const pages = pagesIn(folder);
  const name = (file) => path.basename(file);

  // The page with the whole course repeats the chapters, and so the names of its parts.
  const single = pages.filter((file) => name(file) !== "print.html");
  await report.group("course, source", async (check) => {
    for (const [file, fault] of await validate(single)) check(fault === "", name(file), fault);
  });

  // Every page once in the first look and width; in each of the others a third of them, another third each time. The page
  // with the whole course only repeats the chapters and is looked at once.
  let turn = 0;
  for (const width of WIDTHS) {
    for (const mode of LOOKS) {
      const whole = width === WIDTHS[0] && mode === LOOKS[0];
      await report.group(`course, ${width} pixels, ${mode}`, async (check) => {
        const context = await look(browser, mode, width);
        const some = pages.filter((file, number) => whole || (number % 3 === turn % 3 && name(file) !== "print.html"));
        await each(some, async (file) => {
          const place = name(file);
          const page = await open(context, file, check, place);
          if (place === "print.html") {
            check((await tooWide(page)) <= 0, place, "wider than the window");
          } else {
            await looksRight(page, check, place);
            await unfold(page);
            await looksRight(page, check, `${place}, unfolded`);
          }
          page.quiet();
          await page.close();
        });
        await context.close();
      });
      turn += 1;
    }
  }

  const chapters = pages.filter((file) => fs.readFileSync(file, "utf8").includes('class="practice"'));
  await report.group("course, scripts off", async (check) => {
    const context = await look(browser, "light", 360, { javaScriptEnabled: false });
    await each(pages, async (file) => {
      const page = await open(context, file, check, name(file));
      check((await page.locator("main").innerText()).length > 100, name(file), "shows no text");
      const dead = await page.locator("[data-with-script]").filter({ visible: true }).count();
      check(dead === 0, name(file), `${dead} controls that need a script are shown`);
      check((await tooWide(page)) <= 0, name(file), "wider than the window");
      if (chapters.includes(file) && name(file) !== "print.html") {
        const question = page.locator(".practice details.question").first();
        await question.locator("summary").first().click();
        const solution = question.locator("details.solution");
        const inside = solution.locator(".answer").first();
        check(!(await inside.isVisible()), name(file), "a solution is open from the start");
        await solution.locator("summary").click();
        check(await inside.isVisible(), name(file), "a solution does not open");
      }
      page.quiet();
      await page.close();
    });
    await context.close();
  });

  await report.group("course, answers folded away", async (check) => {
    const context = await look(browser, "light", 360);
    await each(chapters.filter((file) => name(file) !== "print.html"), async (file) => {
      const page = await open(context, file, check, name(file));
      for (const [place, fault] of await page.evaluate(givenAway)) check(fault === "", `${name(file)} ${place}`, fault);
      page.quiet();
      await page.close();
    });
    await context.close();
  });

  await report.group("course, printed", async (check) => {
    const context = await look(browser, "light", 680); // what A4 leaves between its margins
    await each(pages, async (file) => {
      const page = await open(context, file, check, name(file));
      const pdf = await page.pdf({ format: "A4", preferCSSPageSize: true });
      check(sheets(pdf) > 0, name(file), "prints no page");
      await page.emulateMedia({ media: "print" });
      if (name(file) === "print.html") await unfold(page);
      for (const [place, fault] of await page.evaluate(cutOff)) check(fault === "", `${name(file)} ${place}`, fault);
      const shown = await page.locator(".bar, .contents, .turn").filter({ visible: true }).count();
      check(shown === 0, name(file), "prints its controls");
      page.quiet();
      await page.close();
    });
    await context.close();
  });

  await report.group("course, keyboard", (check) => keyboard(browser, folder, check));
  await report.group("course, arrow keys", (check) => turning(browser, folder, check));
  await report.group("course, units and looks", (check) => switches(browser, folder, check));
  await report.group("course, search", (check) => search(browser, folder, check));
  await report.group("course, from a web server", (check) => served(browser, folder, check));
};

/** In the page: of each practice card, whether a number asked for can be read without opening anything. */
const givenAway = () => {
  const words = (element) => element.textContent.replaceAll(/\s+/g, " ").trim();
  const out = [];
  for (const face of document.querySelectorAll(".practice:not(.self-check) .question")) {
    const shown = face.cloneNode(true);
    // Statements to choose from hold the answer, and that is no secret either.
    for (const other of shown.querySelectorAll("details, .options")) other.remove();
    // What is given may happen to be the number asked for; then it must be told as given, and is no secret.
    const given = [...shown.querySelectorAll(".givens td.to-right")].map(words);
    const asked = [...face.querySelectorAll(".solution .answer .result")].map(words);
    const rest = words(shown);
    const place = face.closest(".practice").id;
    const told = asked.filter((answer) => /\d\D*\d.* \S/.test(answer) && !given.includes(answer) && rest.includes(` ${answer}`));
    out.push([place, told.length ? `tells the answer ${told.join(", ")}` : ""]);
    out.push([place, asked.length ? "" : "has no solution"]);
    const open = face.querySelector(".solution[open], .hint[open]");
    out.push([place, open ? "a hint or solution is open from the start" : ""]);
  }
  return out;
};

/** In the page as printed: what does not fit its box or stands over the edge of the paper. */
const cutOff = () => {
  const out = [];
  const edge = document.documentElement.clientWidth + 1;
  out.push(["", document.documentElement.scrollWidth > edge ? `is ${document.documentElement.scrollWidth} pixels wide` : ""]);
  for (const box of document.querySelectorAll("table, figure, svg, math, .formula, .givens, .part, .room, p, li")) {
    if (!box.checkVisibility()) continue;
    const rect = box.getBoundingClientRect();
    const words = box.textContent.trim().replaceAll(/\s+/g, " ").slice(0, 50);
    if (rect.right > edge) out.push(["", `${box.localName} over the edge by ${Math.round(rect.right - edge)}: ${words}`]);
  }
  return out;
};

/** Whether the texts of a PDF's pages can be told. */
const textOf = (pdf) => {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), "drivecourse-pdf-"));
  try {
    const file = path.join(folder, "paper.pdf");
    fs.writeFileSync(file, pdf);
    const text = execFileSync("pdftotext", ["-layout", "-enc", "UTF-8", file, "-"], { encoding: "utf8" });
    return text.split("\f").slice(0, -1);
  } finally {
    fs.rmSync(folder, { recursive: true, force: true });
  }
};

const tellsText = () => {
  try {
    execFileSync("pdftotext", ["-v"], { stdio: "ignore" });
    return true;
  } catch {
    return false;
  }
};

/** Checks papers, keys and results in the exam's `folder`. */
export const papers = async (browser, folder, report) => {
  const inside = (part) => pagesIn(path.join(folder, part));
  const all = [...inside("papers"), ...inside("keys"), ...inside("results")];
  const some = [
    ...inside("papers").slice(0, PAPERS),
    ...inside("keys").slice(0, PAPERS),
    path.join(folder, "results", "results.html"),
    ...inside("results/candidates").slice(0, 1),
  ];
  const name = (file) => path.relative(folder, file);

  await report.group("papers, source", async (check) => {
    for (const [file, fault] of await validate(all)) check(fault === "", name(file), fault);
  });

  for (const width of WIDTHS) {
    await report.group(`papers, ${width} pixels`, async (check) => {
      const context = await look(browser, "light", width);
      for (const file of some) {
        const page = await open(context, file, check, name(file));
        await looksRight(page, check, name(file));
        page.quiet();
        await page.close();
      }
      await context.close();
    });
  }

  await report.group("papers, without answers", async (check) => {
    const told = /expected|class="step"|Source:|accepted ±/;
    for (const file of inside("papers")) check(!told.test(fs.readFileSync(file, "utf8").split("<body>")[1]), name(file), "tells of the key");
  });

  const readable = tellsText();
  if (!readable) report.skip("papers, words on the printed pages", "pdftotext is not installed (poppler-utils)");
  for (const [format, width] of [["A4", 680], ["Letter", 703]]) {
    await report.group(`papers, printed on ${format}`, async (check) => {
      const context = await look(browser, "light", width);
      for (const file of some) {
        const place = name(file);
        const page = await open(context, file, check, place);
        const pdf = await page.pdf({ format, preferCSSPageSize: true });
        const count = sheets(pdf);
        check(count > 0, place, "prints no page");
        await page.emulateMedia({ media: "print" });
        for (const [, fault] of await page.evaluate(cutOff)) check(fault === "", place, fault);
        const code = path.basename(file).match(/[0-9A-Z]{5}-[0-9A-Z]{5}/)?.[0];
        if (readable) {
          const texts = textOf(pdf);
          check(texts.length === count, place, `${texts.length} of ${count} pages can be read`);
          texts.forEach((text, at) => {
            check(text.includes(`Sheet ${at + 1} of ${count}`), `${place}, sheet ${at + 1}`, "does not say which sheet it is");
            if (code) check(text.includes(code), `${place}, sheet ${at + 1}`, "does not carry the paper code");
            // The line to write on stands with what is asked.
            const lone = place.startsWith("papers") && /^\s*(Answer|Antwort)\b/.test(text);
            check(!lone, `${place}, sheet ${at + 1}`, "begins with the line for an answer that is asked on the sheet before");
          });
        }
        page.quiet();
        await page.close();
      }
      await context.close();
    });
  }
};
