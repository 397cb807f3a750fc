// A browser, the program that serves, and what every state of a page must hold.
import { execFileSync, spawn } from "node:child_process";
import { existsSync, readFileSync, readdirSync, renameSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { chromium } from "playwright-core";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
/// WCAG 2.2, levels A and AA, as axe-core tags its rules; and what its makers advise beyond: headings by level, one main part.
const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
/// Least side of what is pressed with a glove, px.
const TARGET = 48;

export function assert(is, words) {
  if (!is) throw new Error(words);
}

export async function openBrowser(profile) {
  return chromium.launchPersistentContext(profile.dir, {
    executablePath: process.env.BAYWITNESS_CHROMIUM ?? "/usr/bin/chromium",
    headless: true,
    args: ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
      "--disable-component-update", "--disable-sync", ...(profile.args ?? [])],
    ...profile.options,
  });
}

/// The program, serving a folder of jobs.
export class Server {
  static async start(program, jobs, listen = "127.0.0.1:0", more = []) {
    const server = new Server();
    server.child = spawn(program, ["serve", "--jobs", jobs, "--listen", listen, ...more], { stdio: ["ignore", "pipe", "inherit"] });
    server.link = await new Promise((done, failed) => {
      let said = "";
      server.child.stdout.on("data", (text) => {
        said += text;
        const found = said.match(/https?:\/\/[0-9.:]+\//);
        server.said = said;
        if (found && said.endsWith("\n")) done(found[0]);
      });
      server.child.on("exit", (code) => failed(new Error(`serve ended with ${code}: ${said}`)));
    });
    return server;
  }
  get address() { return this.link.replace(/^https?:\/\//, "").slice(0, -1); }
  async stop(signal) {
    const gone = new Promise((done) => this.child.once("exit", done));
    this.child.kill(signal);
    await gone;
  }
}

/// Elements whose content is wider than they are and that do not scroll, and words that leave their drawing.
function cut() {
  const named = (e) => `${e.tagName}.${e.getAttribute("class") ?? ""} "${e.textContent.trim().slice(0, 40)}"`;
  const wide = [...document.querySelectorAll("body *")].filter((e) => {
    if (!(e instanceof HTMLElement) || e.clientWidth < 2 || e.matches(".scroll") || /^(INPUT|SELECT|VIDEO)$/.test(e.tagName)) return false;
    return getComputedStyle(e).display !== "inline" && e.scrollWidth > e.clientWidth + 1;
  });
  const drawn = [...document.querySelectorAll("main svg text")].filter((t) => {
    const [own, all] = [t.getBoundingClientRect(), t.ownerSVGElement.getBoundingClientRect()];
    return own.width > 0 && (own.left < all.left - 1 || own.right > all.right + 1);
  });
  return [...wide.map((e) => `${named(e)} ${e.scrollWidth} > ${e.clientWidth}`), ...drawn.map((t) => `words of a drawing: ${named(t)}`)];
}

/// What a screen reader reads in turn, where it jumps about the page: each heading lies below the one before,
/// and nothing is reached by the keyboard that has been passed above.
function jumps() {
  const shown = (e) => e.checkVisibility({ visibilityProperty: true, contentVisibilityAuto: true }) && e.getBoundingClientRect().width > 1;
  const sticks = (e) => { for (let at = e; at; at = at.parentElement) if (/fixed|sticky/.test(getComputedStyle(at).position)) return true; return false; };
  const named = (e) => `${e.tagName} "${e.textContent.trim().slice(0, 40)}"`;
  // What stands higher because a column of its own begins there is read in turn.
  const before = (r, last) => r.bottom < last.top - 1 && r.left < last.right;
  const backwards = (all) => all.filter((e, i) => i > 0 && before(e.getBoundingClientRect(), all[i - 1].getBoundingClientRect())).map(named);
  const listed = (what) => [...document.querySelectorAll(what)].filter((e) => shown(e) && !sticks(e) && !e.closest("svg"));
  return [...backwards(listed("h1, h2, h3, h4")), ...backwards(listed("a[href], button, input, select, textarea, summary, [tabindex]"))];
}

/// Looks at a page as it is: no violation, nothing too wide, nothing too small.
export class Looker {
  constructor(page, name, folder) {
    Object.assign(this, { page, name, folder, count: 0, wrong: [], pressed: true });
    page.on("console", (m) => { if (m.type() === "error") this.wrong.push(`console: ${m.text()} ${m.location().url}`); });
    page.on("pageerror", (e) => this.wrong.push(`script: ${e}`));
  }
  async look(what) {
    const { page } = this;
    this.count += 1;
    const file = join(this.folder, `${this.name}-${String(this.count).padStart(2, "0")}-${what}.png`);
    await page.screenshot({ path: file, fullPage: true });
    // As a separate script: the page's policy lets nobody add one.
    const found = await page.evaluate(`(async () => { ${axe}; return axe.run(document, { runOnly: ${JSON.stringify(RULES)} }); })()`);
    for (const v of found.violations) {
      this.wrong.push(`${what}: axe ${v.id}: ${v.help}: ${v.nodes.map((n) => n.target.join(" ") + " " + n.failureSummary).join(" | ")}`);
    }
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
    if (wide > 0) this.wrong.push(`${what}: ${wide} px too wide`);
    for (const c of await page.evaluate(cut)) this.wrong.push(`${what}: wider than its place: ${c}`);
    for (const j of await page.evaluate(jumps)) this.wrong.push(`${what}: read before what stands above it: ${j}`);
    if (!this.pressed) return;
    const small = await page.evaluate((least) => {
      const shown = (e) => e.offsetParent !== null && !e.classList.contains("gone");
      const pressed = [...document.querySelectorAll("main a.button, main a.job, .steps a, .bar a, button, select, input:not([type=hidden]):not([type=radio]):not([type=file]), .choices label, label.button, summary")];
      return pressed.filter(shown).map((e) => [e.tagName + "." + e.className + " " + e.textContent.slice(0, 30), e.getBoundingClientRect()])
        .filter(([, r]) => r.height < least - 0.5 || r.width < least - 0.5).map(([n, r]) => `${n} ${r.width}x${r.height}`);
    }, TARGET);
    for (const s of small) this.wrong.push(`${what}: smaller than ${TARGET} px: ${s}`);
  }
}

/// What sends files is shown once the script is there.
export const scripted = (page) => page.waitForFunction(() => document.querySelector(".scripted") && !document.querySelector(".scripted[hidden]"));

export const kept = (page) => page.waitForFunction(() => document.getElementById("queue").hidden, null, { timeout: 120000 });

export async function verdict(page, wanted) {
  await page.waitForSelector(`#live:not([data-working]) [data-verdict=${wanted}]`, { timeout: 120000 });
}

/// Runs the program; its exit code and what it says.
export function run(program, ...args) {
  try {
    return { code: 0, said: execFileSync(program, args, { encoding: "utf8", stdio: ["ignore", "pipe", "pipe"] }) };
  } catch (e) {
    return { code: e.status, said: `${e.stdout}${e.stderr}` };
  }
}

/// Says in every job of a folder that its photos are rendered, as `stage` says it: they are, and the page can't know.
export function sayRendered(jobs) {
  for (const name of readdirSync(jobs)) {
    const file = join(jobs, name, "job.toml");
    if (!existsSync(file)) continue;
    const text = readFileSync(file, "utf8");
    if (/^rendered = true$/m.test(text)) continue;
    // By a rename: the page asks for the job meanwhile, and half a file is none.
    writeFileSync(`${file}.new`, text.replace("\n", "\nrendered = true\n"));
    renameSync(`${file}.new`, file);
  }
}
