// Runs before the page is drawn: applies the colours, units and keys the reader chose last time.
// Storage may be forbidden (private windows, files on a phone); then nothing is remembered and nothing breaks.
"use strict";
/** The text `id` of what scripts say, in the language of the course, with its places filled in. */
const say = (() => {
  const words = "words-to-be-set";
  return (id, places = {}) => (words[id] ?? id).replace(/\{([a-z]+)\}/g, (all, name) => String(places[name] ?? all));
})();
(() => {
  const root = document.documentElement;
  const read = (name) => { try { return localStorage.getItem(name); } catch { return null; } };
  const write = (name, value) => { try { localStorage.setItem(name, value); } catch { /* not remembered */ } };

  const settings = {
    look: { words: ["device", "light", "dark", "contrast"], usual: "device", none: "device" },
    units: { words: ["us", "si", "both"], usual: root.dataset.unitsDefault || "both", none: "both" },
    turn: { words: ["on", "off"], usual: "on", none: "on" },
  };

  /** Shows the page as `word` says; the word for "no choice" takes the attribute away. */
  const apply = (name, word) => {
    const setting = settings[name];
    const known = setting.words.includes(word) ? word : setting.usual;
    if (known === setting.none) delete root.dataset[name]; else root.dataset[name] = known;
    return known;
  };

  const choices = {};
  for (const name of Object.keys(settings)) choices[name] = apply(name, read(`drivecourse.${name}`));

  /** Presses the button of the choice in force, and only that one. */
  const show = (name) => {
    for (const button of document.querySelectorAll(`[data-choose-${name}]`)) {
      button.setAttribute("aria-pressed", String(button.getAttribute(`data-choose-${name}`) === choices[name]));
    }
  };

  document.addEventListener("DOMContentLoaded", () => {
    root.classList.add("scripted");
    for (const element of document.querySelectorAll("[data-with-script]")) element.hidden = false;
    for (const element of document.querySelectorAll("[data-without-script]")) element.hidden = true;
    for (const name of Object.keys(settings)) {
      show(name);
      for (const button of document.querySelectorAll(`[data-choose-${name}]`)) {
        button.addEventListener("click", () => {
          choices[name] = apply(name, button.getAttribute(`data-choose-${name}`));
          write(`drivecourse.${name}`, choices[name]);
          show(name);
        });
      }
    }
  });
})();
