// Keeps the course on the device after one visit, and says when it is kept and when a newer one is there.
"use strict";
(() => {
  const root = document.documentElement.dataset.root ?? "";
  // A page opened straight from a file is on the device already.
  if (!("serviceWorker" in navigator) || !location.protocol.startsWith("http")) return;

  const note = document.createElement("aside");
  note.className = "kept";
  note.hidden = true;
  note.setAttribute("aria-label", say("script-on-device"));
  const words = document.createElement("p");
  words.setAttribute("role", "status");
  const act = document.createElement("button");
  const close = document.createElement("button");
  act.type = close.type = "button";
  close.textContent = say("script-close");
  close.addEventListener("click", () => { note.hidden = true; });
  note.append(words, act, close);
  document.body.append(note);

  const tell = (text, button, then) => {
    note.hidden = false;
    words.textContent = text;
    act.hidden = !button;
    act.textContent = button ?? "";
    act.onclick = then ?? null;
  };

  let asked = false;
  navigator.serviceWorker.addEventListener("controllerchange", () => {
    if (asked) location.reload();
  });

  /** A newer course is ready: the reader decides when to turn to it. */
  const offer = (worker) => tell(say("script-newer"), say("script-use-now"), () => {
    asked = true;
    worker.postMessage("take over");
  });

  /** Follows a course on its way to the device. */
  const follow = (worker) => {
    const first = !navigator.serviceWorker.controller;
    worker.addEventListener("statechange", () => {
      if (worker.state === "installed" && !first) offer(worker);
      if (worker.state === "activated" && first) tell(say("script-kept"));
    });
  };

  addEventListener("load", async () => {
    try {
      const kept = await navigator.serviceWorker.register(`${root}service-worker.js`);
      if (kept.waiting && navigator.serviceWorker.controller) offer(kept.waiting);
      if (kept.installing) follow(kept.installing);
      kept.addEventListener("updatefound", () => { if (kept.installing) follow(kept.installing); });
    } catch {
      // Without it the course still works while there is a network.
    }
  });
})();
