// Keeps every file of the course on the device. The version changes whenever one of them does.
"use strict";
const VERSION = "version-to-be-set";
const FILES = [
  "files-to-be-set"
];

const PREFIX = `drivecourse ${new URL(self.registration.scope).pathname} `;
const NAME = PREFIX + VERSION;
const addressOf = (file) => new URL(file.split("/").map(encodeURIComponent).join("/"), self.registration.scope).href;
const KNOWN = new Set(FILES.map(addressOf));

// All or nothing: a course of which one file is missing is not kept, and is fetched again at the next visit.
self.addEventListener("install", (event) => {
  event.waitUntil((async () => {
    const cache = await caches.open(NAME);
    await cache.addAll([...KNOWN].map((address) => new Request(address, { cache: "reload" })));
  })());
});

self.addEventListener("activate", (event) => {
  event.waitUntil((async () => {
    const old = (await caches.keys()).filter((name) => name.startsWith(PREFIX) && name !== NAME);
    await Promise.all(old.map((name) => caches.delete(name)));
    await self.clients.claim();
  })());
});

self.addEventListener("message", (event) => {
  if (event.data === "take over") self.skipWaiting();
});

self.addEventListener("fetch", (event) => {
  if (event.request.method !== "GET") return;
  const address = new URL(event.request.url);
  address.search = "";
  address.hash = "";
  if (address.href.endsWith("/")) address.pathname += "index.html";
  if (!KNOWN.has(address.href)) return;
  event.respondWith((async () => {
    const cache = await caches.open(NAME);
    return await cache.match(address.href) ?? fetch(event.request);
  })());
});
