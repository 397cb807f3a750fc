// Starts the page without a network: its own files, and the last pages of jobs
// that this device has seen. Photos wait in the page's queue, not here.
"use strict";
const SHELL = "baywitness-shell-1", PAGES = "baywitness-pages-1";
const FILES = ["/page.css", "/page.js", "/camera.js", "/icon.svg"];
// Pages that are kept; the oldest goes first.
const MOST = 20;
const KEPT = /^\/(jobs\/[^/]+\/(prepare|photos|finish))?$/;

addEventListener("install", (e) => {
  e.waitUntil(caches.open(SHELL).then((shell) => shell.addAll(FILES)).then(() => skipWaiting()));
});
addEventListener("activate", (e) => {
  const old = (names) => names.filter((n) => n !== SHELL && n !== PAGES);
  e.waitUntil(caches.keys().then((names) => Promise.all(old(names).map((n) => caches.delete(n)))).then(() => clients.claim()));
});
addEventListener("fetch", (e) => {
  const { request } = e, { origin, pathname } = new URL(request.url);
  if (request.method !== "GET" || origin !== location.origin) return;
  if (FILES.includes(pathname)) e.respondWith(fresh(request, SHELL, pathname));
  // Whoever is asked to connect is shown nothing of any job any more.
  else if (request.mode === "navigate" && pathname === "/pair") e.waitUntil(caches.delete(PAGES));
  else if (request.mode === "navigate" && KEPT.test(pathname)) e.respondWith(fresh(request, PAGES, pathname));
});

// The server's answer, which is kept; without a server the one kept last.
async function fresh(request, where, name) {
  const kept = await caches.open(where);
  let answer;
  try {
    answer = await fetch(request);
  } catch (cut) {
    const last = (await kept.match(name)) ?? (request.mode === "navigate" ? await kept.match("/") : undefined);
    if (last) return last;
    throw cut;
  }
  if (answer.ok && answer.type === "basic" && !answer.redirected) {
    await kept.delete(name);
    await kept.put(name, answer.clone());
    const all = await kept.keys();
    for (const old of all.slice(0, Math.max(0, all.length - MOST))) await kept.delete(old);
  }
  return answer;
}
