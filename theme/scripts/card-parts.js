// The parts of a card as elements, in the same shape as the page templates write them.
"use strict";
(() => {
  /** `text` as pages print it: every number on one line with the short word behind it, its unit; apostrophes curved. */
  const tied = (text) => text.replace(/([\p{Nd}½¼¾]) (?=[\p{L}°%µ²³·/]{1,6}(?![\p{L}\p{Nd}]))/gu, "$1\u00a0").replace(/(\p{L})'/gu, "$1’");

  /** An element with a class, and texts or elements inside. */
  const make = (name, look, ...inside) => {
    const element = document.createElement(name);
    if (look) element.className = look;
    element.append(...inside.filter((part) => part !== null && part !== "").map((part) => (typeof part === "string" ? tied(part) : part)));
    return element;
  };

  /** Markup made by the calculation: a formula or a drawing. */
  const markup = (text) => {
    const template = document.createElement("template");
    template.innerHTML = text ?? "";
    return template.content;
  };

  const lettered = (letter) => letter ? [make("span", "part-letter", letter), " "] : [];
  const list = (kind, texts) => make(kind, "", ...texts.map((text) => make("li", "", text)));

  const figure = (svg) => svg ? make("figure", "drawing", markup(svg)) : null;

  const givens = (rows) => {
    if (!rows.length) return null;
    const head = (look, text) => {
      const cell = make("th", look, text);
      cell.scope = "col";
      return cell;
    };
    const body = rows.map((row) => {
      const name = make("th", "", row.name);
      name.scope = "row";
      if (row.symbol) name.append(" ", make("span", "symbol-within", markup(row.symbol)));
      if (row.how) name.append(" ", make("span", "how", row.how));
      return make("tr", "", name, make("td", "symbol", markup(row.symbol)), make("td", "to-right", row.value));
    });
    const top = make("tr", "", head("", say("table-what")), head("symbol", say("table-symbol")), head("to-right", say("table-value")));
    const caption = make("caption", "", say("card-givens"));
    return make("table", "givens", caption, make("thead", "", top), make("tbody", "", ...body));
  };

  const ask = (part) => {
    const worth = make("span", "worth", part.marks === 1 ? say("script-one-mark") : say("marks", { count: part.marks }));
    const out = make("div", "ask", make("p", "", ...lettered(part.letter), part.text, " ", worth));
    if (part.options.length) {
      const options = part.options.map((option) => make("li", "", make("span", "option-letter", option.letter), " ", option.text));
      out.append(make("ul", "options", ...options));
    }
    if (part.ordering) out.append(make("p", "answer-as", say("card-letters-in-order")));
    if (!part.options.length) {
      const unit = part.unit ? say("card-unit", { unit: part.unit }) : say("card-plain-number");
      const on = part.carried ? ` ${say("card-go-on", { parts: part.carried })}` : "";
      out.append(make("p", "answer-as", unit + on));
    }
    return out;
  };

  const hint = (row) => {
    const about = row.steps.length ? `: ${say("card-hint-steps")}` : row.formulas.length ? `: ${say("card-hint-formula")}` : "";
    const out = make("details", "hint", make("summary", "", (row.letter ? say("card-hint-for", { letter: row.letter }) : say("card-hint")) + about));
    if (row.text) out.append(make("p", "", row.text));
    if (row.steps.length) out.append(list("ol", row.steps));
    for (const formula of row.formulas) out.append(make("div", "formula", markup(formula)));
    return out;
  };

  const line = (row) => {
    const left = () => row.left ? [markup(row.left), " = "] : [];
    return make("li", "",
      make("p", "step-title", row.title),
      row.symbols ? make("div", "formula symbols", markup(row.symbols)) : null,
      row.method ? make("p", "method", row.method) : null,
      row.numbers ? make("p", "numbers", ...left(), row.numbers) : null,
      make("p", "result", ...left(), row.result),
      row.limits ? make("p", "holds", `${row.limits}.`) : null,
      ...row.own.map((text) => make("p", "holds", `${text}.`)),
      make("p", "source", row.source));
  };

  const solved = (row) => {
    const out = make("div", "solved", make("p", "solved-text", ...lettered(row.letter), row.text));
    if (row.lines.length) out.append(make("ol", "working", ...row.lines.map(line)));
    const answer = make("p", "answer", `${say("card-answer")} `, make("strong", "result", row.answer));
    if (row.tolerance) answer.append(" ", make("span", "accepted", say("card-accepted", { tolerance: row.tolerance })));
    out.append(answer);
    if (row.order.length) out.append(list("ol", row.order));
    if (row.because) out.append(make("p", "", row.because));
    for (const other of row.also) out.append(make("p", "", say("card-other-method", { answer: other })));
    if (row.wrong.length) {
      const wrong = row.wrong.map((wrong) => make("li", "", make("span", "wrong-answer", wrong.answer), " ", wrong.says));
      out.append(make("p", "wrong-head", say("card-something-else")), make("ul", "wrong-answers", ...wrong));
    }
    return out;
  };

  /** What stands in a question below its summary; the pictures are drawn already. */
  const question = (face, drawing, solvedDrawing) => [
    ...face.story.map((text) => make("p", "", text)),
    figure(drawing),
    givens(face.givens),
    ...face.parts.map(ask),
    ...face.hints.flat().map(hint),
    make("details", "solution", make("summary", "", say("card-answer-and-solution")), figure(solvedDrawing), ...face.solutions.map(solved)),
  ].filter(Boolean);

  window.drivecourse.parts = { make, markup, tied, question };
})();
