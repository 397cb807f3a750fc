// Every page in every language at a phone's width, light and dark: nothing is
// wider than its place, nothing is cut, and WCAG 2.2 AA holds. The
// pseudo-language is English a third longer.
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Looker, Server, assert, openBrowser, verdict } from "./browser.mjs";

const TAGS = ["en", "de", "es", "fr", "en-XA"];
/// Colours do not depend on the language: the longest words are looked at in the dark.
const DARK = "en-XA";
const PAGES = [
  ["", "start"], ["?q=nothing-like-it", "no-match"], ["new", "sheets"], ["new/demo-front-radar", "new-job"], ["new-sheet", "new-sheet"],
  ["jobs/empty/photos", "where-to-stand"], ["jobs/outside/prepare", "prepare"], ["jobs/outside/photos", "outside"],
  ["jobs/outside/card", "card"], ["jobs/within/photos", "within"], ["jobs/within/finish", "finish"], ["devices", "devices"], ["pair", "connect"],
  ["nothing-is-here", "trouble"],
];

/// Three jobs: no photo yet, a wrong stand, a right one.
function jobsOf(work) {
  const jobs = mkdtempSync(join(work, "languages-"));
  for (const [name, staged, photos] of [["empty", "wrong", []], ["outside", "wrong", ["a", "b"]], ["within", "right", ["a", "b"]]]) {
    const to = join(jobs, name);
    cpSync(join(work, `staged-${staged}`), to, { recursive: true });
    const listed = photos.map((p) => `"photos/${p}.jpg"`).join(", ");
    const text = readFileSync(join(to, "job.toml"), "utf8").replace(/\n\[\[photo\]\][\s\S]*/, "\n").replace(/^photos = .*$/m, "");
    writeFileSync(join(to, "job.toml"), `${text}${listed ? `photos = [${listed}]\n` : ""}attempt = 1\ntechnician = "T1"\n`);
    if (!listed) rmSync(join(to, "photos"), { recursive: true });
  }
  return jobs;
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
  const server = await Server.start(program, jobsOf(work));
  const options = { viewport: { width: 360, height: 740 }, deviceScaleFactor: 1, hasTouch: true, isMobile: true, locale: "en-GB" };
  const context = await openBrowser({ dir: mkdtempSync(join(tmpdir(), "baywitness-languages-")), options });
  const page = context.pages()[0] ?? await context.newPage();
  const looker = new Looker(page, "languages", shots);
  try {
    for (const tag of TAGS) await sweep(page, looker, server, tag, "light");
    await sweep(page, looker, server, DARK, "dark");
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
