// Keeps a candidate's answers on this device as they are written, and writes the file that is handed in.
"use strict";
(() => {
  const code = document.querySelector("main").dataset.paper;
  const place = `drivecourse.paper.${code}`;
  const parts = [...document.querySelectorAll(".part")];
  const count = document.getElementById("count"), said = document.getElementById("said");
  let kept = true, handed = true;

  const choices = (part) => [...part.querySelectorAll('input[type="radio"]')];
  const answer = (part) => {
    const field = part.querySelector('input[type="text"]:not(.way)');
    if (field) return field.value;
    // A choice is handed in by its letter.
    return choices(part).find((choice) => choice.checked)?.value.split(":")[0] ?? "";
  };
  const fill = (part, text) => {
    const field = part.querySelector('input[type="text"]:not(.way)');
    if (field) field.value = text;
    for (const choice of choices(part)) choice.checked = text !== "" && choice.value.split(":")[0] === text;
  };
  const way = (part) => part.querySelector("input.way");
  const answers = () => parts.map((part) => ({
    question: Number(part.dataset.question), part: part.dataset.part, answer: answer(part),
    ...(way(part) ? { steps: way(part).value } : {}),
  }));
  const tell = () => {
    const written = answers().filter((entry) => entry.answer.trim()).length;
    const where = kept ? "{{ word(id="screen-kept") | js_text | safe }}" : "{{ word(id="screen-not-kept") | js_text | safe }}";
    count.textContent = `{{ word(id="screen-count", written="${written}", all="${parts.length}") | js_text | safe }} ${where}`;
    for (const part of parts) {
      const clear = part.querySelector("button.clear");
      if (clear) clear.hidden = !answer(part);
    }
  };
  const keep = () => {
    handed = false;
    try { localStorage.setItem(place, JSON.stringify(answers())); kept = true; } catch { kept = false; }
    tell();
  };
  const take = (entries) => {
    let taken = 0;
    for (const entry of Array.isArray(entries) ? entries : []) {
      const part = parts.find((part) => part.dataset.question === String(entry?.question) && part.dataset.part === entry?.part);
      if (part && typeof entry.answer === "string") { fill(part, entry.answer.slice(0, 400)); taken += 1; }
      if (part && way(part) && typeof entry.steps === "string") way(part).value = entry.steps.slice(0, 400);
    }
    return taken;
  };

  try { take(JSON.parse(localStorage.getItem(place) ?? "[]")); } catch { kept = false; }
  tell();
  document.addEventListener("input", (event) => { if (event.target.closest(".part")) keep(); });
  for (const part of parts) {
    part.querySelector("button.clear")?.addEventListener("click", () => {
      fill(part, "");
      keep();
      choices(part)[0].focus();
    });
  }
  document.getElementById("save").addEventListener("click", () => {
    const text = JSON.stringify({ responses: [{ paper: code, answers: answers() }] }, null, 1);
    const link = document.createElement("a");
    link.href = URL.createObjectURL(new Blob([text], { type: "application/json" }));
    link.download = `answers-${code}.json`;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
    handed = true;
    said.textContent = `{{ word(id="screen-saved", code="${code}") | js_text | safe }}`;
  });
  document.getElementById("load").addEventListener("change", async (event) => {
    const file = event.target.files[0];
    if (!file) return;
    try {
      const found = JSON.parse(await file.text()).responses.find((response) => response.paper === code);
      const taken = take(found.answers);
      keep();
      said.textContent = `{{ word(id="screen-took", count="${taken}", file="${file.name}") | js_text | safe }}`;
    } catch {
      said.textContent = `{{ word(id="screen-none", file="${file.name}", code="${code}") | js_text | safe }}`;
    }
  });
  addEventListener("beforeunload", (event) => { if (!kept && !handed) event.preventDefault(); });
})();
