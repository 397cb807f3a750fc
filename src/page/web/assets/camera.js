// The camera in the page, where the browser has one for pages: the live picture
// with the markers that the server finds in it, how the phone is held, and a
// still. Without it the other buttons send the phone's own photos.
"use strict";
(() => {
  const viewer = document.querySelector("dialog.viewer");
  const media = navigator.mediaDevices;
  if (!viewer || !globalThis.isSecureContext || !media?.getUserMedia || !viewer.showModal) return;
  const words = JSON.parse(viewer.dataset.words);
  const fill = (text, ...values) => values.reduce((t, v, i) => t.split(`{${i}}`).join(v), text);
  const part = (name) => viewer.querySelector(name);
  const video = part("video"), svg = part("svg.drawn"), seen = part(".seen"), level = part(".level"), taken = part(".taken");
  // Live pictures are small: large enough for the markers of a bay, few bytes.
  const LIVE_SIDE = 1280, LIVE_QUALITY = 0.7, LIVE_PAUSE = 300, STILL_QUALITY = 0.95;
  let stream = null, area = null, round = 0, asking = false;

  // Which buttons there are is known only once the cameras are.
  media.enumerateDevices().then((all) => {
    if (!all.some((d) => d.kind === "videoinput")) return;
    for (const button of document.querySelectorAll("[data-camera]")) {
      button.hidden = false;
      button.addEventListener("click", () => open(button.closest("[data-send]")));
    }
  }).catch(() => { /* no camera for pages */ });

  async function open(from) {
    // A second touch while the phone still asks would leave the first camera on.
    if (asking || stream) return;
    area = from;
    seen.textContent = words.wait;
    taken.textContent = words.unnamed;
    level.textContent = "";
    const first = document.querySelectorAll("#live .photo").length > 1;
    for (const of_it of viewer.querySelectorAll("[data-tripod], #tripod-why")) of_it.hidden = !first;
    asking = true;
    // Some phones tell how they are held only when asked in a touch.
    try { await globalThis.DeviceOrientationEvent?.requestPermission?.(); } catch { /* then there is no level */ }
    try {
      const wanted = { facingMode: "environment", width: { ideal: 4096 }, height: { ideal: 3072 } };
      stream = await media.getUserMedia({ video: wanted, audio: false });
    } catch (e) {
      document.dispatchEvent(new CustomEvent("bay-says", { detail: fill(words.refused, e.name) }));
      return;
    } finally {
      asking = false;
    }
    video.srcObject = stream;
    viewer.showModal();
    try { await video.play(); } catch { /* closed meanwhile */ }
    addEventListener("deviceorientation", held);
    glances(++round);
  }
  function shut() {
    round += 1;
    rest();
    delete viewer.dataset.ties;
    removeEventListener("deviceorientation", held);
    for (const track of stream?.getTracks() ?? []) track.stop();
    stream = null;
    video.srcObject = null;
    svg.querySelectorAll("g").forEach((g) => g.replaceChildren());
    part(".horizon").setAttribute("d", "");
  }
  viewer.addEventListener("close", shut);
  part("[data-shut]").addEventListener("click", () => viewer.close());

  const pause = (ms) => new Promise((done) => setTimeout(done, ms));
  const picture = (width, height, quality) => new Promise((done) => {
    const canvas = document.createElement("canvas");
    canvas.width = width;
    canvas.height = height;
    canvas.getContext("2d").drawImage(video, 0, 0, width, height);
    canvas.toBlob(done, "image/jpeg", quality);
  });

  // One at a time, so that a slow network or a busy server gets fewer.
  async function glances(mine) {
    while (mine === round) {
      const began = performance.now();
      let wait = LIVE_PAUSE;
      if (video.videoWidth > 0) {
        const scale = Math.min(1, LIVE_SIDE / Math.max(video.videoWidth, video.videoHeight));
        const size = [video.videoWidth, video.videoHeight].map((n) => Math.round(n * scale));
        try {
          const body = await picture(...size, LIVE_QUALITY);
          // A stream that changes or ends just now has no picture.
          if (!body?.size) { await pause(wait); continue; }
          const answer = await fetch(viewer.dataset.glance, { method: "POST", body, headers: { Accept: "application/json" } });
          if (mine !== round) return;
          if (answer.ok) show(await answer.json());
          else if (answer.status === 401) { location.href = "/pair"; return; }
          else if (answer.status === 429 || answer.status === 503) wait = 1000;
          else { seen.textContent = (await answer.json()).message; wait = 3000; }
        } catch { if (mine === round) { away(); wait = 2000; } }
      }
      await pause(Math.max(wait, performance.now() - began));
    }
  }
  function away() {
    seen.textContent = words.away;
    svg.querySelectorAll("g").forEach((g) => g.replaceChildren());
  }
  function show(glance) {
    svg.setAttribute("viewBox", `0 0 ${glance.width} ${glance.height}`);
    const side = Math.max(glance.width, glance.height) / 1000;
    for (const [name, wide] of [[".casing", 9], [".ring", 4]]) {
      const group = svg.querySelector(name);
      group.setAttribute("stroke-width", wide * side);
      group.replaceChildren(...glance.markers.map((m) => {
        const path = document.createElementNS("http://www.w3.org/2000/svg", "path");
        path.setAttribute("d", `M${m.corners_px.map(([u, v]) => `${u.toFixed(1)} ${v.toFixed(1)}`).join("L")}Z`);
        return path;
      }));
    }
    viewer.dataset.ties = glance.ties ? "yes" : "no";
    seen.textContent = glance.markers.length === 0 ? words.none
      : `${fill(words.seen, glance.markers.length, glance.shown.join(", "))}. ${glance.ties ? words.ties : words.apart}`;
  }

  // How the phone is held: the direction upwards in the device's axes (W3C
  // Device Orientation, z-x'-y''), turned as the picture is shown.
  function held({ beta, gamma }) {
    if (beta === null || gamma === null) return;
    const rad = Math.PI / 180, b = beta * rad, g = gamma * rad;
    const up = [-Math.cos(b) * Math.sin(g), Math.sin(b), Math.cos(b) * Math.cos(g)];
    const shown = (screen.orientation?.angle ?? 0) * rad;
    // The picture's own right and up in the device's axes.
    const right = up[0] * Math.cos(shown) - up[1] * Math.sin(shown);
    const top = up[0] * Math.sin(shown) + up[1] * Math.cos(shown);
    const turned = Math.atan2(right, top), down = Math.asin(Math.max(-1, Math.min(1, up[2])));
    level.textContent = fill(words.level, (turned / rad).toFixed(0), (down / rad).toFixed(0));
    const [, , w, h] = (svg.getAttribute("viewBox") ?? "0 0 4 3").split(" ").map(Number);
    const half = w / 4, c = half * Math.cos(turned), s = half * Math.sin(turned);
    const line = part(".horizon");
    line.setAttribute("d", `M${w / 2 - c} ${h / 2 - s}L${w / 2 + c} ${h / 2 + s}`);
    line.setAttribute("stroke-width", Math.max(w, h) / 250);
  }

  // EXIF (CIPA DC-008) stands within the first bytes of a JPEG.
  async function hasRecord(blob) {
    const head = new Uint8Array(await blob.slice(0, 4096).arrayBuffer());
    return String.fromCharCode(...head).includes("Exif\0\0");
  }
  async function still() {
    const [track] = stream.getVideoTracks();
    try {
      if (globalThis.ImageCapture) return { blob: await new ImageCapture(track).takePhoto(), frame: false };
    } catch { /* a camera that only streams */ }
    return { blob: await picture(video.videoWidth, video.videoHeight, STILL_QUALITY), frame: true };
  }
  // A photo every few seconds, one after the other: what becomes of it the server says. One that is lost is no
  // matter, the next one comes.
  const TRIPOD_PAUSE = 5000;
  const tripod = part("[data-tripod]");
  let sitting = 0;
  function rest() {
    sitting += 1;
    if (!tripod) return;
    tripod.textContent = words.tripod;
  }
  async function watch(mine) {
    while (mine === sitting && stream) {
      const began = performance.now();
      try {
        const { blob } = await still();
        if (!blob) throw new DOMException("no picture", "NotReadableError");
        const said = await new Promise((done) => {
          document.dispatchEvent(new CustomEvent("bay-tripod", { detail: { blob, area, done } }));
        });
        if (mine === sitting) taken.textContent = fill(words.says, said || words.away);
      } catch (error) {
        if (mine === sitting) taken.textContent = fill(words.refused, error.name);
      }
      await pause(Math.max(500, TRIPOD_PAUSE - (performance.now() - began)));
    }
  }
  tripod?.addEventListener("click", () => {
    if (tripod.textContent === words.untripod) { rest(); return; }
    if (!stream || video.videoWidth === 0) return;
    tripod.textContent = words.untripod;
    watch(++sitting);
  });

  part("[data-take]").addEventListener("click", async (e) => {
    if (!stream || video.videoWidth === 0) return;
    const button = e.currentTarget;
    button.disabled = true;
    try {
      const { blob, frame } = await still();
      const size = await createImageBitmap(blob);
      const says = [fill(words.taken, size.width, size.height)];
      if (frame) says.push(words.frame);
      if (!(await hasRecord(blob))) says.push(words.norecord, words.unnamed);
      taken.textContent = says.join(" ");
      const at = new Date().toTimeString().slice(0, 8).split(":").join("");
      const file = new File([blob], `live-${at}.${blob.type === "image/png" ? "png" : "jpg"}`, { type: blob.type });
      document.dispatchEvent(new CustomEvent("bay-photo", { detail: { file, area } }));
    } catch (error) {
      taken.textContent = fill(words.refused, error.name);
    }
    button.disabled = false;
  });
})();
