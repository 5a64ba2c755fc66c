// The calculation in the browser: loads its parts when they are first needed, and passes text to it and back.
// What a unit is, how an answer is read and what it earns is all decided there; nothing of it stands in a script.
"use strict";
(() => {
  const root = document.documentElement.dataset.root ?? "";
  const addresses = (document.documentElement.dataset.live ?? "").split(" ").filter(Boolean);
  const loading = {};

  /** Loads one part, a script that leaves its text in `drivecourseParts`. */
  const part = (name) => loading[name] ??= new Promise((done, failed) => {
    const address = addresses.find((address) => address.startsWith(`live/${name}-`));
    if (!address) return failed(new Error(`no ${name}`));
    const script = document.createElement("script");
    script.src = root + address;
    script.addEventListener("load", () => done(window.drivecourseParts[name]));
    script.addEventListener("error", () => {
      delete loading[name];
      failed(new Error(address));
    });
    document.head.append(script);
  });

  const bytes = (base64) => Uint8Array.fromBase64?.(base64) ?? Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0));
  const started = async (name, imports) =>
    (await WebAssembly.instantiate(bytes(await part(name)), imports)).instance.exports;
  const encoder = new TextEncoder();
  const decoder = new TextDecoder();

  /** Passes `text` to a module and returns its reply. */
  const call = ({ alloc, run, free, memory }, text) => {
    const request = encoder.encode(text);
    const at = alloc(request.length);
    new Uint8Array(memory.buffer, at, request.length).set(request);
    const reply = BigInt.asUintN(64, run(at, request.length));
    const [start, length] = [Number(reply >> 32n), Number(reply & 0xffffffffn)];
    const said = decoder.decode(new Uint8Array(memory.buffer, start, length));
    free(start, length);
    return said;
  };

  /** A module of this name, opened with the texts of the parts `needs`, and what is connected to it. */
  const opened = {};
  const open = (name, needs) => opened[name] ??= (async () => {
    const [exports, ...texts] = await Promise.all([started(name, {}), ...needs.map(part)]);
    const { error } = JSON.parse(call(exports, texts.join("")));
    if (error) throw new Error(error);
    return { exports, connected: {} };
  })().catch((error) => {
    delete opened[name];
    throw error;
  });

  const through = async (name, needs, text) => {
    const { exports } = await open(name, needs);
    try {
      return call(exports, text);
    } catch (error) {
      // It is no longer to be trusted; the next request opens a fresh one.
      delete opened[name];
      throw error;
    }
  };

  /** Connects a module of calculations to the desk: from then on they call each other, and no script stands between.
   * It takes the elementary functions from there. */
  const connect = async (name) => {
    const { exports: desk, connected } = await open("practice", ["words", "bank"]);
    connected[name] ??= started(name, { practice: desk }).then(({ place, work }) => {
      const table = desk.__indirect_function_table;
      const at = table.grow(1);
      table.set(at, work);
      desk.connect(place(), at);
    }).catch((error) => {
      delete connected[name];
      throw error;
    });
    return connected[name];
  };

  const packed = (word) => `${encoder.encode(word).length.toString(16)} ${word}`;

  window.drivecourse = {
    /** Whether this page's cards can be live. */
    isLive: addresses.length > 0 && typeof WebAssembly === "object",
    /** Asks the desk: a list of words, answered with an object. */
    ask: async (...words) => {
      const text = words.length.toString(16) + " " + words.map((word) => packed(String(word))).join("");
      // Every machine takes the relations; which wrong turns a question takes, the desk says.
      part("relations").catch(() => {});
      const asked = new Set();
      for (;;) {
        const reply = JSON.parse(await through("practice", ["words", "bank"], text));
        if (reply.error) throw new Error(reply.error);
        if (!reply.needs) return reply;
        if (reply.needs.every((name) => asked.has(name))) throw new Error(`no use of ${reply.needs}`);
        reply.needs.forEach((name) => asked.add(name));
        await Promise.all(reply.needs.map(connect));
      }
    },
    /** Draws a picture that the desk described; nothing where there is none. */
    draw: async (portrait) => portrait ? through("pictures", ["words"], portrait) : "",
  };
})();
