// The live parts of the technician's page: photos wait in this browser until the
// server says that they are on its disk, and what the server finds out is shown
// as soon as it is known. Everything else works without this file.
"use strict";
(() => {
  const words = JSON.parse(document.body.dataset.words);
  const job = document.body.dataset.job;
  const told = document.getElementById("told");
  const fill = (text, ...values) => values.reduce((t, v, i) => t.split(`{${i}}`).join(v), text);
  let quiet = 0;
  function tell(text) {
    // Where the page has a place for it, the note covers nothing: it stands there, and is only spoken here.
    const places = [...document.querySelectorAll(".here")];
    told.classList.toggle("gone", places.length > 0);
    const show = (text) => { for (const place of [told, ...places]) place.textContent = text; };
    show(text);
    clearTimeout(quiet);
    quiet = setTimeout(() => show(""), 6000);
  }
  const cut = document.getElementById("cut");
  function warn(text) {
    cut.textContent = text;
    cut.hidden = false;
  }
  document.addEventListener("bay-says", (e) => tell(e.detail));

  // The square names the certificate behind `#`, which no server is sent.
  const print = document.querySelector("[data-print]")?.dataset.print;
  const scanned = location.hash.slice(1);
  if (print && scanned.length === 64 && scanned !== print) warn(words.other);
  // Starts without a network too, where the browser counts the page as safe.
  if (globalThis.isSecureContext) navigator.serviceWorker?.register("/worker.js").catch(() => { /* not for this certificate */ });

  // SHA-256 (FIPS 180-4) for pages that a browser does not count as secure: a
  // plain address in the shop's network has no crypto.subtle.
  const K = new Uint32Array(64);
  const H0 = new Uint32Array(8);
  (() => {
    let found = 0;
    for (let n = 2; found < 64; n++) {
      let prime = true;
      for (let d = 2; d * d <= n; d++) if (n % d === 0) { prime = false; break; }
      if (!prime) continue;
      const part = (x) => Math.floor((x - Math.floor(x)) * 4294967296);
      if (found < 8) H0[found] = part(Math.sqrt(n));
      K[found++] = part(Math.cbrt(n));
    }
  })();
  function sha256(bytes) {
    const h = H0.slice(), w = new Uint32Array(64);
    const rest = bytes.length % 64, whole = bytes.length - rest;
    const end = new Uint8Array(rest < 56 ? 64 : 128);
    end.set(bytes.subarray(whole));
    end[rest] = 0x80;
    const bits = new DataView(end.buffer);
    bits.setUint32(end.length - 8, Math.floor(bytes.length / 0x20000000));
    bits.setUint32(end.length - 4, (bytes.length << 3) >>> 0);
    const blocks = (data, length) => {
      const view = new DataView(data.buffer, data.byteOffset, data.byteLength);
      for (let at = 0; at < length; at += 64) {
        for (let i = 0; i < 16; i++) w[i] = view.getUint32(at + 4 * i);
        for (let i = 16; i < 64; i++) {
          const a = w[i - 15], b = w[i - 2];
          const s0 = ((a >>> 7) | (a << 25)) ^ ((a >>> 18) | (a << 14)) ^ (a >>> 3);
          const s1 = ((b >>> 17) | (b << 15)) ^ ((b >>> 19) | (b << 13)) ^ (b >>> 10);
          w[i] = (w[i - 16] + s0 + w[i - 7] + s1) | 0;
        }
        let [a, b, c, d, e, f, g, k] = h;
        for (let i = 0; i < 64; i++) {
          const s1 = ((e >>> 6) | (e << 26)) ^ ((e >>> 11) | (e << 21)) ^ ((e >>> 25) | (e << 7));
          const t1 = (k + s1 + ((e & f) ^ (~e & g)) + K[i] + w[i]) | 0;
          const s0 = ((a >>> 2) | (a << 30)) ^ ((a >>> 13) | (a << 19)) ^ ((a >>> 22) | (a << 10));
          const t2 = (s0 + ((a & b) ^ (a & c) ^ (b & c))) | 0;
          k = g; g = f; f = e; e = (d + t1) | 0; d = c; c = b; b = a; a = (t1 + t2) | 0;
        }
        h[0] += a; h[1] += b; h[2] += c; h[3] += d; h[4] += e; h[5] += f; h[6] += g; h[7] += k;
      }
    };
    blocks(bytes, whole);
    blocks(end, end.length);
    return Array.from(h, (x) => x.toString(16).padStart(8, "0")).join("");
  }
  async function digest(blob) {
    const bytes = new Uint8Array(await blob.arrayBuffer());
    if (!globalThis.crypto?.subtle) return sha256(bytes);
    const made = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
    return Array.from(made, (b) => b.toString(16).padStart(2, "0")).join("");
  }
  function newId() {
    return Array.from(crypto.getRandomValues(new Uint8Array(16)), (b) => b.toString(16).padStart(2, "0")).join("");
  }

  // The queue: in IndexedDB, so that it outlives the page and the phone's sleep.
  const waiting = new Map(); // by id, in the order of arrival
  let store = null;
  const opened = new Promise((done) => {
    let request;
    try { request = indexedDB.open("baywitness", 1); } catch { return done(); }
    request.onupgradeneeded = () => request.result.createObjectStore("queue", { keyPath: "id" });
    request.onerror = () => done();
    request.onsuccess = () => { store = request.result; done(); };
  });
  const asked = (request) => new Promise((done, failed) => {
    request.onsuccess = () => done(request.result);
    request.onerror = () => failed(request.error);
  });
  const queue = (mode) => store.transaction("queue", mode).objectStore("queue");
  async function keep(item) {
    waiting.set(item.id, item);
    await opened;
    // A page without a store keeps the photo as long as it is open.
    try { await asked(queue("readwrite").put(item)); } catch { tell(words.nostore); }
  }
  async function forget(id) {
    waiting.delete(id);
    try { await asked(queue("readwrite").delete(id)); } catch { /* it was only in the page */ }
  }

  const box = document.getElementById("queue");
  function show() {
    const items = [...waiting.values()];
    box.hidden = items.length === 0;
    box.replaceChildren();
    if (box.hidden) return;
    const head = document.createElement("p");
    head.textContent = fill(words.queued, items.length);
    const list = document.createElement("ul");
    for (const item of items) {
      const line = document.createElement("li");
      const name = document.createElement("span");
      name.textContent = item.refused ? fill(words.refused, item.name, item.refused) : item.name;
      line.append(name);
      if (item.refused) {
        line.append(press(words.again, () => { item.refused = ""; show(); flush(); }));
        line.append(press(words.discard, async () => { await forget(item.id); show(); }));
      } else if (item.sent !== undefined) {
        const bar = document.createElement("progress");
        bar.max = item.blob.size;
        bar.value = item.sent;
        bar.setAttribute("aria-label", item.name);
        item.bar = bar;
        line.append(bar);
      }
      list.append(line);
    }
    box.append(head, list);
  }
  function press(text, deed) {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = text;
    button.addEventListener("click", deed);
    return button;
  }

  // XMLHttpRequest, since it tells how much was sent.
  const send = (item) => new Promise((done) => {
    const request = new XMLHttpRequest();
    request.open("POST", item.to);
    request.setRequestHeader("Accept", "application/json");
    request.setRequestHeader("Content-Type", "application/octet-stream");
    request.setRequestHeader("X-Upload-Id", item.id);
    request.setRequestHeader("X-Upload-Sha256", item.sha256);
    request.upload.onprogress = (e) => { item.sent = e.loaded; if (item.bar) item.bar.value = e.loaded; };
    request.onload = () => {
      let body = {};
      try { body = JSON.parse(request.responseText); } catch { /* not from our server */ }
      done({ status: request.status, body });
    };
    request.onerror = request.onabort = request.ontimeout = () => done({ status: 0, body: {} });
    request.timeout = 600000;
    request.send(item.blob);
  });

  let flushing = false, again = 0, pause = 1000;
  async function flush() {
    if (flushing) return;
    flushing = true;
    clearTimeout(again);
    let cut = false;
    for (;;) {
      const item = [...waiting.values()].find((i) => !i.refused);
      if (!item) break;
      item.sent = 0;
      show();
      tell(fill(words.sending, item.name));
      const { status, body } = await send(item);
      item.sent = undefined;
      if (status === 200 || status === 201) {
        await forget(item.id);
        pause = 1000;
        const said = { already: words.already, aside: words.aside }[body.kept] || words.kept;
        tell(fill(said, item.name));
        if (item.job === job && status === 201) look();
        if (item.job === job && item.to.includes("/files")) location.reload();
      } else if (status === 0 || status === 408 || status === 429 || status === 503 || body.error === "cut" || body.error === "digest") {
        // The network, not the photo: later again.
        cut = true;
        break;
      } else if (status === 401) {
        location.href = "/pair";
        break;
      } else {
        item.refused = body.message || String(status);
      }
    }
    flushing = false;
    show();
    if (cut) {
      tell(fill(words.queued, waiting.size));
      again = setTimeout(flush, pause);
      pause = Math.min(pause * 2, 15000);
    }
  }
  addEventListener("online", () => { pause = 1000; flush(); });
  addEventListener("beforeunload", (e) => { if (waiting.size > 0 && !store) e.preventDefault(); });

  async function add(files, to, kind) {
    for (const file of files) {
      // Copied at once: a phone may take its own copy away.
      const bytes = await file.arrayBuffer();
      const blob = new Blob([bytes], { type: file.type });
      await keep({ id: newId(), sha256: await digest(blob), name: file.name || kind, blob, job, to });
      show();
      flush();
    }
  }
  for (const part of document.querySelectorAll(".scripted")) part.hidden = false;
  const to = (area) => {
    const step = area.querySelector("[data-step]");
    return area.dataset.send + (step ? `&step=${encodeURIComponent(step.value)}` : "");
  };
  for (const area of document.querySelectorAll("[data-send]")) {
    for (const input of area.querySelectorAll("input[type=file]")) {
      input.addEventListener("change", () => { add([...input.files], to(area), "photo").then(() => { input.value = ""; }); });
    }
    for (const kind of ["dragenter", "dragover"]) {
      area.addEventListener(kind, (e) => { e.preventDefault(); area.classList.add("over"); });
    }
    area.addEventListener("dragleave", () => area.classList.remove("over"));
    area.addEventListener("drop", (e) => {
      e.preventDefault();
      area.classList.remove("over");
      add([...e.dataTransfer.files], to(area), "photo");
    });
  }
  document.addEventListener("bay-photo", (e) => {
    add([e.detail.file], to(e.detail.area), "photo");
  });
  document.addEventListener("bay-tripod", async ({ detail: { blob, area, done } }) => {
    let said = "";
    try {
      const { status, body } = await send({ id: newId(), sha256: await digest(blob), blob, to: to(area).replace("/photos?", "/tripod?") });
      if (status === 401) location.href = "/pair";
      said = body.said || body.message || "";
    } finally {
      done(said);
    }
  });
  document.addEventListener("change", (e) => {
    const input = e.target;
    if (!input.dataset?.file || !input.files?.length) return;
    const [file] = input.files;
    add([file], `${input.dataset.file}&name=${encodeURIComponent(file.name)}`, "file");
  });

  // What the server finds out.
  const path = job ? `/jobs/${encodeURIComponent(job)}` : "";
  let looking = false, lookAgain = false;
  async function look() {
    const live = document.getElementById("live");
    if (!live) return;
    if (looking) { lookAgain = true; return; }
    looking = true;
    try {
      const answer = await fetch(`${path}/live?part=${live.dataset.part}`, { headers: { Accept: "text/html" } });
      if (answer.ok) draw(await answer.text());
    } catch { /* the stream's next word brings another try */ }
    looking = false;
    if (lookAgain) { lookAgain = false; look(); }
  }
  function draw(text) {
    const old = document.getElementById("live");
    const fresh = new DOMParser().parseFromString(text, "text/html").getElementById("live");
    if (!fresh) return;
    const before = old.querySelector("[data-verdict]")?.dataset.verdict;
    // Whoever stands on a button stays there, and pictures that are there stay.
    const held = document.activeElement && old.contains(document.activeElement) ? document.activeElement : null;
    const buttons = held ? [...old.querySelectorAll("a,button,input,summary,select")].indexOf(held) : -1;
    const pictures = new Map([...old.querySelectorAll("img")].map((i) => [i.getAttribute("src"), i]));
    for (const img of fresh.querySelectorAll("img")) {
      const known = pictures.get(img.getAttribute("src"));
      if (known) { known.alt = img.alt; known.width = img.width; known.height = img.height; img.replaceWith(known); }
    }
    // A chooser of files may be open meanwhile: what it brings goes to the input that opened it.
    for (const input of fresh.querySelectorAll("input[type=file]")) {
      const known = document.getElementById(input.id);
      if (known && old.contains(known)) input.replaceWith(known);
    }
    for (const part of fresh.querySelectorAll(".scripted")) part.hidden = false;
    const openDetails = old.querySelector("details")?.open;
    if (openDetails && fresh.querySelector("details")) fresh.querySelector("details").open = true;
    old.replaceWith(fresh);
    // Once there are photos what they prove comes before where to stand.
    const places = document.getElementById("stand")?.closest("section");
    if (places && fresh.querySelector(".photo") && places.compareDocumentPosition(fresh) & Node.DOCUMENT_POSITION_FOLLOWING) {
      fresh.after(places);
    }
    if (buttons >= 0) fresh.querySelectorAll("a,button,input,summary,select")[buttons]?.focus();
    const now = fresh.querySelector("[data-verdict]")?.dataset.verdict;
    if (now && now !== before) tell(`${words.ready} ${fresh.querySelector("[data-verdict] h2").textContent}`);
  }
  if (job && document.getElementById("live")) {
    const stream = new EventSource(`${path}/events`);
    for (const name of ["hello", "photos", "verdict", "closed"]) stream.addEventListener(name, look);
    // Without the server what stands here may be old; its first word sends what waits.
    stream.addEventListener("error", () => warn(words.offline));
    stream.addEventListener("hello", () => { cut.hidden = true; pause = 1000; flush(); });
  }

  // What an earlier page could not send.
  opened.then(async () => {
    if (!store) return;
    try {
      for (const item of await asked(queue("readonly").getAll())) if (!waiting.has(item.id)) waiting.set(item.id, item);
    } catch { return; }
    if (waiting.size > 0) { show(); flush(); }
  });
})();
