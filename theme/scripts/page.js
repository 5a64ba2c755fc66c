// The controls of a page: the contents list on narrow screens, the small menus, printing, wide tables.
"use strict";
(() => {
  const contents = document.getElementById("contents");
  const button = document.getElementById("contents-button");

  const openContents = (open) => {
    button.setAttribute("aria-expanded", String(open));
    const bar = document.querySelector(".bar").getBoundingClientRect();
    contents.style.setProperty("--bar-bottom", `${bar.bottom + window.scrollY}px`);
    contents.classList.toggle("is-open", open);
    if (open) contents.focus();
  };
  if (contents && button) {
    button.addEventListener("click", () => openContents(button.getAttribute("aria-expanded") !== "true"));
    contents.addEventListener("keydown", (event) => {
      if (event.key === "Escape" && contents.classList.contains("is-open")) {
        openContents(false);
        button.focus();
      }
    });
  }

  const menus = [...document.querySelectorAll("details.menu")];
  for (const menu of menus) {
    menu.addEventListener("toggle", () => {
      if (menu.open) for (const other of menus) if (other !== menu) other.open = false;
    });
    menu.addEventListener("keydown", (event) => {
      if (event.key === "Escape" && menu.open) {
        menu.open = false;
        menu.querySelector("summary").focus();
      }
    });
  }
  document.addEventListener("click", (event) => {
    for (const menu of menus) if (!menu.contains(event.target)) menu.open = false;
  });

  // A worked example stands open, in the system of units the reader has chosen, or else in the first.
  const openWorked = () => {
    for (const example of document.querySelectorAll(".worked")) {
      const shown = [...example.querySelectorAll("details.question")].find((details) => details.checkVisibility());
      if (shown) shown.open = true;
    }
  };
  openWorked();
  for (const chooser of document.querySelectorAll("[data-choose-units]")) chooser.addEventListener("click", openWorked);

  // Questions and formulas are always printed. A worked solution is printed as it stands on the screen, folded or not,
  // unless the reader asks for all of them; the page with the whole course always has them.
  const whole = document.body.classList.contains("whole-course");
  let unfold = whole;
  for (const printer of document.querySelectorAll("[data-print]")) {
    printer.addEventListener("click", () => {
      for (const menu of menus) menu.open = false;
      unfold = printer.dataset.print === "open";
      window.print();
    });
  }

  const opened = [];
  window.addEventListener("beforeprint", () => {
    const wanted = unfold ? "main details:not([open])" : "main details:is(.question, .entry):not([open])";
    for (const details of document.querySelectorAll(wanted)) {
      details.open = true;
      opened.push(details);
    }
  });
  window.addEventListener("afterprint", () => {
    for (const details of opened.splice(0)) details.open = false;
    unfold = whole;
  });

  // What scrolls sideways can be reached with the keyboard, and only while it does scroll. All is measured before anything
  // is changed, and nothing that is folded away: a long page would else be laid out again and again.
  const measure = () => {
    const all = document.querySelectorAll(".table-wrapper, .formula, pre, figure.drawing");
    const boxes = [...all].filter((box) => box.checkVisibility());
    const scrolls = boxes.map((box) => box.scrollWidth > box.clientWidth + 1);
    boxes.forEach((box, place) => {
      const marked = box.getAttribute("aria-label") === say("script-scrolls");
      if (scrolls[place] && !marked) {
        box.tabIndex = 0;
        box.setAttribute("role", "group");
        box.setAttribute("aria-label", say("script-scrolls"));
      } else if (!scrolls[place] && marked) {
        box.removeAttribute("tabindex");
        box.removeAttribute("role");
        box.removeAttribute("aria-label");
      }
    });
  };
  let due = 0;
  const measureSoon = () => {
    cancelAnimationFrame(due);
    due = requestAnimationFrame(measure);
  };
  measureSoon();
  window.addEventListener("resize", measureSoon);
  // What was folded away had no width.
  document.addEventListener("toggle", measureSoon, true);
})();
