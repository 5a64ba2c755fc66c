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

  const bytes = (base64) => Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0));
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

  /** A module of this name, opened with the texts of the parts `needs`. */
  const opened = {};
  const open = (name, needs) => opened[name] ??= (async () => {
    const [code, ...texts] = await Promise.all([name, ...needs].map(part));
    const { instance } = await WebAssembly.instantiate(bytes(code), {});
    const { error } = JSON.parse(call(instance.exports, texts.join("")));
    if (error) throw new Error(error);
    return instance.exports;
  })().catch((error) => {
    delete opened[name];
    throw error;
  });

  const through = async (name, needs, text) => {
    const module = await open(name, needs);
    try {
      return call(module, text);
    } catch (error) {
      // It is no longer to be trusted; the next request opens a fresh one.
      delete opened[name];
      throw error;
    }
  };

  const packed = (word) => `${encoder.encode(word).length.toString(16)} ${word}`;

  window.drivecourse = {
    /** Whether this page's cards can be live. */
    isLive: addresses.length > 0 && typeof WebAssembly === "object",
    /** Loads what an answer needs, before it is asked for. */
    warm: () => open("practice", ["words", "bank"]).catch(() => {}),
    /** Asks the desk: a list of words, answered with an object. */
    ask: async (...words) => {
      const text = words.length.toString(16) + " " + words.map((word) => packed(String(word))).join("");
      const reply = JSON.parse(await through("practice", ["words", "bank"], text));
      if (reply.error) throw new Error(reply.error);
      return reply;
    },
    /** Draws a picture that the desk described; nothing where there is none. */
    draw: async (portrait) => portrait ? through("pictures", ["words"], portrait) : "",
  };
})();
