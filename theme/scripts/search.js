// Finds words in the course. The index is fetched when the field is first used, as scripts, because a page opened
// straight from a file may load scripts but not data.
"use strict";
(() => {
  const box = document.getElementById("search");
  if (!box) return;
  const field = document.getElementById("search-words");
  const count = document.getElementById("search-count");
  const found = document.getElementById("search-found");
  const most = 12;
  let loading = null;

  const load = (address) => new Promise((done, failed) => {
    const script = document.createElement("script");
    script.src = address;
    script.addEventListener("load", done);
    script.addEventListener("error", () => failed(new Error(address)));
    document.head.append(script);
  });

  /** The index, loaded once. */
  const ready = () => loading ??= (async () => {
    // The index script adds to this object and needs it to be there.
    window.search ??= {};
    await load(box.dataset.engine);
    await load(box.dataset.index);
    return elasticlunr.Index.load(window.search.index);
  })();

  /** About a line of text round the first of `words` in `body`. */
  const glimpse = (body, words) => {
    const at = body.toLowerCase().indexOf(words[0] ?? "");
    const start = Math.max(0, body.lastIndexOf(" ", Math.max(0, at - 40)) + 1);
    const text = body.slice(start, start + 110).trim();
    return (start > 0 ? "… " : "") + text + (start + 110 < body.length ? " …" : "");
  };

  const show = (index, query) => {
    const words = query.toLowerCase().split(/\s+/).filter(Boolean);
    const hits = words.length ? index.search(query, { ...window.search.search_options, bool: "AND" }) : [];
    found.replaceChildren(...hits.slice(0, most).map((hit) => {
      const page = index.documentStore.getDoc(hit.ref);
      const link = document.createElement("a");
      link.href = box.dataset.root + window.search.doc_urls[hit.ref];
      const title = document.createElement("strong");
      title.textContent = page.title;
      const place = document.createElement("span");
      place.textContent = glimpse(page.body, words);
      link.append(title, place);
      const entry = document.createElement("li");
      entry.append(link);
      return entry;
    }));
    found.hidden = hits.length === 0;
    if (!words.length) count.textContent = "";
    else if (hits.length > most) count.textContent = say("script-first-places", { most, all: hits.length });
    else count.textContent = hits.length === 1 ? say("script-one-place") : say("script-places", { all: hits.length });
  };

  const look = async () => {
    try {
      const index = await ready();
      // What is in the field now, not when the wait began.
      show(index, field.value);
    } catch {
      count.textContent = say("script-no-search");
    }
  };
  field.addEventListener("focus", () => ready().catch(() => {}));
  field.addEventListener("input", look);
})();
