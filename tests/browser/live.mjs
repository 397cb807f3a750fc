// The page over TLS with photos taken in it: Chromium's own fake camera shows
// rendered frames. A phone connects through the square's address, aims with the
// live picture, takes two photos, starts without a server, and is shown out.
import { X509Certificate, createHash } from "node:crypto";
import { cpSync, mkdirSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { Looker, Server, assert, kept, openBrowser, sayRendered, scripted, verdict } from "./browser.mjs";

const here = dirname(fileURLToPath(import.meta.url));

/// The certificate's key, which the browser is told to trust as a phone trusts the root.
function keyOf(jobs) {
  const [, pem] = readFileSync(join(jobs, ".baywitness-tls.pem"), "utf8").match(/(-----BEGIN CERTIFICATE[\s\S]*?-----END CERTIFICATE-----)/);
  const certificate = new X509Certificate(pem);
  const spki = certificate.publicKey.export({ type: "spki", format: "der" });
  return { spki: createHash("sha256").update(spki).digest("base64"), print: certificate.fingerprint256 };
}

async function connect(page, looker, server, print) {
  const code = server.said.match(/\/pair\/([A-Z0-9]+)/)[1];
  assert(server.said.includes(print), "the terminal shows the certificate's fingerprint");
  // A square with another certificate is told.
  await page.goto(`${server.link}pair/${code}#${"0".repeat(64)}`);
  await page.waitForSelector("#cut:not([hidden])");
  assert((await page.textContent("#cut")).includes("another certificate"), "another certificate is told");
  await page.goto("about:blank");
  await page.goto(`${server.link}pair/${code}#${print.replaceAll(":", "").toLowerCase()}`);
  assert(await page.isHidden("#cut"), "the square's certificate is the page's");
  assert((await page.textContent("main")).includes(print), "the page shows the fingerprint");
  await page.fill("#f-name", `test ${looker.name}`);
  await looker.look("connect");
  await page.click("button.go");
  await page.waitForURL(server.link);
  await looker.look("list");
  assert(await page.evaluate(() => isSecureContext), "a secure context");
  const cookies = await page.context().cookies();
  const token = cookies.find((c) => c.name === "baywitness-device");
  assert(token.secure && token.httpOnly && token.sameSite === "Strict", JSON.stringify(token));
}

async function newJob(page, server) {
  await page.goto(server.link + "new/demo-front-radar");
  await page.fill("#f-description", "invented small hatchback");
  await page.selectOption("#f-kit", "demo-bay");
  await page.selectOption("#f-camera", "live-phone");
  await page.click("button.go");
  await page.waitForURL("**/prepare");
  await page.goto(page.url().replace(/prepare$/, "photos"));
  await scripted(page);
}

/// Opens the camera, waits until the server has found markers, takes a photo.
async function take(page, looker, what) {
  await page.waitForSelector("[data-camera]:not([hidden])");
  await page.click("[data-camera]");
  await page.waitForSelector("dialog[open][data-ties=yes]", { timeout: 30000 });
  const outlined = await page.$$eval("dialog svg .ring path", (all) => all.length);
  assert(outlined > 10, `${outlined} markers are outlined in the live picture`);
  await level(page);
  await page.click("[data-take]");
  await page.waitForFunction(() => document.querySelector("dialog .taken").textContent.includes("1600 × 1200"));
  const said = await page.textContent("dialog .taken");
  assert(said.includes("no EXIF"), `what a picture without record lacks is said: ${said}`);
  if (what) await looker.look(what);
  await page.click("[data-shut]");
  await page.waitForSelector("dialog:not([open])", { state: "attached" });
  // A dialog says that it was closed a while after it was: the camera is given back then.
  await page.waitForFunction(() => !document.querySelector("dialog video").srcObject, null, { timeout: 10000 });
  return said;
}

/// The phone stands on a tripod: a photo every few seconds, of which the newest of a place is kept.
async function tripod(page, looker) {
  await page.click("[data-camera]");
  await page.waitForSelector("dialog[open][data-ties=yes]", { timeout: 30000 });
  await page.click("[data-tripod]");
  const says = (text) => page.waitForFunction((text) => document.querySelector("dialog .taken").textContent.includes(text), text, { timeout: 30000 });
  await says("the first photo");
  await says("at rest in a new place");
  await looker.look("tripod");
  await says("stands where it did");
  await page.click("[data-tripod]");
  await page.click("[data-shut]");
  await page.waitForSelector("dialog:not([open])", { state: "attached" });
  await page.waitForFunction(() => document.querySelectorAll("#live .photo").length === 4, null, { timeout: 30000 });
  await page.waitForSelector("#live:not([data-working])", { timeout: 60000 });
  await looker.look("tripod-kept");
}

/// Upright and level, then turned by 10 degrees and looking down by 20.
async function level(page) {
  const devtools = await page.context().newCDPSession(page);
  const held = async (beta, wanted) => {
    await devtools.send("DeviceOrientation.setDeviceOrientationOverride", { alpha: 0, beta, gamma: 0 });
    const reads = (wanted) => {
      const read = document.querySelector("dialog .level").textContent.match(/-?\d+/g)?.map(Number);
      return read?.length === wanted.length && wanted.every((n, k) => Math.abs(n - read[k]) === 0);
    };
    try {
      await page.waitForFunction(reads, wanted, { timeout: 10000 });
    } catch {
      throw new Error(`held ${wanted}: the page says ${await page.textContent("dialog .level")}`);
    }
  };
  await held(90, [0, 0]);
  await held(70, [0, 20]);
  await devtools.detach();
}

/// Without any server the page starts, and keeps what is taken.
async function withoutServer(page, looker, server, again) {
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await page.reload();
  await page.waitForFunction(async () => (await (await caches.open("baywitness-pages-1")).keys()).length > 0);
  await server.stop("SIGKILL");
  await page.reload();
  await page.waitForSelector("#cut:not([hidden])");
  await scripted(page);
  await page.click("[data-camera]");
  await page.waitForFunction(() => document.querySelector("dialog .seen").textContent.includes("does not answer"), null, { timeout: 20000 });
  await page.click("[data-take]");
  await page.waitForSelector("#queue:not([hidden])", { state: "attached" });
  await page.click("[data-shut]");
  await looker.look("no-server");
  const next = await again();
  await kept(page);
  await page.waitForSelector("#cut", { state: "hidden" });
  return next;
}

/// Shown out at the desk: nothing of a job stays on the device.
async function shownOut(page, looker, server) {
  const job = page.url();
  await page.goto(server.link + "devices");
  await looker.look("devices");
  await page.click("li.device form button");
  await page.waitForURL("**/pair");
  await page.goto(job);
  assert(page.url().endsWith("/pair"), "shown out is shown out");
  await page.waitForFunction(async () => !(await caches.has("baywitness-pages-1")));
}

export async function live(program, work, shots, profile) {
  const jobs = mkdtempSync(join(work, `live-${profile.name}-`));
  const dir = mkdtempSync(join(tmpdir(), "baywitness-live-"));
  const models = join(jobs, ".models");
  mkdirSync(join(models, "cameras"), { recursive: true });
  cpSync(join(here, "scenes", "live-phone.toml"), join(models, "cameras", "live-phone.toml"));
  const film = join(dir, "film.mjpeg");
  // A film of one picture; the browser opens it anew with its camera.
  const show = (photo) => {
    const picture = readFileSync(join(work, "staged-live", "photos", photo));
    writeFileSync(film, Buffer.concat([picture, picture]));
  };
  show("a.jpg");
  const start = (listen) => Server.start(program, jobs, listen, ["--tls-own", "--models", models]);
  let server = await start("0.0.0.0:0");
  const at = server.address.replace(/^.*:/, "0.0.0.0:");
  const { spki, print } = keyOf(jobs);
  const args = ["--use-fake-ui-for-media-stream", "--use-fake-device-for-media-stream",
    `--use-file-for-fake-video-capture=${film}`, `--ignore-certificate-errors-spki-list=${spki}`];
  const context = await openBrowser({ dir: join(dir, "profile"), args, options: profile.options });
  const page = context.pages()[0] ?? await context.newPage();
  // A browser without stills takes a frame of the stream, and says so.
  if (profile.name === "desktop") await page.addInitScript(() => { delete window.ImageCapture; });
  const looker = new Looker(page, `live-${profile.name}`, shots);
  try {
    await connect(page, looker, server, print);
    await newJob(page, server);
    sayRendered(jobs);
    const said = await take(page, looker, "camera");
    assert(said.includes("frame of the live picture") === (profile.name === "desktop"), `${profile.name}: ${said}`);
    await kept(page);
    show("b.jpg");
    await take(page, looker);
    await kept(page);
    await verdict(page, "within");
    await looker.look("within");
    show("c.jpg");
    server = await withoutServer(page, looker, server, () => start(at));
    await page.waitForFunction(() => document.querySelectorAll("#live .photo").length === 3, null, { timeout: 30000 });
    await verdict(page, "within");
    await tripod(page, looker);
    await shownOut(page, looker, server);
    looker.wrong = looker.wrong.filter((w) => !/net::ERR_(?!BLOCKED)|status of (401|429|503)/.test(w));
    assert(looker.wrong.length === 0, looker.wrong.join("\n"));
    console.log(`live ${profile.name}: ok, ${looker.count} states looked at`);
    return true;
  } catch (e) {
    console.error(`live ${profile.name}: ${e.stack ?? e}`);
    console.error(looker.wrong.join("\n"));
    await page.screenshot({ path: join(shots, `live-${profile.name}-failed.png`), fullPage: true }).catch(() => {});
    return false;
  } finally {
    await context.close();
    await server.stop("SIGINT").catch(() => {});
  }
}
