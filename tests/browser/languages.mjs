// Every page and every kind of report in every language at a phone's width, light and dark:
// nothing is wider than its place, nothing is cut, WCAG 2.2 AA holds, and what a screen
// reader says comes in the order of the page. The pseudo-language is English a third longer.
import { cpSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { Looker, Server, assert, openBrowser, run, sayRendered, verdict } from "./browser.mjs";

const TAGS = ["en", "de", "es", "fr", "en-XA"];
/// Colours do not depend on the language: the longest words are looked at in the dark.
const DARK = "en-XA";
const PAGES = [
  ["", "start"], ["?q=nothing-like-it", "no-match"], ["new", "sheets"], ["new/demo-front-radar", "new-job"], ["new-sheet", "new-sheet"],
  ["jobs/empty/photos", "where-to-stand"], ["jobs/outside/prepare", "prepare"], ["jobs/outside/photos", "outside"],
  ["jobs/outside/card", "card"], ["jobs/within/photos", "within"], ["jobs/within/finish", "finish"], ["devices", "devices"], ["pair", "connect"],
  ["nothing-is-here", "trouble"],
];

/// Jobs for the page: no photo yet, a wrong stand, a right one. For the reports also one that asks for more than
/// photos can prove, one with a single photo, and one with a tape's reading that contradicts them.
export const OF_PAGE = [["empty", "wrong", []], ["outside", "wrong", ["a", "b"]], ["within", "right", ["a", "b"]]];
const OF_REPORTS = [...OF_PAGE.slice(1), ["not-proven", "right", ["a", "b"]], ["retake", "right", ["a"]], ["reading", "right", ["a", "b", "c"]]];

export function jobsOf(work, kinds) {
  const jobs = mkdtempSync(join(work, "languages-"));
  for (const [name, staged, photos] of kinds) {
    const to = join(jobs, name);
    cpSync(join(work, `staged-${staged}`), to, { recursive: true });
    const listed = photos.map((p) => `"photos/${p}.jpg"`).join(", ");
    const text = readFileSync(join(to, "job.toml"), "utf8").replace(/\n\[\[photo\]\][\s\S]*/, "\n").replace(/^photos = .*$/m, "");
    writeFileSync(join(to, "job.toml"), `${text}${listed ? `photos = [${listed}]\n` : ""}attempt = 1\ntechnician = "T1"\n`);
    if (!listed) rmSync(join(to, "photos"), { recursive: true });
  }
  sayRendered(jobs);
  return jobs;
}

function edited(file, edit) {
  const text = readFileSync(file, "utf8");
  const after = edit(text);
  assert(after !== text, `${file} was not changed`);
  writeFileSync(file, after);
}

/// The reports of five jobs in a language, and the plan of one: pages that open from a file.
async function reports(page, looker, program, work, tag) {
  const jobs = jobsOf(work, OF_REPORTS);
  edited(join(jobs, "not-proven", "setup.toml"), (t) => t.replace("lower = 1485.0\nupper = 1515.0", "lower = 1499.5\nupper = 1500.5"));
  edited(join(jobs, "reading", "job.toml"), (t) => `${t}\n[[reading]]\nquantity = "distance"\nfrom = "nose"\nvalue = 1540.0\nu = 1.0\ninstrument = "tape"\n`);
  const wanted = { outside: 1, within: 0, "not-proven": 3, retake: 4, reading: 0 };
  for (const [name] of OF_REPORTS) {
    edited(join(jobs, name, "job.toml"), (t) => `${t}\n[prerequisites]\ntyre_pressures_set = true\nvehicle_unloaded = true\n`);
    const out = join(jobs, `report-${name}`);
    const { code, said } = run(program, "verify", join(jobs, name), "--report", out, "--language", tag);
    assert(code === wanted[name], `${name} in ${tag}: ${code}: ${said}`);
    const files = [out, join(out, "for-the-customer")].flatMap((f) => readdirSync(f).filter((n) => n.endsWith(".html")).map((n) => join(f, n)));
    for (const [i, file] of files.entries()) await opened(page, looker, file, `report-${tag}-${name}-${i}`);
  }
  const sheet = join(jobs, "within", "setup.toml");
  const kit = ["--kit", join(jobs, "within", "kit.toml"), "--camera", join(jobs, "within", "camera.toml")];
  const pages = [
    ["plan", 0, ["plan", "--setup", sheet, ...kit, "--report"]], ["setup", 0, ["setup", "check", sheet, ...kit, "--report"]],
    ["audit", 4, ["audit", ...OF_REPORTS.map(([name]) => join(jobs, name)), "--out"]], ["trends", 0, ["trends", join(jobs, "audit"), "--out"]],
  ];
  for (const [name, least, words] of pages) {
    const out = join(jobs, name);
    const { code, said } = run(program, ...words, out, "--language", tag);
    assert(code <= least, `${name} in ${tag}: ${code}: ${said}`);
    for (const file of readdirSync(out).filter((n) => n.endsWith(".html"))) await opened(page, looker, join(out, file), `${name}-${tag}`);
  }
  rmSync(jobs, { recursive: true });
}

async function opened(page, looker, file, what) {
  await page.goto(pathToFileURL(file).href);
  await page.evaluate(() => { for (const d of document.querySelectorAll("details")) d.open = true; });
  await looker.look(what);
}

async function sweep(page, looker, server, tag, scheme) {
  await page.emulateMedia({ colorScheme: scheme });
  await page.goto(`${server.link}language/${tag}`);
  assert(await page.evaluate(() => document.documentElement.lang) === tag, `the page is in ${tag}`);
  await page.click("summary.tongue");
  await looker.look(`${tag}-${scheme}-languages`);
  for (const [path, what] of PAGES) {
    await page.goto(server.link + path);
    if (what === "outside" || what === "within") await verdict(page, what);
    // All of a page that opens: what is folded is as wide.
    await page.evaluate(() => { for (const d of document.querySelectorAll("main details")) d.open = true; });
    await looker.look(`${tag}-${scheme}-${what}`);
  }
}

export async function languages(program, work, shots) {
  const began = Date.now();
  const server = await Server.start(program, jobsOf(work, OF_PAGE));
  const options = { viewport: { width: 360, height: 740 }, deviceScaleFactor: 1, hasTouch: true, isMobile: true, locale: "en-GB" };
  const context = await openBrowser({ dir: mkdtempSync(join(tmpdir(), "baywitness-languages-")), options });
  const page = context.pages()[0] ?? await context.newPage();
  const looker = new Looker(page, "languages", shots);
  try {
    for (const tag of TAGS) await sweep(page, looker, server, tag, "light");
    await sweep(page, looker, server, DARK, "dark");
    // A report is read, not worked with in gloves.
    looker.pressed = false;
    for (const scheme of ["light", "dark"]) {
      await page.emulateMedia({ colorScheme: scheme });
      for (const tag of scheme === "light" ? TAGS : [DARK]) await reports(page, looker, program, work, tag);
    }
    looker.wrong = looker.wrong.filter((w) => !/status of 404/.test(w));
    assert(looker.wrong.length === 0, looker.wrong.join("\n"));
    console.log(`languages: ok, ${looker.count} states looked at in ${((Date.now() - began) / 1000).toFixed(0)} s`);
    return true;
  } catch (e) {
    console.error(`languages: ${e.stack ?? e}`);
    console.error(looker.wrong.join("\n"));
    return false;
  } finally {
    await context.close();
    await server.stop("SIGINT").catch(() => {});
  }
}
