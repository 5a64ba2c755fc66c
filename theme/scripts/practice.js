// Live practice cards: answers read and checked, hints one at a time, new numbers. Without this script a card stays as
// the page has it, a fixed case with its solution folded away.
"use strict";
(() => {
  const { isLive, ask, draw } = window.drivecourse;
  const { make, tied, question } = window.drivecourse.parts;
  const SEEDS = 1_000_000; // cases have numbers of at most six figures, so that a person can say them
  const DRAWS = 8; // a question of few cases may draw the same one again; one that has a single case always does
  let names = 0;

  const button = (text, act, quiet = true) => {
    const out = make("button", quiet ? "quiet" : "", text);
    out.type = "button";
    out.addEventListener("click", act);
    return out;
  };
  const status = (look) => {
    const out = make("p", look);
    out.setAttribute("role", "status");
    return out;
  };
  /** Where the calculation cannot be loaded, a person is told so once and keeps the fixed case. */
  const failed = (place) => (error) => {
    place.textContent = /^[A-Z].*\.$/.test(error.message) ? error.message : say("script-not-loaded");
  };

  /** An answer field for one part; `spot` tells the case, `place` the part. */
  const field = (asked, face, place) => {
    const name = `answer-${++names}`;
    const options = [...asked.querySelectorAll(".options > li")];
    const heard = status("read-as");
    const verdict = status("verdict");
    heard.id = `${name}-heard`;
    const picking = options.length > 0 && asked.querySelector(".answer-as")?.textContent !== say("card-letters-in-order");
    let read;
    /** Takes back what stands below the field: the verdict says it. */
    let hush = () => {};
    if (picking) {
      const group = asked.querySelector(".options");
      group.setAttribute("role", "radiogroup");
      group.setAttribute("aria-label", say("script-your-answer"));
      options.forEach((option) => {
        const letter = option.querySelector(".option-letter").textContent.trim();
        const input = make("input");
        Object.assign(input, { type: "radio", name, value: letter });
        const label = make("label", "choice", input, ...option.childNodes);
        option.setAttribute("role", "presentation");
        option.replaceChildren(label);
      });
      read = () => group.querySelector("input:checked")?.value ?? "";
      asked.append(verdict);
    } else {
      const input = make("input");
      Object.assign(input, { id: name, type: "text", autocomplete: "off", spellcheck: false, maxLength: 200 });
      input.setAttribute("autocapitalize", "off");
      input.setAttribute("aria-describedby", heard.id);
      const letter = asked.querySelector(".part-letter")?.textContent;
      const label = make("label", "", letter ? say("script-your-answer-to", { letter }) : say("script-your-answer"));
      label.htmlFor = name;
      let wait;
      let marked;
      hush = () => {
        clearTimeout(wait);
        marked = input.value;
        if (heard.classList.contains("is-refused")) heard.textContent = "";
      };
      input.addEventListener("input", () => {
        clearTimeout(wait);
        wait = setTimeout(async () => {
          const text = input.value;
          const reply = await ask("read", ...face.card.spot(), face.system, place, text).catch(() => null);
          if (!reply || input.value !== text || (marked === text && "refused" in reply)) return;
          heard.classList.toggle("is-refused", "refused" in reply);
          heard.textContent = "refused" in reply ? tied(reply.refused) : reply.read ? say("script-read-as", { amount: reply.read }) : "";
        }, 250);
      });
      read = () => input.value;
      asked.append(label, input, heard, verdict);
    }
    return {
      read,
      show: (mark) => {
        verdict.dataset.verdict = mark.verdict;
        const of = mark.of === 1 ? say("script-one-mark") : say("script-marks-of", { count: mark.of });
        const word = say(`script-verdict-${mark.verdict}`);
        const says = mark.says === `${word}.` ? "" : ` ${tied(mark.says)}`;
        hush();
        verdict.replaceChildren(make("strong", "", say("script-earned", { word, earned: mark.earned, of })), says);
      },
    };
  };

  /** Makes one face of a card live: `details` holds the question. */
  const enliven = (card, element) => {
    const details = element.querySelector("details.question");
    const parts = [...details.querySelectorAll(":scope > .ask")];
    if (!parts.length) return;
    const face = { card, system: element.dataset.system, tried: false, hinted: false, told: false };
    const form = make("form", "answers");
    form.noValidate = true;
    parts[0].before(form);
    form.append(...parts);
    const fields = parts.map((part, place) => field(part, face, place));
    const says = status("form-says");

    const check = make("button", "", say("script-check"));
    check.type = "submit";
    const actions = make("div", "actions", check);
    const hints = [...details.querySelectorAll(":scope > .hint")];
    const solution = details.querySelector(":scope > .solution");
    if (hints.length) {
      let shown = 0;
      for (const hint of hints) hint.hidden = true;
      const more = button("", () => {
        if (shown === hints.length) return;
        const hint = hints[shown++];
        hint.hidden = false;
        hint.open = true;
        face.hinted = true;
        tell();
        says.textContent = say("script-opened", { hint: hint.querySelector("summary").textContent });
      });
      const tell = () => {
        more.textContent = shown < hints.length ? say("script-hint-of", { number: shown + 1, all: hints.length }) : say("script-no-more-hints");
        more.setAttribute("aria-disabled", String(shown === hints.length));
      };
      tell();
      actions.append(more);
    }
    form.append(actions, says);
    solution?.addEventListener("toggle", () => { if (solution.open) face.told = true; });
    // Loads what an answer needs, before it is asked for.
    form.addEventListener("focusin", () => ask("read", ...card.spot(), face.system, 0, "").catch(() => {}), { once: true });
    form.addEventListener("submit", async (event) => {
      event.preventDefault();
      try {
        const { marks } = await ask("mark", ...card.spot(), face.system, ...fields.map((field) => field.read()));
        marks.marks.forEach((mark, place) => fields[place].show(mark));
        says.textContent = "";
        if (marks.counts !== null && !face.tried) {
          face.tried = true;
          if (!face.told) window.drivecourse.note?.(marks.skill, marks.counts, face.hinted);
        }
      } catch (error) {
        failed(says)(error);
      }
    });
  };

  /** What is left to do until a card that stands on the page takes answers. */
  const wakes = new Map();
  const wake = (element) => {
    const act = wakes.get(element);
    wakes.delete(element);
    act?.();
  };

  /** Makes a card live. `element` carries item, family, seed and units, and holds a face for each system of units. */
  const live = (element, tools) => {
    const data = element.dataset;
    const says = status("card-says");
    const card = { spot: () => [data.item, data.family, data.seed, data.units] };
    const faces = () => [...element.children].filter((child) => child.querySelector(":scope > details.question"));
    wakes.set(element, () => {
      for (const face of faces()) enliven(card, face);
    });
    if (!tools) return null;

    const link = make("a", "case-link", say("script-link"));
    /** The address of this case: the card, the item, the family, the case and the units. */
    const tell = () => { link.href = `#${[element.id, ...card.spot()].join("/")}`; };
    const easier = button(say("script-easier"), () => go(easier.dataset.item));
    const harder = button(say("script-harder"), () => go(harder.dataset.item));
    const fresh = button(say("script-new-numbers"), () => go(data.item));
    const offer = (button, item) => {
      button.dataset.item = item;
      button.setAttribute("aria-disabled", String(!item));
    };
    const caseOf = async (...spot) => (await ask("put", ...spot, element.id)).card;
    /** What a case is to its reader: what is told, given and asked, and what comes out. */
    const told = ({ faces }) => JSON.stringify(faces.map(({ story, givens, parts, solutions }) => [story, givens, parts, solutions]));
    /** A case of `item` by chance: another one than the card shows, where the question has another. */
    const another = async (item) => {
      const before = item === data.item ? told(await caseOf(...card.spot())) : null;
      let out;
      for (let draws = 0; draws < DRAWS && (!out || told(out) === before); draws++) {
        const seed = crypto.getRandomValues(new Uint32Array(1))[0] % SEEDS;
        out = await caseOf(item, data.family, seed, data.units);
      }
      return out;
    };
    /** Shows a case: everything is there before anything on the page changes. */
    const show = async (put) => {
      const drawn = await Promise.all(put.faces.map(async (face) => [await draw(face.figure), await draw(face.solved_figure)]));
      const open = faces().some((face) => face.querySelector("details.question").open);
      Object.assign(data, { item: put.spot.item, family: put.spot.family, seed: put.spot.seed, units: put.spot.units });
      const built = put.faces.map((face, place) => {
        const word = face.name ? [" ", make("span", "face-word", face.name.replace("In ", "in "))] : [];
        const details = make("details", "question", make("summary", "", say("card-the-question"), ...word), ...question(face, ...drawn[place]));
        details.open = open;
        const out = make("div", face.class, face.name ? make("p", "face-name", face.name) : null, details);
        out.dataset.system = face.system;
        return out;
      });
      wakes.delete(element);
      const [first, ...rest] = faces();
      rest.forEach((face) => face.remove());
      first.replaceWith(...built);
      built.forEach((face) => enliven(card, face));
      element.querySelector(":is(h2, h3, h4, h5, h6)").textContent = say("card-practice", { title: put.title });
      element.querySelector(".card-case").textContent = say("card-case", { machine: put.machine, seed: put.number });
      offer(easier, put.easier);
      offer(harder, put.harder);
      tell();
      dispatchEvent(new Event("resize"));
    };
    const go = async (item) => {
      if (!item) {
        says.textContent = say("script-none-of-skill");
        return;
      }
      try {
        const put = await another(item);
        await show(put);
        for (const face of faces()) face.querySelector("details.question").open = true;
        says.textContent = say("script-new-case", { title: put.title, seed: put.number });
      } catch (error) {
        failed(says)(error);
      }
    };
    // A machine that the chapter has chosen for several questions has no other numbers.
    const others = "chosen" in data ? [] : [fresh, easier, harder];
    offer(easier, "");
    offer(harder, "");
    // Which neighbours there are is asked once the reader turns to the card.
    if (others.length) element.addEventListener("focusin", async () => {
      const reply = await ask("put", ...card.spot(), element.id).catch(() => null);
      if (!reply) return;
      offer(easier, reply.card.easier);
      offer(harder, reply.card.harder);
    }, { once: true });
    element.append(make("div", "card-tools", ...others, link), says);
    tell();
    return { show: async (...spot) => show(await caseOf(...spot)), says, fresh: () => go(data.item) };
  };

  if (!isLive || document.body.classList.contains("whole-course")) return;
  const cards = new Map();
  for (const element of document.querySelectorAll("main section.practice[data-item]")) cards.set(element.id, live(element, true));
  for (const element of document.querySelectorAll("main .self-check li[data-item]")) live(element, false);

  // The first card takes answers at once, without the page being measured for it; the others as the reader comes near them
  // or turns to them, or when there is nothing else to do. Nothing moves: their fields stand in a question still folded.
  wake(wakes.keys().next().value);
  const near = new IntersectionObserver((seen) => {
    for (const { isIntersecting, target } of seen) if (isIntersecting) wake(target);
  }, { rootMargin: "100% 0px" });
  const turnedTo = (event) => wake(event.target.closest?.("[data-item]"));
  for (const element of wakes.keys()) near.observe(element);
  for (const event of ["toggle", "focusin", "pointerdown"]) document.addEventListener(event, turnedTo, true);
  const whenIdle = window.requestIdleCallback ?? ((act) => setTimeout(() => act({ timeRemaining: () => 1 }), 100));
  const wakeNext = (deadline) => {
    do {
      const [next] = wakes.keys();
      if (!next) return;
      wake(next);
    } while (deadline.timeRemaining() > 10);
    whenIdle(wakeNext);
  };
  addEventListener("load", () => whenIdle(wakeNext));

  /** Opens the case that the address names, if it names one of this page. */
  const follow = async () => {
    const [id, ...spot] = decodeURIComponent(location.hash.slice(1)).split("/");
    const card = cards.get(id);
    if (!card || spot.length !== 4) return;
    const element = document.getElementById(id);
    const same = ["item", "family", "seed", "units"].every((name, place) => element.dataset[name] === spot[place]);
    try {
      if (!same) await card.show(...spot);
    } catch (error) {
      failed(card.says)(error);
    }
    for (const details of element.querySelectorAll("details.question")) details.open = true;
    element.scrollIntoView();
    element.tabIndex = -1;
    element.focus({ preventScroll: true });
  };
  addEventListener("hashchange", follow);
  follow();
  window.drivecourse.enliven = (element) => live(element, true);
})();
