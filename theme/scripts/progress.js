// Progress, kept on this device and nowhere else: answers are noted as they are given; what they say about each skill
// is worked out by the calculation and shown on the progress page.
"use strict";
(() => {
  const { isLive, ask } = window.drivecourse;
  const { make, markup } = window.drivecourse.parts;
  const PLACE = "drivecourse.progress";
  const MOST = 4000; // answers kept in all; the oldest go first

  const minutes = () => Math.floor(Date.now() / 60_000);

  /** Whether `answer` is four words as we note them: skill, minutes since 1970, right, hinted. */
  const isAnswer = (answer) =>
    Array.isArray(answer) && answer.length === 4 && typeof answer[0] === "string" && answer[0].length <= 100 &&
    Number.isInteger(answer[1]) && answer[1] >= 0 && answer[1] < 2 ** 32 && answer.slice(2).every((yes) => yes === 0 || yes === 1);

  /** What is noted; nothing where storage is forbidden or holds something else. */
  const load = () => {
    try {
      const answers = JSON.parse(localStorage.getItem(PLACE) ?? "[]");
      return Array.isArray(answers) ? answers.filter(isAnswer) : [];
    } catch {
      return [];
    }
  };
  /** Keeps `answers`; false where the device does not let us. */
  const save = (answers) => {
    try {
      localStorage.setItem(PLACE, JSON.stringify(answers.slice(-MOST)));
      return true;
    } catch {
      return false;
    }
  };

  /** Notes a first answer to a case. */
  window.drivecourse.note = (skill, right, hinted) => {
    save([...load(), [skill, minutes(), Number(right), Number(hinted)]]);
    show();
  };

  const page = document.getElementById("progress");
  let show = () => {};
  if (!page || !isLive || document.body.classList.contains("whole-course")) return;

  const says = make("p", "card-says");
  says.setAttribute("role", "status");
  const skills = make("div", "skills");
  const button = (text, act) => {
    const out = make("button", "quiet", text);
    out.type = "button";
    out.addEventListener("click", act);
    return out;
  };

  /** A card to practise a skill on, below the list. */
  let card = null;
  const practise = async (row) => {
    if (!card) {
      const question = make("details", "question", make("summary", "", say("card-the-question")), make("div", "ask"));
      const element = make("section", "practice", make("h2", "", say("script-practice")), make("p", "card-case", ""), make("div", "", question));
      element.id = "practise";
      element.tabIndex = -1;
      element.setAttribute("aria-labelledby", "practise-head");
      element.firstChild.id = "practise-head";
      Object.assign(element.dataset, { item: row.item, family: "", seed: "0", units: document.documentElement.dataset.units ?? "both" });
      page.append(element);
      card = window.drivecourse.enliven(element);
    }
    const element = document.getElementById("practise");
    element.dataset.item = row.item;
    element.dataset.units = document.documentElement.dataset.units ?? "both";
    try {
      await card.fresh();
      element.scrollIntoView();
      element.focus({ preventScroll: true });
    } catch (error) {
      says.textContent = error.message;
    }
  };

  const list = (row) => {
    const tried = row.answers ? say(row.answers === 1 ? "script-sure-one" : "script-sure", { says: row.says, sure: row.sure, answers: row.answers }) : row.says;
    const words = make("p", "skill-words", make("strong", "", row.name), make("span", "", tried));
    if (row.due) words.append(make("span", "", say("script-comes-back", { due: row.due })));
    const start = button(say("script-practise"), () => practise(row));
    start.append(make("span", "unseen", ` ${row.name}`));
    const out = make("li", "", words, markup(row.chart), start);
    out.dataset.skill = row.skill;
    return out;
  };

  /** A heading for a chapter, and its skills. */
  const chapter = (group) => {
    const all = group.skills.length;
    const count = make("span", "skill-count", say(all === 1 ? "script-sits-one" : "script-sits", { sits: group.sits, all }));
    return [make("h2", "", group.title, " ", count), make("ol", "", ...group.skills.map(list))];
  };

  let turn = 0;
  show = async () => {
    const mine = ++turn;
    try {
      const reply = await ask("progress", minutes(), ...load().flat());
      if (mine !== turn) return;
      const { next: first, groups } = reply.skills;
      skills.replaceChildren(...groups.flatMap(chapter));
      if (!first) return;
      next.replaceChildren(make("strong", "", `${say("script-next")} `), `${first.name} (${first.turn}).`);
      start.hidden = false;
      start.onclick = () => practise(first);
    } catch (error) {
      says.textContent = say("script-no-progress");
    }
  };

  const next = make("p", "next");
  const start = button(say("script-practise-now"), () => {});
  start.hidden = true;
  start.className = "";

  const saveFile = button(say("script-save"), () => {
    const text = JSON.stringify({ progress: 1, answers: load() });
    const link = make("a");
    link.href = URL.createObjectURL(new Blob([text], { type: "application/json" }));
    link.download = "progress.json";
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
    says.textContent = say("script-saved");
  });
  const chosen = make("input", "");
  Object.assign(chosen, { type: "file", accept: "application/json,.json", hidden: true });
  chosen.setAttribute("aria-label", say("script-file"));
  chosen.addEventListener("change", async () => {
    const [file] = chosen.files;
    chosen.value = "";
    if (!file) return;
    let answers = null;
    try {
      const held = JSON.parse(await file.text());
      if (held?.progress === 1 && Array.isArray(held.answers) && held.answers.every(isAnswer)) answers = held.answers;
    } catch {
      // Not JSON: said below.
    }
    if (!answers) {
      says.textContent = say("script-no-file", { file: file.name });
      return;
    }
    // What both have is kept once.
    const both = new Map([...load(), ...answers].map((answer) => [JSON.stringify(answer), answer]));
    const merged = [...both.values()].sort((a, b) => a[1] - b[1]);
    says.textContent = save(merged) ? say("script-loaded", { count: answers.length }) : say("script-not-kept");
    show();
  });
  const loadFile = button(say("script-load"), () => chosen.click());
  let sure = false;
  const clear = button(say("script-clear"), () => {
    if (!sure) {
      sure = true;
      clear.textContent = say("script-clear-all");
      says.textContent = say("script-press-again");
      return;
    }
    try {
      localStorage.removeItem(PLACE);
    } catch {
      // Nothing was kept.
    }
    unsure();
    says.textContent = say("script-cleared");
    show();
  });
  const unsure = () => {
    sure = false;
    clear.textContent = say("script-clear");
  };
  clear.addEventListener("blur", unsure);

  page.append(next, make("div", "actions", start, saveFile, loadFile, clear, chosen), says, skills);
  page.hidden = false;
  show();
})();
